#include "models/days/spread.hpp"

#include <algorithm>

namespace touch {

namespace {

// Neighbours that would touch, around their mean.
struct Neighbours {
    double sum = 0.0;
    int size = 0;
    [[nodiscard]] double mean() const { return sum / size; }
};

double middle_of(const QList<double>& places, const QList<int>& group) {
    return (places[group.front()] + places[group.back()]) / 2.0;
}

}  // namespace

QList<double> spread(const QList<double>& wished, double width, double apart) {
    QList<Neighbours> all;
    for (qsizetype number = 0; number < wished.size(); ++number) {
        all.append({.sum = wished[number] - apart * double(number), .size = 1});
        while (all.size() > 1 && all[all.size() - 2].mean() > all.back().mean()) {
            const Neighbours last = all.takeLast();
            all.last() = {.sum = all.last().sum + last.sum, .size = all.last().size + last.size};
        }
    }
    const double first = apart / 2.0;
    const double last = std::max(first, width - apart / 2.0 - apart * double(wished.size() - 1));
    QList<double> middles;
    for (const Neighbours& group : std::as_const(all))
        for (int in_group = 0; in_group < group.size; ++in_group)
            middles.append(std::clamp(group.mean(), first, last) + apart * double(middles.size()));
    return middles;
}

QList<QList<int>> grouped(const QList<double>& places, int most) {
    QList<QList<int>> groups;
    for (int number = 0; number < places.size(); ++number)
        groups.append(QList<int>{number});
    while (groups.size() > std::max(1, most)) {
        qsizetype closest = 0;
        const auto distance = [&](qsizetype left) {
            return middle_of(places, groups[left + 1]) - middle_of(places, groups[left]);
        };
        for (qsizetype left = 1; left + 1 < groups.size(); ++left)
            if (distance(left) < distance(closest)) closest = left;
        groups[closest] += groups[closest + 1];
        groups.removeAt(closest + 1);
    }
    return groups;
}

}  // namespace touch
