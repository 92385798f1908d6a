#include "fitting/flows.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "fitting/whole.hpp"

namespace fitting {

namespace {

using units::Current;
using units::Resistance;
using units::Voltage;

OhmSpan with(std::optional<OhmSpan> span, Resistance ohms) {
    if (!span) return {ohms, ohms};
    return {std::min(span->low, ohms), std::max(span->high, ohms)};
}

}  // namespace

FlowSpans flow_spans(const std::vector<BuildUnit>& units) {
    FlowSpans spans;
    if (units.empty()) return spans;
    for (std::size_t kind = 0; kind < units.front().packs.size(); ++kind) {
        std::optional<OhmSpan> span;
        for (const BuildUnit& unit : units)
            span = with(span, unit.packs[kind].flow);
        spans.packs.push_back(*span);
    }
    std::optional<OhmSpan> main;
    for (const BuildUnit& unit : units)
        main = with(main, unit.main_path);
    spans.main = *main;
    return spans;
}

Resistance extreme_in(const OhmSpan& span, bool most,
                      const std::function<Current(Resistance)>& of) {
    constexpr int pieces = 12;
    constexpr int narrowings = 40;
    const auto at = [&](double along) { return span.low + along * (span.high - span.low); };
    const auto worth = [&](double along) {
        const double amperes = of(at(along)) / units::ampere;
        return most ? amperes : -amperes;
    };
    double best = 0.0;
    double highest = worth(0.0);
    for (int i = 1; i <= pieces; ++i) {
        const double along = double(i) / pieces;
        if (const double value = worth(along); value > highest) {
            highest = value;
            best = along;
        }
    }
    // between its neighbours, by golden sections
    const double golden = 0.5 * (std::sqrt(5.0) - 1.0);
    double from = std::max(0.0, best - 1.0 / pieces);
    double to = std::min(1.0, best + 1.0 / pieces);
    for (int i = 0; i < narrowings && span.high > span.low; ++i) {
        const double a = to - golden * (to - from);
        const double b = from + golden * (to - from);
        (worth(a) >= worth(b) ? to : from) = worth(a) >= worth(b) ? b : a;
    }
    const double middle = 0.5 * (from + to);
    return at(worth(middle) > highest ? middle : best);
}

namespace {

// So many packs of each kind, and how they share.
struct Left {
    const FlowSpans& spans;
    const CascadeAsked& asked;
    std::vector<int> counts;

    [[nodiscard]] bool any() const {
        return std::ranges::any_of(counts, [](int count) { return count > 0; });
    }
    [[nodiscard]] Left without(std::size_t kind) const {
        Left less = *this;
        --less.counts[kind];
        return less;
    }
    // One pack's part; the kind itself has this resistance, all else the end that helps.
    [[nodiscard]] Current share(std::size_t kind, Resistance own, bool most) const {
        const BuildUnit& unit = most ? asked.worst : asked.best;
        wiring::Feed feed = most ? asked.most : asked.least;
        feed.main = most ? spans.main.high : spans.main.low;
        feed.sources.clear();
        std::size_t whose = 0;
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (i == kind) whose = feed.sources.size();
            const OhmSpan& span = spans.packs[i];
            const Resistance ohms = i == kind ? own : most ? span.high : span.low;
            feed.sources.insert(feed.sources.end(), static_cast<std::size_t>(counts[i]),
                                {.emf = unit.packs[i].emf, .resistance = ohms});
        }
        const Voltage cutoff = most ? asked.lowest_cutoff : asked.highest_cutoff;
        return asked_at_most(feed, cutoff).shares[whose];
    }
    [[nodiscard]] Current extreme(std::size_t kind, bool most) const {
        const auto of = [&](Resistance own) { return share(kind, own, most); };
        return of(extreme_in(spans.packs[kind], most, of));
    }
    [[nodiscard]] bool may_open(std::size_t kind) const {
        const auto& limit = asked.worst.packs[kind].model.current_limit;
        return counts[kind] > 0 && limit && extreme(kind, true) > *limit;
    }
    [[nodiscard]] bool one_surely_opens() const {
        for (std::size_t kind = 0; kind < counts.size(); ++kind) {
            const auto& limit = asked.best.packs[kind].model.current_limit;
            if (counts[kind] > 0 && limit && extreme(kind, false) > *limit) return true;
        }
        return false;
    }
};

}  // namespace

Cascade cascade_within(const FlowSpans& spans, const CascadeAsked& asked) {
    Left all{spans, asked, {}};
    for (const PackKind& kind : asked.worst.packs)
        all.counts.push_back(kind.count);
    Cascade cascade{.may = false, .surely = all.one_surely_opens()};
    for (std::size_t first = 0; first < all.counts.size(); ++first) {
        if (!all.may_open(first)) continue;
        const Left left = all.without(first);
        for (std::size_t second = 0; second < left.counts.size(); ++second)
            cascade.may = cascade.may || left.may_open(second);
        cascade.surely = cascade.surely && left.any() && left.one_surely_opens();
    }
    cascade.surely = cascade.surely && cascade.may;
    return cascade;
}

}  // namespace fitting
