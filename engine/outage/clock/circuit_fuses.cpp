#include "outage/clock/circuit_fuses.hpp"

#include <algorithm>
#include <limits>

#include "outage/clock/inverter_draw.hpp"

namespace outage {

using namespace units;

namespace {

// A fuse that a falling voltage may bring beyond what it bears.
constexpr Duration looked_at_again = 1.0 * minute;
constexpr Duration forever = std::numeric_limits<double>::infinity() * second;

}  // namespace

MainPathFuse::MainPathFuse(const Unit& unit) : unit_(unit) {
    if (unit.main_fuse && unit.inverter) stands_ = Overload(*unit.main_fuse);
}

Duration MainPathFuse::stands(const Taken& taken, const BusVoltage& voltage) {
    carries_ = {};
    const auto bears = stands_.watched(0);
    if (!bears) return forever;
    if (!(taken.at_inverter > Power{})) {
        if (stands_.running()) stands_.settle({});
        return forever;
    }
    const bool may = taken.at_inverter > *bears * unit_.inverter->cutoff_voltage;
    if (!may && !stands_.running()) return forever;
    carries_ = current_in_main(unit_, taken.at_inverter, voltage());
    stands_.settle(carries_);
    stands_.rise_to(carries_);
    const auto standing = stands_.standing(carries_);
    if (standing.still <= at_once) return {};
    return may ? std::min(until_looked_at(standing), looked_at_again) : until_looked_at(standing);
}

void MainPathFuse::pass(const Taken& taken, Voltage voltage, Duration time) {
    if (!stands_.running()) return;
    stands_.pass(std::max(carries_, current_in_main(unit_, taken.at_inverter, voltage)), time);
}

BranchFuses::BranchFuses(const Parts* parts) : ways_of_(parts) {
    if (ways_of_ == nullptr || !ways_of_->may_open) return;
    fuses_.resize(ways_of_->fuses.size());
    for (std::size_t way = 0; way < fuses_.size(); ++way) {
        Fuse& fuse = fuses_[way];
        fuse.lowest = std::numeric_limits<Voltage>::infinity();
        for (const DirectPart& direct : ways_of_->direct)
            if (std::ranges::find(direct.ways, way) != direct.ways.end())
                fuse.lowest = std::min(fuse.lowest, direct.lowest);
        if (ways_of_->fuses[way]) fuse.stands = Overload(*ways_of_->fuses[way]);
    }
}

std::pair<Duration, std::size_t> BranchFuses::stand(Duration now, const BusVoltage& voltage,
                                                    const std::function<bool(std::size_t)>& is_in) {
    std::pair<Duration, std::size_t> first{forever, 0};
    const auto flows = on_ways(*ways_of_, now, is_in);
    std::vector<Current> currents;
    for (std::size_t way = 0; way < fuses_.size(); ++way) {
        Fuse& fuse = fuses_[way];
        const auto bears = fuse.stands.watched(0);
        if (!bears) continue;
        const bool may = flows[way] > *bears * fuse.lowest;
        if (!may && !fuse.stands.running()) continue;
        if (currents.empty()) currents = currents_on_ways(*ways_of_, now, voltage(), is_in);
        fuse.carries = currents[way];
        fuse.stands.settle(fuse.carries);
        fuse.stands.rise_to(fuse.carries);
        const auto standing = fuse.stands.standing(fuse.carries);
        Duration looked = standing.still <= at_once ? Duration{} : until_looked_at(standing);
        if (may) looked = std::min(looked, looked_at_again);
        if (looked < first.first) first = {looked, way};
    }
    return first;
}

void BranchFuses::pass(Duration time) {
    for (Fuse& fuse : fuses_)
        if (fuse.stands.running()) fuse.stands.pass(fuse.carries, time);
}

}  // namespace outage
