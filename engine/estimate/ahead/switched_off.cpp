#include "estimate/ahead/switched_off.hpp"

#include <algorithm>

namespace estimate {
namespace {

void take_off(demand::PlannedLoad& load, const demand::Spans& off) {
    for (auto* strands : {&load.strands, &load.strands_low, &load.strands_high}) {
        for (demand::Strand& strand : *strands)
            strand.on = demand::without(strand.on, off);
        std::erase_if(*strands, [](const demand::Strand& strand) { return strand.on.empty(); });
    }
    load.may_run = demand::without(load.may_run, off);
}

}  // namespace

std::shared_ptr<const outage::Ready> without_what_was_off(
    std::shared_ptr<const outage::Ready> ready, const std::vector<demand::Spans>& story,
    const std::vector<demand::Spans>& more) {
    const auto empty = [](const demand::Spans& spans) { return spans.empty(); };
    if (std::ranges::all_of(story, empty) && std::ranges::all_of(more, empty)) return ready;
    auto made = std::make_shared<outage::Ready>(*ready);
    for (std::size_t i = 0; i < made->demand.loads.size(); ++i) {
        demand::Spans off = i < story.size() ? story[i] : demand::Spans{};
        if (i < more.size()) off = demand::either(off, more[i]);
        if (!off.empty()) take_off(made->demand.loads[i], off);
    }
    for (const auto end : {outage::End::earliest, outage::End::likely, outage::End::latest})
        made->steps[static_cast<std::size_t>(end)] = outage::steps_of(*made, made->demand, end);
    return made;
}

}  // namespace estimate
