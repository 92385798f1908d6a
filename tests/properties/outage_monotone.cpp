// The promise never gets better by what is worse, of packs as a file describes them: with all that
// charging meets, with what the cold locks at the current of the moment, in a room that is as warm
// as its days are, under either kind of controller. CANDLEMARK_PAIRS asks for more pairs.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>

#include "battery/pack_model.hpp"
#include "outage/clock/clock.hpp"
#include "scenario/pack.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;

int cases(int usually) {
    const char* asked = std::getenv("CANDLEMARK_PAIRS");
    return asked ? std::atoi(asked) : usually;
}

double between(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1'000'001) / 1e6);
}
bool once_in(int times) {
    return *rc::gen::inRange(0, times) == 0;
}

struct Load {
    int priority = 1;
    bool ac = false;
    Power power{};
    Voltage lowest{};
    std::vector<bool> on;
};

//   warmth   of each day of the outage, degC; of one only where the packs keep it
//   meets    of the resistance that charging meets, so many times
struct Household {
    scenario::Pack pack;
    std::vector<double> warmth;
    double meets = 1.0;
    std::optional<inverter::Model> inverter;
    Duration lasts{};
    std::vector<Duration> moments;
    std::vector<Load> loads;
    std::vector<outage::SunChange> sun;
};

scenario::Pack any_pack() {
    using scenario::Chemistry;
    scenario::Pack pack{.count = *rc::gen::inRange(1, 5),
                        .chemistry = *rc::gen::element(Chemistry::flooded, Chemistry::agm,
                                                       Chemistry::gel, Chemistry::lifepo4),
                        .capacity = between(20.0, 200.0) * ampere_hour};
    pack.charge = StateOfCharge(once_in(2) ? between(0.2, 1.0) : 1.0);
    pack.usable = Share(once_in(2) ? 1.0 : between(0.3, 1.0));
    if (once_in(2)) pack.age = scenario::Age::mid_life;
    if (once_in(2)) pack.charge_limit = between(0.1, 0.6) * per_hour * pack.capacity;
    if (once_in(2)) pack.absorption_voltage = between(13.8, 14.8) * volt;
    if (once_in(4)) pack.absorption_per_kelvin = between(0.0, 0.03) * volt;
    return pack;
}

Household any_household() {
    Household made{.pack = any_pack()};
    if (!once_in(4)) {
        const double cut_off = between(10.0, 11.5);
        made.inverter = inverter::Model{.continuous = 2500.0 * watt,
                                        .continuous_apparent = 2500.0 * volt_ampere,
                                        .losses = {.idle = between(0.0, 30.0) * watt,
                                                   .linear = between(0.0, 0.1),
                                                   .quadratic = between(0.0, 0.1),
                                                   .rating = 2500.0 * watt},
                                        .cutoff_voltage = cut_off * volt,
                                        .restart_voltage = (cut_off + 1.5) * volt};
    }
    made.lasts = between(0.5, 4.0) * day;
    const double warmth = between(-20.0, 25.0);
    made.warmth = {warmth};
    for (double day = 1.0; !once_in(5) && day < made.lasts / units::day; ++day)
        made.warmth.push_back(std::min(25.0, warmth + between(-8.0, 8.0)));
    made.moments = {Duration{}};
    for (int i = *rc::gen::inRange(0, 30); i > 0; --i)
        made.moments.push_back(between(0.0, 1.0) * made.lasts);
    std::ranges::sort(made.moments);
    for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
        Load load{.priority = *rc::gen::inRange(1, 6),
                  .ac = made.inverter && once_in(2),
                  .power = std::exp(between(0.0, std::log(600.0))) * watt,
                  .lowest = between(10.0, 11.6) * volt,
                  .on = {}};
        for (std::size_t at = 0; at < made.moments.size(); ++at)
            load.on.push_back(!once_in(3));
        made.loads.push_back(load);
    }
    if (once_in(4)) return made;
    const double most = between(20.0, 400.0);
    const bool as_current = once_in(3);
    for (double hours = 0.0; hours * hour < made.lasts; hours += 1.0) {
        const Power offered =
            std::max(0.0, std::sin(0.2618 * hours)) * between(0.3, 1.0) * most * watt;
        outage::SunChange change{.from = hours * hour, .offered = offered};
        if (as_current) change.passes = offered / (18.0 * volt);
        made.sun.push_back(change);
    }
    return made;
}

// A unit, and the models that it points to.
struct Built {
    std::vector<std::unique_ptr<battery::PackModel>> models;
    outage::Unit unit;
};

Built built(const Household& household) {
    Built made;
    const auto model_at = [&](double degrees) -> const battery::PackModel& {
        scenario::Assumptions told;
        auto model = battery::pack_model(household.pack, "pack[0]", celsius(degrees), told);
        model->charging.resistance.when_empty *= household.meets;
        made.models.push_back(std::make_unique<battery::PackModel>(std::move(*model)));
        return *made.models.back();
    };
    double mean = 0.0;
    for (const double degrees : household.warmth)
        mean += degrees / static_cast<double>(household.warmth.size());
    const auto& model = model_at(mean);
    made.unit = {.bank = {.setup = battery::arranged(model, {}, {}),
                          .count = household.pack.count,
                          .rated = model.capacity,
                          .usable = model.usable,
                          .cut_off = model.pack_cut_off,
                          .current_limit = model.current_limit,
                          .at_start = model.at_start,
                          .name = {}},
                 .inverter = household.inverter};
    for (std::size_t day = 0; household.warmth.size() > 1 && day < household.warmth.size(); ++day) {
        const auto& today = model_at(household.warmth[day]);
        made.unit.days.push_back({.from = static_cast<double>(day) * units::day,
                                  .banks = {{.inner = today.inner,
                                             .reachable = battery::reachable_slowly(today),
                                             .locked = today.locked,
                                             .charging = today.charging,
                                             .current_limit = today.current_limit}}});
    }
    return made;
}

// The promise with all loads and with those up to each priority.
std::vector<Duration> promises(const Household& household) {
    const Built made = built(household);
    std::vector<Duration> lasts;
    for (int priority = 5; priority >= 1; --priority) {
        std::vector<demand::DemandStep> steps;
        for (std::size_t at = 0; at < household.moments.size(); ++at) {
            demand::DemandStep step{.from = household.moments[at],
                                    .inverter_on = household.inverter.has_value()};
            for (const Load& load : household.loads) {
                if (load.priority > priority || !load.on[at]) continue;
                if (load.ac) {
                    step.ac += load.power;
                } else {
                    step.direct += load.power;
                    step.direct_useful += load.power;
                    step.lowest = std::max(step.lowest, load.lowest);
                }
            }
            steps.push_back(step);
        }
        lasts.push_back(outage::run(made.unit, steps, household.sun, household.lasts, 6.0 * hour,
                                    {.trace = false, .after_failure = false})
                            .lasts);
    }
    return lasts;
}

enum class Way { more_load, colder, fewer, less_charge, less_sun, meets_more };
constexpr std::array ways{"more load",   "a colder room", "a pack fewer",
                          "less charge", "less sun",      "more met by charging"};

bool passes_current(const Household& household) {
    return std::ranges::any_of(household.sun,
                               [](const auto& change) { return change.passes > Current{}; });
}

// What is worse for whom. Under a controller that passes on a current, whatever raises the voltage
// of the bus while it charges leaves more of that current to the packs, for the loads draw less of
// it: so more met by charging, a colder room and fewer packs are no worse there. And a charger that
// follows the warmth fills further in the cold.
bool is_worse(Way way, const Household& household) {
    if (way == Way::colder && household.pack.absorption_per_kelvin) return false;
    if (!passes_current(household)) return true;
    return way != Way::meets_more && way != Way::colder && way != Way::fewer;
}

// One thing made worse.
Way make_worse(Household& household) {
    Way what;
    do
        what = static_cast<Way>(*rc::gen::inRange(0, int{ways.size()}));
    while (!is_worse(what, household));
    switch (what) {
        case Way::more_load:
            for (Load& load : household.loads)
                if (once_in(2)) load.power *= between(1.0, 1.5);
            break;
        case Way::colder: {
            const double by = between(0.0, 10.0);
            for (double& degrees : household.warmth)
                degrees -= by;
            break;
        }
        case Way::fewer:
            household.pack.count = std::max(1, household.pack.count - 1);
            break;
        case Way::less_charge:
            household.pack.charge =
                StateOfCharge(household.pack.charge->value() * between(0.7, 1.0));
            break;
        case Way::less_sun:
            for (auto& change : household.sun) {
                const double left = between(0.0, 1.0);
                change.offered *= left;
                change.passes *= left;
            }
            break;
        case Way::meets_more:
            household.meets *= between(1.0, 2.0);
            break;
    }
    return what;
}

TEST(monotone_properties, packs_of_a_file_in_a_room_never_last_longer_by_what_is_worse) {
    // s. Of a flooded pack in absorption the fuller one meets more and takes less, so its plates
    // may be the emptier ones for the draw that follows: 1.8 s of 10 min in 200,000 pairs.
    constexpr double of_the_plates = 10.0;
    constexpr double of_rounding = 1e-3;
    double largest = 0.0;
    int failed = 0;
    int violations = 0;
    const int pairs = cases(2'000);
    EXPECT_TRUE(tested::holds_for(pairs, [&] {
        auto household = any_household();
        const auto before = promises(household);
        for (std::size_t i = 1; i < before.size(); ++i)
            RC_ASSERT(before[i] / second >= before[i - 1] / second - of_rounding);
        const auto what = make_worse(household);
        const auto after = promises(household);
        failed += after[0] < household.lasts ? 1 : 0;
        for (std::size_t i = 0; i < before.size(); ++i) {
            const double later = (after[i] - before[i]) / second;
            largest = std::max(largest, later);
            violations += later > 0.5 ? 1 : 0;
            RC_LOG() << ways[static_cast<std::size_t>(what)] << ", up to priority " << 5 - i << ": "
                     << before[i] / hour << " h, then " << after[i] / hour << " h\n";
            const bool may = household.pack.chemistry == scenario::Chemistry::flooded &&
                             what == Way::less_charge && !household.sun.empty();
            RC_ASSERT(later <= (may ? of_the_plates : of_rounding));
        }
    }));
    std::printf(
        "%d pairs, %d of them end; latest that a worse one lasts longer: %.3g s; more than "
        "half a second: %d\n",
        pairs, failed, largest, violations);
    EXPECT_GT(failed, pairs / 8);  // or little was tried
}

}  // namespace
