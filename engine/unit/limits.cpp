#include "unit/limits.hpp"

#include <algorithm>
#include <array>

namespace unit {

namespace {

void append(Limits& limits, Limits more) {
    limits.insert(limits.end(), std::make_move_iterator(more.begin()),
                  std::make_move_iterator(more.end()));
}

}  // namespace

Limits limits_of(const Path& path) {
    Limits limits;
    if (path.fuse)
        limits.push_back({.by = Limiter::fuse,
                          .most = {path.fuse->value.rating, path.fuse->origin},
                          .guard = path.fuse->value});
    if (path.connector) limits.push_back({.by = Limiter::connector, .most = *path.connector});
    if (path.contact) limits.push_back({.by = Limiter::contact, .most = *path.contact});
    return limits;
}

Limits limits_of(const Packs& packs, Flow flow) {
    Limits limits;
    const auto& model = *packs.model;
    if (flow == Flow::out_of_pack && model.current_limit)
        limits.push_back(
            {.by = Limiter::protection, .most = {*model.current_limit, packs.current_limit_from}});
    if (flow == Flow::into_pack && model.charging.largest)
        limits.push_back(
            {.by = Limiter::charging, .most = {*model.charging.largest, packs.charge_limit_from}});
    append(limits, limits_of(packs.lead));
    return limits;
}

const Limit* find(const Limits& limits, Limiter by) {
    const auto found = std::ranges::find(limits, by, &Limit::by);
    return found == limits.end() ? nullptr : &*found;
}

words::Said word_for(Limiter by) {
    using words::said;
    static const std::array all{said<"current limit">(), said<"charge limit">(), said<"fuse">(),
                                said<"connector">(), said<"switch">()};
    return all[static_cast<std::size_t>(by)];
}

}  // namespace unit
