// Battery packs as a person describes them. One entry is one kind of pack; `count` alike.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "units/quantities.hpp"

namespace scenario {

enum class Chemistry { flooded, agm, gel, lifepo4 };

struct TwoWellNumbers {
    units::Share available;  // c
    units::Frequency rate;   // k
    units::Charge total;     // C
};

struct PulseLimit {
    units::Current current;
    units::Duration lasts;
};

// A row of a label or sheet: this charge when emptied evenly over this time.
struct RateRow {
    units::Charge charge;
    units::Duration over;
};

enum class Age { fresh, mid_life, end_of_life };

struct Pack {
    std::string name;
    int count = 1;
    Chemistry chemistry = Chemistry::lifepo4;
    units::Charge capacity{};
    std::optional<units::Duration> rated_over;
    std::optional<units::Voltage> voltage;
    std::optional<units::StateOfCharge> charge;
    std::optional<units::Voltage> rested_voltage;  // read at rest; tells the charge where given
    std::optional<units::Duration> rested_for;     // since it was last charged or used
    std::optional<TwoWellNumbers> two_well;
    std::vector<RateRow> rates;              // beside capacity over rated_over
    std::optional<units::Duration> reserve;  // time at 25 A, of a starter battery's label
    std::optional<units::Resistance> resistance;
    std::optional<units::Resistance> lead_resistance;
    std::optional<units::Current> current_limit;
    std::vector<PulseLimit> pulse;
    std::optional<units::Current> charge_limit;
    std::optional<units::Voltage> absorption_voltage;
    // by which the charger lifts it for each kelvin below 25 degC, and lowers it above
    std::optional<units::Voltage> absorption_per_kelvin;
    std::optional<units::Voltage> cutoff_voltage;
    std::optional<units::Temperature> coldest_charge;
    std::optional<units::Share> usable;
    std::optional<Age> age;
    std::optional<units::Charge>
        tested_capacity;  // a measured capacity test replaces the age factor
    std::optional<units::Current> fuse;
    std::optional<units::Current> connector;  // rating of the plug it joins the others by
    std::optional<units::Mass> weight;
    std::optional<units::Price> price;
};

}  // namespace scenario
