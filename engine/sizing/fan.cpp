#include "sizing/fan.hpp"

#include <algorithm>
#include <cmath>

#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;

constexpr int most_members = 2 * chance::lanes;

// The smallest of those of whom at least this share has no less.
std::size_t place_of(double share, std::size_t members) {
    const auto have_more = static_cast<std::size_t>(std::ceil(share * double(members) - 1e-9));
    return members - std::max<std::size_t>(have_more, 1);
}

}  // namespace

Fan fan_of(const chance::Members& members, Duration every, unsigned threads) {
    const auto& world = members.world();
    const int count = std::min(members.count(), most_members);
    std::vector<std::vector<Energy>> stored(static_cast<std::size_t>(count));
    Fan fan;
    outage::for_each_number(count, threads, [&](int number) {
        const auto lived = world.lived(members.values(number));
        const auto course =
            world.run(lived, world.packs(), lived.sun, {.trace = false, .intervals = every});
        auto& mine = stored[std::size_t(number)];
        mine.push_back(course.ledger.stored_at_start);
        for (const auto& interval : course.intervals)
            mine.push_back(interval.flows.stored_at_end);
        if (number > 0) return;
        fan.at.push_back({});
        for (const auto& interval : course.intervals)
            fan.at.push_back(interval.to);
    });
    std::vector<Energy> sorted(stored.size());
    for (std::size_t moment = 0; moment < fan.at.size(); ++moment) {
        for (std::size_t i = 0; i < stored.size(); ++i)
            sorted[i] = stored[i].at(moment);
        std::ranges::sort(sorted);
        for (std::size_t share = 0; share < fan_shares.size(); ++share)
            fan.stored[share].push_back(sorted[place_of(fan_shares[share], sorted.size())]);
    }
    return fan;
}

}  // namespace sizing
