#include "questions/shared/outage_starts.hpp"

#include <algorithm>
#include <cassert>
#include <functional>
#include <map>

#include "motor/appliances/appliances.hpp"
#include "questions/shared/starts.hpp"

namespace questions {

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

    // The judgement at any rested voltage. What the motors draw depends on it only where the inverter
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

//   judged   worked out where it is told
void add_to(StartStory& story, StartVerdict verdict, const StartMoment& moment,
            const std::function<starting::Judgement()>& judged) {
    ++story.starts;
    if (verdict == StartVerdict::will_not_start) {
        ++story.failed;
        if (!story.first_failed) story.first_failed = {moment, judged()};
        return;
    }
    if (!story.first_failed) story.last_good = moment;
    story.good_after_failure = story.good_after_failure || story.first_failed;
    if (verdict != StartVerdict::marginal) return;
    ++story.doubtful;
    if (!story.first_doubtful) story.first_doubtful = {moment, judged()};
}

// Those of one instant, from this one on.
std::span<const MotorStart> at_once(const std::vector<MotorStart>& starts, std::size_t first) {
    std::size_t end = first;
    while (end < starts.size() && starts[end].at == starts[first].at)
        ++end;
    return std::span(starts).subspan(first, end - first);
}

bool has_motor(const starting::StartScene& scene, const MotorStart& start) {
    return scene.motors[start.load] || scene.direct[start.load];
}

std::vector<StartStory> stories_of(const starting::StartScene& scene, std::size_t loads,
                                   const std::vector<MotorStart>& starts,
                                   const std::vector<StartState>& states) {
    Starter starter(scene, std::ranges::min(states, {}, &StartState::low).low,
                    std::ranges::max(states, {}, &StartState::high).high);
    std::vector<StartStory> stories(loads);
    for (std::size_t first = 0; first < starts.size();) {
        const auto group = at_once(starts, first);
        const StartState& packs = states[first];
        first += group.size();
        if (std::ranges::none_of(group, [&](const auto& one) { return has_motor(scene, one); }))
            continue;
        const auto verdict = starter.verdict(group, packs);
        for (const auto& start : group)
            add_to(stories[start.load], verdict, {start, packs},
                   [&] { return starter.judged(group, packs.low); });
    }
    return stories;
}

}  // namespace

OutageStarts starts_of_outage(const scenario::Scenario& written, const outage::Plan& plan,
                              std::span<const StartState> members) {
    if (plan.starts.empty()) return {};
    auto likened = motor::with_appliances(written);
    if (!likened) return {};
    auto& scenario = likened->scenario;
    if (plan.coldest) scenario.outage.battery_temperature = plan.coldest;
    auto runs = load_runs(scenario);
    if (!runs) return {};
    for (std::size_t i = 0; i < runs->runs.size(); ++i)
        runs->runs[i].drives = likened->drives[i];
    const auto scene = starting::start_scene(scenario, runs->runs);
    if (!scene) return {.not_known = scene.error()};
    auto stories = stories_of(*scene, scenario.loads.size(), plan.starts, states_of(plan, members));
    for (std::size_t load = 0; load < stories.size(); ++load)
        stories[load].load = load;
    std::erase_if(stories, [](const StartStory& story) {
        return !story.first_failed && !story.first_doubtful;
    });
    return {
        .stories = std::move(stories), .inverter = scene->inverter, .source = scene->bank.source};
}

}  // namespace questions
