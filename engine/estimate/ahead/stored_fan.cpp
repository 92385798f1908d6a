#include "estimate/ahead/stored_fan.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "estimate/weights.hpp"
#include "outage/in_threads.hpp"

namespace estimate {

using namespace units;

namespace {

constexpr std::size_t members_run = 128;
constexpr Duration longest_in_quarters = 5.0 * day;

// So many members have at least this, of values in rising order.
Energy held_by(double share, const std::vector<Energy>& rising) {
    const auto have = std::size_t(std::ceil(share * double(rising.size()) - 1e-9));
    return rising[rising.size() - std::max<std::size_t>(have, 1)];
}

using Courses = std::vector<outage::Course>;

Energy stored_at(const outage::Course& course, std::size_t moment) {
    return moment == 0 ? course.intervals.front().flows.stored_at_start
                       : course.intervals[moment - 1].flows.stored_at_end;
}

// The one whose squares of distance from the middle values sum to least.
std::size_t nearest_to(const std::vector<Energy>& middle, const Courses& courses) {
    std::size_t nearest = 0;
    double least = 0.0;
    for (std::size_t i = 0; i < courses.size(); ++i) {
        double sum = 0.0;
        for (std::size_t moment = 0; moment < middle.size(); ++moment) {
            const double away = (stored_at(courses[i], moment) - middle[moment]) / watt_hour;
            sum += away * away;
        }
        if (i > 0 && !(sum < least)) continue;
        nearest = i;
        least = sum;
    }
    return nearest;
}

}  // namespace

StoredFan stored_fan(const Lives& lives, const Members& members, Duration lasts, unsigned threads) {
    const Duration every = lasts > longest_in_quarters ? hour : 0.25 * hour;
    const auto places = drawn_again(members.weights, members_run);
    Courses courses(places.size());
    outage::for_each_number(static_cast<int>(places.size()), threads, [&](int i) {
        courses[std::size_t(i)] = lives.account(members.values[places[std::size_t(i)]], every);
    });
    StoredFan fan;
    if (courses.empty()) return fan;
    std::vector<Energy> middle;
    std::vector<Energy> stored(courses.size());
    const auto& intervals = courses.front().intervals;  // each member's begin and end alike
    for (std::size_t moment = 0; moment <= intervals.size(); ++moment) {
        for (std::size_t i = 0; i < courses.size(); ++i)
            stored[i] = stored_at(courses[i], moment);
        std::ranges::sort(stored);
        fan.at.push_back(moment == 0 ? Duration{} : intervals[moment - 1].to);
        fan.low.push_back(held_by(0.9, stored));
        fan.high.push_back(held_by(0.1, stored));
        middle.push_back(held_by(0.5, stored));
    }
    fan.likely = std::move(courses[nearest_to(middle, courses)]);
    return fan;
}

}  // namespace estimate
