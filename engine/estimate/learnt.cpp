#include "estimate/learnt.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "chance/unknowns.hpp"
#include "estimate/posterior.hpp"
#include "units/text.hpp"

namespace estimate {

using namespace units;

namespace {

constexpr double four_in_five = 1.2816;
constexpr double has_narrowed = 0.8;  // of its own spread at most; ours

// Logarithms of a factor.
struct Spread {
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    bool narrowed = false;
};

Spread spread_of(const Members& members, const std::string& name, double above, double below) {
    const auto found = std::ranges::find(members.names, name);
    if (found == members.names.end()) return {};
    const auto place = static_cast<std::size_t>(found - members.names.begin());
    double mean = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < members.values.size(); ++i) {
        const double score = chance::score_of(members.values[i][place]);
        mean += members.weights[i] * score;
        squares += members.weights[i] * score * score;
    }
    const double deviation = std::sqrt(std::max(0.0, squares - mean * mean));
    const auto at = [&](double score) { return (score > 0.0 ? above : below) * score; };
    const double one = at(mean - four_in_five * deviation);
    const double other = at(mean + four_in_five * deviation);
    return {.low = std::min(one, other),
            .likely = at(mean),
            .high = std::max(one, other),
            .narrowed = deviation < has_narrowed && (above != 0.0 || below != 0.0)};
}

// Three digits are all that is known.
InFile in_unit(double amount, std::string_view unit) {
    const double digits = std::pow(10.0, 2.0 - std::floor(std::log10(std::max(amount, 1e-9))));
    return {.number = std::round(amount * digits) / digits, .unit = std::string(unit)};
}

LearntValue value_of(std::string key, std::string of, double amount, std::string_view unit,
                     const Spread& spread) {
    return {.key = std::move(key),
            .of = std::move(of),
            .in_file = in_unit(amount, unit),
            .low = in_unit(amount * std::exp(spread.low), unit),
            .likely = in_unit(amount * std::exp(spread.likely), unit),
            .high = in_unit(amount * std::exp(spread.high), unit),
            .factor = std::exp(spread.likely)};
}

std::string in_key(const std::string& name) {
    const bool plain = std::ranges::none_of(name, [](char c) {
        return c == '.' || c == '"' || c == '[' || c == ']' || c == '\\' || c == '=';
    });
    return plain ? name : '"' + name + '"';
}

void add_load(std::vector<LearntValue>& values, const scenario::Load& load, const Spread& spread) {
    if (!load.draw) return;
    const std::string key = "load." + in_key(load.name) + '.';
    if (const auto* power = std::get_if<scenario::StatedPower>(&*load.draw))
        values.push_back(value_of(key + "power", load.name, power->power / watt, "W", spread));
    if (const auto* metered = std::get_if<scenario::MeteredUse>(&*load.draw))
        values.push_back(
            value_of(key + "metered.energy", load.name, metered->energy / watt_hour, "Wh", spread));
    if (const auto* label = std::get_if<scenario::YearlyLabel>(&*load.draw))
        values.push_back(
            value_of(key + "label", load.name, label->average / watt * 8.76, "kWh/yr", spread));
}

Energy drawn(const demand::PlannedLoad& load, Duration until) {
    Energy energy{};
    for (const demand::Strand& strand : load.strands)
        energy += double(strand.items) * strand.of_power.value() * load.power.likely *
                  demand::total(demand::common(strand.on, {{.from = {}, .until = until}}));
    return energy;
}

void add_packs(Learnt& learnt, const scenario::Scenario& scenario, const chance::World& world,
               const Members& members) {
    for (const auto& kind : world.ready().kinds) {
        const auto named = std::ranges::find(scenario.packs, kind.name, &scenario::Pack::name);
        if (named == scenario.packs.end()) continue;
        const double held = -chance::capacity_deviation(*named);
        const auto spread =
            spread_of(members, fmt::format("pack/{}/capacity", kind.name), held, held);
        if (spread.narrowed)
            learnt.values.push_back(value_of("pack." + in_key(kind.name) + ".tested_capacity",
                                             kind.name, kind.model->capacity / ampere_hour, "Ah",
                                             spread));
    }
}

}  // namespace

std::string InFile::text() const {
    return fmt::format("{:.6g} {}", number, unit);
}

Result<Learnt> learnt_of(const scenario::Scenario& scenario, const std::string& folder,
                         std::shared_ptr<const outage::Ready> ready, std::uint64_t seed,
                         unsigned threads) {
    const auto places = scenario::standing(scenario.log);
    const LocalTime end = scenario.outage.starts + scenario.outage.lasts;
    if (places.empty())
        return fail(
            {.where = "log",
             .found = words::said<"nothing was written down in this file">(),
             .remedy = words::said<"write down what is read while the power is out, as "
                                   "{example}">("candlemark note FILE \"21:30 main 12.9 V\"")});
    Learnt learnt{.until = std::min(end, scenario.log[places.back()].at)};
    const Story story = story_of(scenario, learnt.until);
    if (story.supply_back) learnt.until = std::min(learnt.until, *story.supply_back);
    const Duration until = learnt.until - scenario.outage.starts;
    const auto lives = Lives::of(scenario, folder, ready, story);
    if (!lives) return fail(lives.error());
    const auto posterior =
        posterior_of(scenario, story, *lives, {.now = until, .seed = seed, .threads = threads});
    learnt.readings = static_cast<int>(posterior.reads.size());
    learnt.contradicted = posterior.without_weights;
    const auto& world = lives->world();
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& sides = world.draw_of(i);
        const auto spread =
            spread_of(posterior.members, fmt::format("load/{}/draw", scenario.loads[i].name),
                      sides.above, sides.below);
        learnt.planned += drawn(ready->demand.loads[i], until);
        learnt.actual += std::exp(spread.likely) * drawn(world.ready().demand.loads[i], until);
        if (spread.narrowed && !learnt.contradicted)
            add_load(learnt.values, scenario.loads[i], spread);
    }
    if (!learnt.contradicted) add_packs(learnt, scenario, world, posterior.members);
    return learnt;
}

}  // namespace estimate
