#include "demand/power.hpp"

#include <algorithm>
#include <array>

#include "demand/kept_cold.hpp"
#include "motor/appliances/appliances.hpp"
#include "motor/kind.hpp"
#include "units/range.hpp"
#include "units/said.hpp"

namespace demand {

namespace {

using units::watt;
using words::Said;
using words::said;

Said practice() {
    return said<"common practice, no source">();
}

words::Number factor_shown(const units::PowerFactor& factor) {
    return {.value = factor.value()};
}

template <class... Cases>
struct Overloaded : Cases... {
    using Cases::operator()...;
};

using Factors = units::Range<units::PowerFactor>;

constexpr Factors unity = units::exactly(units::PowerFactor(1.0));

// At full load; what turns on direct current has none.
Factors factor_of(scenario::MotorKind kind) {
    return kind == scenario::MotorKind::direct_current
               ? unity
               : motor::traits_of(kind).running_power_factor;
}

// Any appliance whose plate gives volts and amperes only: common practice, no source.
constexpr Factors unknown_factor =
    units::spanning(units::PowerFactor(0.6), units::PowerFactor(0.8), units::PowerFactor(1.0));

const scenario::Nameplate* nameplate_of(const scenario::Load& load) {
    return load.draw ? std::get_if<scenario::Nameplate>(&*load.draw) : nullptr;
}

Factors power_factor(const scenario::Load& load, const std::string& where,
                     scenario::Assumptions& assumed) {
    if (load.from != scenario::Outlet::ac) {
        return unity;
    }
    const scenario::Nameplate* const plate = nameplate_of(load);
    const auto stated = plate && plate->power_factor ? plate->power_factor : load.power_factor;
    if (stated) {
        return units::exactly(*stated);
    }
    const Factors range = load.motor ? factor_of(load.motor->kind) : plate ? unknown_factor : unity;
    assumed.push_back({where + ".power_factor",
                       range.low() == range.high()
                           ? said<"power factor {factor}">(factor_shown(range.likely()))
                           : said<"power factor {factor}, between {low} and {high}">(
                                 factor_shown(range.likely()), factor_shown(range.low()),
                                 factor_shown(range.high())),
                       load.motor ? said<"method.md of motor, Kinds">() : practice()});
    return range;
}

// How far the true power may lie from the figure, as a share of it: common practice, no source;
// cheap plug-in meters were off by 3 to 19 % [HIIT meters].
double width_of(scenario::Evidence evidence) {
    switch (evidence) {
        case scenario::Evidence::metered:
            return 0.10;
        case scenario::Evidence::label:
            return 0.25;
        case scenario::Evidence::guess:
            return 0.50;
    }
    return 0.50;
}

double width(const scenario::Load& load, const std::string& where, scenario::Assumptions& assumed) {
    if (load.evidence) {
        return width_of(*load.evidence);
    }
    const bool metered = std::holds_alternative<scenario::MeteredUse>(*load.draw);
    const double share =
        width_of(metered ? scenario::Evidence::metered : scenario::Evidence::label);
    assumed.push_back({where + ".evidence",
                       metered ? said<"a plug-in meter's reading: within 10 %">()
                               : said<"a figure from a label: within 25 %; a meter narrows it to "
                                      "10 %">(),
                       practice()});
    return share;
}

units::Efficiency converter(const scenario::Load& load, const std::string& where,
                            scenario::Assumptions& assumed) {
    if (load.from == scenario::Outlet::ac) {
        return units::Efficiency(1.0);
    }
    if (load.converter_efficiency) {
        return *load.converter_efficiency;
    }
    if (load.from == scenario::Outlet::usb) {
        assumed.push_back(
            {where + ".converter_efficiency", said<"a USB adaptor passes on 90 %">(), practice()});
        return units::Efficiency(0.90);
    }
    assumed.push_back({where + ".converter_efficiency",
                       said<"runs on 12 V as it comes, with no adaptor">(), practice()});
    return units::Efficiency(1.0);
}

void must_be_part_of_one(double value, const std::string& where, units::Errors& errors) {
    if (!(value > 0.0 && value <= 1.0)) {
        errors.push_back({where, said<"{value}">(words::Number{.value = value, .digits = 4}),
                          said<"give a value above 0 and at most 1, such as 0.9">()});
    }
}

template <class Quantity>
void must_not_be_negative(Quantity value, const std::string& where, units::Errors& errors) {
    if (value < Quantity()) {
        errors.push_back(
            {where, said<"{value} is below zero">(value), said<"give zero or more">()});
    }
}

// Of one way to say what a load takes.
struct UnusableDraw {
    const std::string& where;
    units::Errors& errors;

    void operator()(const scenario::StatedPower& stated) const {
        must_not_be_negative(stated.power, where + ".power", errors);
    }
    void operator()(const scenario::MeteredUse& metered) const {
        must_not_be_negative(metered.energy, where + ".metered.energy", errors);
        if (!(metered.over > units::Duration())) {
            errors.push_back({where + ".metered.over", said<"no time passed">(),
                              said<"give how long the meter ran, such as 24 h">()});
        }
    }
    void operator()(const scenario::YearlyLabel& label) const {
        must_not_be_negative(label.average, where + ".label", errors);
    }
    void operator()(const scenario::Nameplate& plate) const {
        must_not_be_negative(plate.voltage, where + ".nameplate.voltage", errors);
        must_not_be_negative(plate.current, where + ".nameplate.current", errors);
        if (plate.power_factor) {
            must_be_part_of_one(plate.power_factor->value(), where + ".nameplate.power_factor",
                                errors);
        }
    }
};

units::Errors unusable(const scenario::Load& load, const std::string& where) {
    units::Errors errors;
    if (!load.draw) {
        errors.push_back({where, said<"nothing says how much it takes">(),
                          said<"give power, metered, label or nameplate">()});
        return errors;
    }
    std::visit(UnusableDraw{where, errors}, *load.draw);
    if (load.power_factor) {
        must_be_part_of_one(load.power_factor->value(), where + ".power_factor", errors);
    }
    if (load.converter_efficiency) {
        must_be_part_of_one(load.converter_efficiency->value(), where + ".converter_efficiency",
                            errors);
    }
    if (load.runs && !(load.runs->on > units::Duration() && load.runs->every >= load.runs->on)) {
        errors.push_back({where + ".runs",
                          said<"{time} of every {cycle}">(load.runs->on, load.runs->every),
                          said<"give a time above zero of every longer time, such as 15 min of 45 "
                               "min">()});
    }
    return errors;
}

// What keeps cold takes more each year; [Paul 2021], linear: common practice, no source.
units::Power aged(units::Power label, const scenario::Load& load, const std::string& where,
                  scenario::Assumptions& assumed) {
    constexpr double more_a_year = 0.017;
    constexpr units::Duration year = 365.0 * units::day;
    if (load.age) {
        return (1.0 + more_a_year * (*load.age / year)) * label;
    }
    if (keeps_cold(load) != scenario::KeepsCold::nothing) {
        assumed.push_back(
            {where + ".age", said<"new; each year adds 1.7 % to its label">(), "[Paul 2021]"});
    }
    return label;
}

LoadPower running(const units::Range<units::Power>& range, Said from_what) {
    return {.low = range.low(),
            .likely = range.likely(),
            .high = range.high(),
            .from_what = std::move(from_what)};
}

LoadPower around(units::Power likely, double width, Said from_what) {
    return running(
        units::spanning<units::Power>((1.0 - width) * likely, likely, (1.0 + width) * likely),
        std::move(from_what));
}

LoadPower from_nameplate(const scenario::Nameplate& plate, const Factors& factor, double width) {
    const units::Power most = plate.voltage * plate.current;
    return running(
        units::spanning<units::Power>((1.0 - width) * factor.low().value() * most,
                                      factor.likely().value() * most, factor.high().value() * most),
        said<"nameplate {voltage}, {current}: the most it takes">(plate.voltage, plate.current));
}

}  // namespace

units::Result<LoadPower> load_power(const scenario::Load& load, const std::string& where,
                                    scenario::Assumptions& assumed) {
    units::Errors errors = unusable(load, where);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    const Factors factor = power_factor(load, where, assumed);
    const double share = width(load, where, assumed);
    // A mean over whole cycles is spread over the part of each cycle in which the load runs.
    const double running_over_mean = load.runs ? double(load.runs->every / load.runs->on) : 1.0;
    LoadPower power = std::visit(
        Overloaded{
            [&](const scenario::StatedPower& stated) {
                if (load.listed_power) {
                    return running(units::spanning(load.listed_power->low(), stated.power,
                                                   load.listed_power->high()),
                                   said<"list of appliances: {appliance}">(load.like.value_or("")));
                }
                return around(stated.power, share, said<"stated {power}">(stated.power));
            },
            [&](const scenario::MeteredUse& metered) {
                return around(running_over_mean * (metered.energy / metered.over), share,
                              said<"metered {energy} over {time}">(metered.energy, metered.over));
            },
            [&](const scenario::YearlyLabel& label) {
                const units::Power mean = aged(label.average, load, where, assumed);
                return around(running_over_mean * mean, share,
                              said<"yearly label, {power} on average">(mean));
            },
            [&](const scenario::Nameplate& plate) { return from_nameplate(plate, factor, share); },
        },
        *load.draw);
    power.factor = factor.likely();
    power.converter = converter(load, where, assumed);
    return power;
}

bool is_medical(const scenario::Load& load) {
    return motor::is_medical(load);
}

int rank_of(const scenario::Load& load) {
    return is_medical(load) ? 1 : load.priority;
}

bool has_compressor(const scenario::Load& load) {
    using scenario::MotorKind;
    return load.motor && (load.motor->kind == MotorKind::compressor_rsir ||
                          load.motor->kind == MotorKind::compressor_csir ||
                          load.motor->kind == MotorKind::permanent_split_compressor);
}

}  // namespace demand
