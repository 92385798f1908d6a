#include "estimate/outlook.hpp"

#include <algorithm>
#include <cmath>

#include "chance/one_year.hpp"
#include "chance/open_end.hpp"
#include "estimate/ahead/narrowing.hpp"
#include "estimate/departures.hpp"
#include "estimate/weights.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/members_of.hpp"

namespace estimate {

using namespace units;
using chance::Figures;
using chance::MemberEnd;
using chance::Outcome;

namespace {

constexpr std::size_t members_of_a_step = 128;  // for each step of switching off
constexpr std::size_t most_steps = 6;

// How long it lasts from now on; of a length that nobody knows, given that it is not over yet.
std::vector<Outcome> outcomes_from(const std::vector<MemberEnd>& ends,
                                   const std::vector<double>& weights, Duration now,
                                   scenario::Outage outage) {
    outage.out_for += now;
    outage.lasts -= now;
    std::vector<Outcome> outcomes;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        MemberEnd end = ends[i];
        end.lasts = end.survives ? outage.lasts : std::max(Duration{}, end.lasts - now);
        outcomes.push_back({.lasts = end.lasts,
                            .survives = end.survives,
                            .outlasts = chance::outlasts(outage, end),
                            .weight = weights[i]});
    }
    return outcomes;
}

// Of members of one weight the same as of an outage that nothing is known of.
Figures figures_from(const std::vector<Outcome>& outcomes, const Members& members,
                     const chance::World& world, Probability goal) {
    if (!members.are_alike()) return weighted_figures(outcomes, goal);
    std::vector<int> dates;
    for (const auto& values : members.values)
        if (const auto date = world.start_date(values)) dates.push_back(*date);
    return chance::figures_of(outcomes, goal,
                              chance::start_dates_of(dates, world.ready().outage, outcomes));
}

// The likely time and what it is limited by, of one estimate.
struct Estimated {
    Posterior posterior;
    std::vector<Outcome> outcomes;
    Figures figures;
    outage::LimitedBy limited_by = outage::LimitedBy::none;
    Probability out_already{};
};

outage::LimitedBy mostly_limited_by(const std::vector<MemberEnd>& ends,
                                    const std::vector<double>& weights) {
    constexpr auto last = static_cast<std::size_t>(outage::LimitedBy::usable);
    std::vector<double> shares(last + 1, 0.0);
    double early = 0.0;
    for (std::size_t i = 0; i < ends.size(); ++i)
        if (!ends[i].survives) {
            shares[static_cast<std::size_t>(ends[i].limited_by)] += weights[i];
            early += weights[i];
        }
    for (std::size_t limit = 0; limit <= last; ++limit)
        if (2.0 * shares[limit] > early) return static_cast<outage::LimitedBy>(limit);
    return outage::LimitedBy::none;
}

class Estimator {
  public:
    Estimator(const scenario::Scenario& scenario, const std::string& folder,
              std::shared_ptr<const outage::Ready> ready, const Wanted& wanted)
        : scenario_(scenario),
          folder_(folder),
          ready_(std::move(ready)),
          wanted_(wanted),
          now_(wanted.now - scenario.outage.starts),
          left_(scenario.outage.lasts - now_),
          goal_(sizing::goal_of(scenario)) {}

    Result<Outlook> outlook() {
        Outlook found{.now = now_, .left = left_};
        found.story = story_of(scenario_, wanted_.now);
        auto lives = Lives::of(scenario_, folder_, ready_, found.story);
        if (!lives) return fail(std::move(lives.error()));
        auto posteriors =
            wanted_.steps
                ? posteriors_of(scenario_, found.story, *lives, asked(found.story))
                : Posteriors{posterior_of(scenario_, found.story, *lives, asked(found.story)), {}};
        const Estimated made = estimated(lives->world(), std::move(posteriors.after));
        found.figures = made.figures;
        found.limited_by = made.limited_by;
        found.out_already = made.out_already;
        found.contradiction = made.posterior.contradiction;
        found.readings = static_cast<int>(made.posterior.reads.size());
        tell_charge(found, made.posterior);
        found.width = width_of(made.outcomes);
        if (found.story.expected_back) {
            const Duration until = *found.story.expected_back - wanted_.now;
            double share = 0.0;
            for (const Outcome& one : made.outcomes)
                if (one.survives || one.lasts >= until) share += one.weight;
            found.to_expected = Probability(std::min(1.0, share));
        }
        tell_departures(found, scenario_, lives->world(), made.posterior);
        if (wanted_.fan)
            found.fan =
                stored_fan(*lives, made.posterior.members, scenario_.outage.lasts, wanted_.threads);
        if (!wanted_.steps) return found;
        found.read_next =
            narrowings(scenario_, found.story, lives->world(), made.posterior, made.outcomes, now_);
        if (posteriors.before)
            found.was = estimated(lives->world(), std::move(*posteriors.before)).figures;
        found.next_off = steps(found.story, few_of(*lives, made.posterior));
        return found;
    }

  private:
    const scenario::Scenario& scenario_;
    const std::string& folder_;
    std::shared_ptr<const outage::Ready> ready_;
    const Wanted& wanted_;
    Duration now_;
    Duration left_;
    Probability goal_;

    [[nodiscard]] Asked asked(const Story& story) const {
        const int usual = sizing::usual_blocks(scenario_, *ready_);
        return {.now = now_,
                .seed = wanted_.seed,
                .blocks = story.readings.empty() ? usual : std::max(usual, blocks_with_readings),
                .threads = wanted_.threads};
    }

    [[nodiscard]] Estimated estimated(const chance::World& world, Posterior&& posterior) const {
        Estimated made;
        made.posterior = std::move(posterior);
        const Members& members = made.posterior.members;
        const auto& ends = made.posterior.ends;
        made.outcomes = outcomes_from(ends, members.weights, now_, scenario_.outage);
        made.figures = figures_from(made.outcomes, members, world, goal_);
        made.limited_by = mostly_limited_by(ends, members.weights);
        double out = 0.0;
        for (std::size_t i = 0; i < ends.size(); ++i)
            if (!ends[i].survives && ends[i].lasts <= now_) out += members.weights[i];
        made.out_already = Probability(std::min(1.0, out));
        return made;
    }

    static void tell_charge(Outlook& found, const Posterior& posterior) {
        std::vector<std::pair<double, double>> charges;
        for (std::size_t i = 0; i < posterior.now.size(); ++i)
            charges.emplace_back(posterior.now[i].charge.value(), posterior.members.weights[i]);
        std::ranges::sort(charges);
        const auto at = [&](double share) {
            double sum = 0.0;
            for (const auto& [charge, weight] : charges)
                if ((sum += weight) > share) return StateOfCharge(std::clamp(charge, 0.0, 1.0));
            return charges.empty() ? StateOfCharge(0.0)
                                   : StateOfCharge(std::clamp(charges.back().first, 0.0, 1.0));
        };
        found.charge_low = at(0.1);
        found.charge_likely = at(0.5);
        found.charge_high = at(0.9);
    }

    // ---- Switching off. method.md (17)

    // What may go off: on now, wanted later, of nobody's health; the least needed first.
    [[nodiscard]] std::vector<std::size_t> may_go_off(const Story& story) const {
        std::vector<std::pair<int, Energy>> order(scenario_.loads.size());
        std::vector<std::size_t> loads;
        const demand::Spans rest{{.from = now_, .until = scenario_.outage.lasts}};
        for (std::size_t i = 0; i < scenario_.loads.size(); ++i) {
            const auto& planned = ready_->demand.loads[i];
            Energy later{};
            for (const auto& strand : planned.strands)
                later += double(strand.items) * strand.of_power.value() * planned.power.likely *
                         demand::total(demand::common(strand.on, rest));
            if (demand::is_medical(scenario_.loads[i]) || story.is_off(i, now_) ||
                !(later > Energy{}))
                continue;
            order[i] = {-planned.rank, -later};
            loads.push_back(i);
        }
        std::ranges::sort(loads, [&](std::size_t a, std::size_t b) {
            return order[a].first != order[b].first     ? order[a].first < order[b].first
                   : order[a].second != order[b].second ? order[a].second < order[b].second
                                                        : a < b;
        });
        if (loads.size() > most_steps) loads.resize(most_steps);
        return loads;
    }

    // A few members that were worked out with what is on now.
    //   on   how they end so
    struct Few {
        Members members;
        std::vector<chance::Lived> lived;
        Figures on;
    };

    [[nodiscard]] Figures with_off(const Story& story, const Few& few,
                                   const std::vector<std::size_t>& off) const {
        std::vector<demand::Spans> spans(scenario_.loads.size());
        for (const std::size_t load : off)
            spans[load] = {{.from = now_, .until = scenario_.outage.lasts}};
        const auto lives = Lives::of(scenario_, folder_, ready_, story, spans);
        if (!lives) return {};
        return figures_of(
            few, lives->ends(values_for(lives->world(), few.members), wanted_.threads, few.lived));
    }

    [[nodiscard]] Figures figures_of(const Few& few, const std::vector<MemberEnd>& ends) const {
        return weighted_figures(outcomes_from(ends, few.members.weights, now_, scenario_.outage),
                                goal_);
    }

    [[nodiscard]] Few few_of(const Lives& lives, const Posterior& posterior) const {
        const Members& members = posterior.members;
        const auto places = drawn_again(members.weights, members_of_a_step);
        Few few;
        std::vector<MemberEnd> ends;
        few.members.names = members.names;
        for (const std::size_t place : places) {
            few.members.values.push_back(members.values[place]);
            ends.push_back(posterior.ends[place]);
        }
        few.members.weights.assign(places.size(), 1.0 / double(places.size()));
        few.lived = lives.lived(few.members.values, wanted_.threads);
        few.on = figures_of(few, ends);
        return few;
    }

    [[nodiscard]] std::vector<OffStep> steps(const Story& story, const Few& few) const {
        std::vector<OffStep> steps;
        std::vector<std::size_t> off;
        for (const std::size_t load : may_go_off(story)) {
            off.push_back(load);
            OffStep step{.load = load, .figures = with_off(story, few, off)};
            const Figures alone = off.size() == 1 ? step.figures : with_off(story, few, {load});
            step.alone = std::max(Duration{}, alone.count_on - few.on.count_on);
            steps.push_back(step);
        }
        return steps;
    }
};

}  // namespace

Figures weighted_figures(std::vector<Outcome> outcomes, Probability goal) {
    const double count = chance::effective(outcomes);
    const double of = std::clamp(chance::share_that_outlasts(outcomes), 0.0, 1.0);
    const auto interval = chance::wilson(of * count, count);
    double at_once = 0.0;
    for (const Outcome& one : outcomes)
        if (one.lasts < minute && !one.survives) at_once += one.weight;
    std::ranges::sort(outcomes,
                      [](const Outcome& a, const Outcome& b) { return a.lasts < b.lasts; });
    Figures figures;
    figures.of = Probability(of);
    figures.low = interval.low;
    figures.high = interval.high;
    figures.members = static_cast<int>(outcomes.size());
    figures.effective = count;
    figures.nine_in_ten = chance::time_of(outcomes, 0.1);
    figures.half = chance::time_of(outcomes, 0.5);
    figures.one_in_ten = chance::time_of(outcomes, 0.9);
    figures.goal = goal;
    figures.count_on = chance::time_of(outcomes, 1.0 - goal.value());
    figures.at_once = Probability(std::min(1.0, at_once));
    return figures;
}

Result<Outlook> outlook_of(const scenario::Scenario& scenario, const std::string& folder,
                           std::shared_ptr<const outage::Ready> ready, const Wanted& wanted) {
    return Estimator(scenario, folder, std::move(ready), wanted).outlook();
}

}  // namespace estimate
