#include "answers/outage/starts.hpp"

#include <algorithm>
#include <cassert>
#include <functional>
#include <map>
#include <span>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "answers/start/answer.hpp"
#include "answers/start/words.hpp"
#include "motor/appliances.hpp"
#include "questions/starts.hpp"
#include "starting/plan.hpp"

namespace answers {

using outage::MotorStart;
using sizing::StartState;
using starting::StartVerdict;
using units::Voltage;

namespace {

// Which motors start in one instant, beside what.
struct Mix {
    std::vector<std::size_t> loads;
    double ac = 0.0;
    double reactive = 0.0;
    double direct = 0.0;

    friend auto operator<=>(const Mix&, const Mix&) = default;
};

// The lowest rested voltages for a sure start and for a possible one; nothing where none is enough.
struct Thresholds {
    std::optional<Voltage> sure;
    std::optional<Voltage> possible;

    [[nodiscard]] StartVerdict at(Voltage rested) const {
        if (sure && rested >= *sure) return StartVerdict::starts;
        return possible && rested >= *possible ? StartVerdict::marginal
                                               : StartVerdict::will_not_start;
    }
};

Mix mix_of(std::span<const MotorStart> group) {
    Mix mix{.loads = {},
            .ac = group.front().ac.likely / units::watt,
            .reactive = group.front().ac_reactive.likely.amount() / units::watt,
            .direct = group.front().direct.likely / units::watt};
    for (const auto& start : group)
        mix.loads.push_back(start.load);
    return mix;
}

class Starter {
  public:
    Starter(const starting::StartScene& scene, Voltage lowest, Voltage highest)
        : scene_(scene), lowest_(lowest), highest_(highest) {}

    //   at   the packs when the group is switched on
    StartVerdict verdict(std::span<const MotorStart> group, const StartState& at) {
        const auto mix = mix_of(group);
        auto found = known_.find(mix);
        if (found == known_.end()) found = known_.emplace(mix, thresholds(group)).first;
        if (found->second.at(at.low) == StartVerdict::starts) return StartVerdict::starts;
        return found->second.at(at.high) == StartVerdict::will_not_start
                   ? StartVerdict::will_not_start
                   : StartVerdict::marginal;
    }

    [[nodiscard]] starting::Judgement judged(std::span<const MotorStart> group,
                                             Voltage rested) const {
        return judge_at(group)(rested);
    }

  private:
    const starting::StartScene& scene_;
    Voltage lowest_;
    Voltage highest_;
    std::map<Mix, Thresholds> known_;

    // What runs beside the whole group: what one of them finds, less the running draw of the rest.
    [[nodiscard]] starting::Background beside(std::span<const MotorStart> group) const {
        const auto& first = group.front();
        starting::Background others{
            .real = first.ac, .reactive = first.ac_reactive, .direct = first.direct};
        for (const auto& start : group.subspan(1)) {
            const auto& item = scene_.items[start.load];
            for (const auto end : starting::all_ends) {
                auto& real = starting::at(others.real, end);
                auto& reactive = starting::at(others.reactive, end);
                auto& direct = starting::at(others.direct, end);
                real = std::max(units::Power{}, real - starting::at(item.real, end));
                reactive = units::ReactivePower(std::max(
                    units::Power{}, reactive.amount() - starting::at(item.reactive, end).amount()));
                direct = std::max(units::Power{}, direct - starting::at(item.direct, end));
            }
        }
        return others;
    }

    // The judgement at any rested voltage. What the motors draw hangs on it only where the inverter
    // sags with the bank; otherwise it is worked out once.
    [[nodiscard]] std::function<starting::Judgement(Voltage)> judge_at(
        std::span<const MotorStart> group) const {
        const auto* inverter = scene_.inverter ? &*scene_.inverter : nullptr;
        const auto others = beside(group);
        std::vector<starting::StartingMotor> motors;
        const starting::DirectMotor* direct = nullptr;
        for (const auto& start : group) {
            if (scene_.motors[start.load]) motors.push_back(*scene_.motors[start.load]);
            if (scene_.direct[start.load]) direct = &*scene_.direct[start.load];
        }
        const auto draw = [=](const starting::DirectSource& source) {
            if (!motors.empty()) return starting::draw_of(motors, others, *inverter, source);
            assert(direct != nullptr && "only groups with a motor are asked of");
            return starting::draw_of(direct->starting, direct->time, others, inverter);
        };
        const bool sags =
            inverter != nullptr && inverter->when_overloaded == scenario::WhenOverloaded::sags;
        auto source = scene_.bank.source;
        if (sags)
            return [=](Voltage rested) {
                const auto here = starting::standing_at(source, rested);
                return starting::judge(draw(here), inverter, here);
            };
        return [known = draw(source), inverter, source](Voltage rested) mutable {
            for (auto& branch : source.branches)
                branch.emf = rested;
            return starting::judge(known, inverter, source);
        };
    }

    [[nodiscard]] Thresholds thresholds(std::span<const MotorStart> group) const {
        const auto judge = judge_at(group);
        const auto verdict_at = [&](Voltage rested) { return judge(rested).verdict; };
        const auto lowest = [&](StartVerdict verdict) {
            return starting::lowest_voltage_for(verdict, verdict_at, lowest_, highest_);
        };
        const auto sure = lowest(StartVerdict::starts);
        return {.sure = sure, .possible = sure == lowest_ ? sure : lowest(StartVerdict::marginal)};
    }
};

std::string clock_of(const scenario::Scenario& scenario, units::Duration at) {
    return weekday_and_time(scenario.outage.starts + at);
}

// A moment of a load's story, and the packs then.
struct Moment {
    MotorStart start;
    StartState packs;
};

std::string stands_at(const Moment& moment) {
    constexpr Voltage seen_in_words = 0.05 * units::volt;
    const auto& [start, packs] = moment;
    std::string words = fmt::format("the packs stand at {} and {}", in_words(packs.charge, 2),
                                    in_words(packs.middle, 3));
    if (packs.high - packs.low > seen_in_words)
        words += fmt::format(" ({} to {} four times in five)", in_words(packs.low, 3),
                             in_words(packs.high, 3));
    return words;
}

// How the starts of one load went.
struct Story {
    int starts = 0;
    int failed = 0;
    int doubtful = 0;
    std::optional<Moment> last_good = {};  // the last one before the first that fails
    std::optional<Moment> first_failed = {};
    std::optional<Moment> first_doubtful = {};
    bool good_after_failure = false;
    std::string why;
    std::string why_doubtful;
};

PinnedFinding failing(const scenario::Scenario& scenario, const std::string& name,
                      const Story& story) {
    const auto& first = *story.first_failed;
    std::string text;
    if (!story.last_good && !story.good_after_failure)
        text = fmt::format("Does not start, not even the first time: {}.", story.why);
    else if (!story.good_after_failure)
        text =
            fmt::format("Starts until {}, then no longer: when {}, {}.",
                        clock_of(scenario, story.last_good->start.at), stands_at(first), story.why);
    else
        text = fmt::format("Does not start {} of {} times, first {}: when {}, {}.", story.failed,
                           story.starts, clock_of(scenario, first.start.at), stands_at(first),
                           story.why);
    return {.finding = {.severity = scenario::Severity::stop,
                        .where = "load " + name,
                        .text = std::move(text),
                        .mend = "candlemark start tells what helps: packs, another order, or less "
                                "that is on besides",
                        .source = "starting method.md (5)"},
            .at = first.start.at,
            .when = clock_of(scenario, first.start.at)};
}

PinnedFinding doubtful(const scenario::Scenario& scenario, const std::string& name,
                       const Story& story) {
    const auto& first = *story.first_doubtful;
    const bool from_the_start = story.doubtful == story.starts;
    return {.finding = {.severity = scenario::Severity::caution,
                        .where = "load " + name,
                        .text = from_the_start
                                    ? fmt::format("May or may not start, from the first time on: "
                                                  "{}.",
                                                  story.why_doubtful)
                                    : fmt::format("May or may not start {} of {} times, first {}: "
                                                  "when {}, {}.",
                                                  story.doubtful, story.starts,
                                                  clock_of(scenario, first.start.at),
                                                  stands_at(first), story.why_doubtful),
                        .mend = "candlemark start tells what would settle it",
                        .source = "starting method.md (5)"},
            .at = first.start.at,
            .when = clock_of(scenario, first.start.at)};
}

// The members' packs at each start, or those of the likely course.
std::vector<StartState> states_of(const outage::Plan& plan, std::span<const StartState> members) {
    std::vector<StartState> states;
    for (std::size_t i = 0; i < plan.starts.size(); ++i) {
        const auto& start = plan.starts[i];
        const bool told = i < members.size() && members[i].members > 0;
        states.push_back(told ? members[i]
                              : StartState{.members = 0,
                                           .low = start.rested,
                                           .middle = start.rested,
                                           .high = start.rested,
                                           .charge = start.charge});
    }
    return states;
}

//   why   worked out where it is told
void add_to(Story& story, StartVerdict verdict, const Moment& moment,
            const std::function<std::string()>& why) {
    ++story.starts;
    if (verdict == StartVerdict::will_not_start) {
        ++story.failed;
        if (story.first_failed) return;
        story.first_failed = moment;
        story.why = why();
        return;
    }
    if (!story.first_failed) story.last_good = moment;
    story.good_after_failure = story.good_after_failure || story.first_failed;
    if (verdict != StartVerdict::marginal) return;
    ++story.doubtful;
    if (story.first_doubtful) return;
    story.first_doubtful = moment;
    story.why_doubtful = why();
}

std::vector<Story> stories_of(const starting::StartScene& scene, std::size_t loads,
                              const outage::Plan& plan, const std::vector<StartState>& states) {
    Starter starter(scene, std::ranges::min(states, {}, &StartState::low).low,
                    std::ranges::max(states, {}, &StartState::high).high);
    std::vector<Story> stories(loads);
    const starting::StartPlan for_words{.inverter = scene.inverter, .source = scene.bank.source};
    for (std::size_t i = 0; i < plan.starts.size();) {
        const std::size_t first = i;
        while (i < plan.starts.size() && plan.starts[i].at == plan.starts[first].at)
            ++i;
        const auto group = std::span(plan.starts).subspan(first, i - first);
        const bool any = std::ranges::any_of(group, [&](const MotorStart& start) {
            return scene.motors[start.load] || scene.direct[start.load];
        });
        if (!any) continue;
        const StartState& packs = states[first];
        const auto verdict = starter.verdict(group, packs);
        for (const auto& start : group)
            add_to(stories[start.load], verdict, {start, packs},
                   [&] { return reason_of(starter.judged(group, packs.low), for_words); });
    }
    return stories;
}

// A plate that cannot be used stops `start`; the plan of the outage goes on without it.
std::vector<PinnedFinding> not_known(const units::Errors& errors) {
    std::vector<PinnedFinding> findings;
    for (const auto& error : errors)
        findings.push_back(
            {.finding = {.severity = scenario::Severity::caution,
                         .where = error.where,
                         .text = "Whether motors start is not known: " + error.found + ".",
                         .mend = error.remedy,
                         .source = "the scenario file"}});
    return findings;
}

}  // namespace

std::vector<PinnedFinding> outage_start_findings(const scenario::Scenario& written,
                                                 const outage::Plan& plan,
                                                 std::span<const StartState> members) {
    if (plan.starts.empty()) return {};
    auto likened = motor::with_appliances(written);
    if (!likened) return {};
    auto& scenario = likened->scenario;
    // A cold pack gives less: what starts on the coldest day starts on any.
    if (plan.coldest) scenario.outage.battery_temperature = plan.coldest;
    auto runs = questions::load_runs(scenario);
    if (!runs) return {};
    for (std::size_t i = 0; i < runs->runs.size(); ++i)
        runs->runs[i].drives = likened->drives[i];
    const auto scene = starting::start_scene(scenario, runs->runs);
    if (!scene) return not_known(scene.error());
    const auto stories = stories_of(*scene, scenario.loads.size(), plan, states_of(plan, members));
    std::vector<PinnedFinding> findings;
    for (std::size_t i = 0; i < stories.size(); ++i) {
        if (stories[i].first_failed)
            findings.push_back(failing(scenario, scenario.loads[i].name, stories[i]));
        if (stories[i].first_doubtful)
            findings.push_back(doubtful(scenario, scenario.loads[i].name, stories[i]));
    }
    return findings;
}

}  // namespace answers
