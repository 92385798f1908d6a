#include "estimate/story.hpp"

#include <algorithm>

namespace estimate {

using scenario::Happened;
using scenario::LogEntry;
using units::Duration;

namespace {

// Entries up to a moment, and up to when the supply came back.
std::vector<std::size_t> known(const scenario::Scenario& scenario, units::LocalTime until) {
    std::vector<std::size_t> places;
    for (const std::size_t i : scenario::standing(scenario.log)) {
        const LogEntry& entry = scenario.log[i];
        if (entry.at > until || entry.at > scenario.outage.starts + scenario.outage.lasts) break;
        places.push_back(i);
        if (entry.happened == Happened::supply_back) break;
    }
    return places;
}

template <class Tables>
std::optional<std::size_t> place_of(const Tables& tables, const std::optional<std::string>& name) {
    if (!name) return std::nullopt;
    const auto found =
        std::ranges::find(tables, *name, [](const auto& table) { return table.name; });
    if (found == tables.end()) return std::nullopt;
    return static_cast<std::size_t>(found - tables.begin());
}

// The times at which one load was off: before it was switched on first, where nothing was said of
// it before that.
class Switching {
  public:
    void off(Duration at) {
        if (!off_since_) off_since_ = at;
        seen_ = true;
    }
    void on(Duration at) {
        if (!seen_) {
            off_since_ = Duration{};
            first_was_on_ = at > Duration{};
        }
        if (off_since_ && *off_since_ < at) spans_.push_back({.from = *off_since_, .until = at});
        off_since_.reset();
        seen_ = true;
    }
    demand::Spans to(Duration end) {
        if (off_since_ && *off_since_ < end) spans_.push_back({.from = *off_since_, .until = end});
        return demand::either(spans_, {});
    }
    [[nodiscard]] bool first_was_on() const { return first_was_on_; }

  private:
    demand::Spans spans_;
    std::optional<Duration> off_since_;
    bool seen_ = false;
    bool first_was_on_ = false;
};

// How many of a pack are joined and how many away, entry by entry.
struct Where {
    int joined = 0;
    int away = 0;
};

int joined_later(const scenario::Scenario& scenario, const std::vector<std::size_t>& places,
                 std::size_t pack) {
    int later = 0;
    for (const std::size_t i : places)
        if (scenario.log[i].happened == Happened::pack_joined &&
            scenario.log[i].pack == scenario.packs[pack].name)
            later += scenario.log[i].count.value_or(scenario.packs[pack].count);
    return std::min(later, scenario.packs[pack].count);
}

// So many more of them, which an entry says of the packs where they are.
int joined_by(const LogEntry& entry, const scenario::Pack& pack, Where& where) {
    switch (*entry.happened) {
        case Happened::pack_joined: {
            const int more = entry.count.value_or(pack.count);
            where.joined += more;
            return more;
        }
        case Happened::pack_left:
        case Happened::fuse_opened: {
            const int gone = std::min(where.joined, entry.count.value_or(where.joined));
            where.joined -= gone;
            if (*entry.happened == Happened::pack_left) where.away += gone;
            return -gone;
        }
        case Happened::pack_back: {
            const int back = std::min(where.away, entry.count.value_or(where.away));
            where.away -= back;
            where.joined += back;
            return back;
        }
        default:
            return 0;
    }
}

}  // namespace

bool Story::tells_nothing() const {
    return readings.empty() && meters.empty() && pack_changes.empty() && !supply_back &&
           std::ranges::all_of(off, [](const demand::Spans& spans) { return spans.empty(); });
}

bool Story::is_off(std::size_t load, Duration at) const {
    return std::ranges::any_of(
        off[load], [&](const demand::Span& span) { return span.from <= at && at < span.until; });
}

Story story_of(const scenario::Scenario& scenario, units::LocalTime until) {
    const auto places = known(scenario, until);
    Story story;
    std::vector<Switching> switching(scenario.loads.size());
    std::vector<Where> where;
    for (std::size_t pack = 0; pack < scenario.packs.size(); ++pack) {
        where.push_back(
            {.joined = scenario.packs[pack].count - joined_later(scenario, places, pack)});
        story.at_start.push_back(where.back().joined);
    }
    for (const std::size_t i : places) {
        const LogEntry& entry = scenario.log[i];
        const Duration at = entry.at - scenario.outage.starts;
        if (entry.happened == Happened::supply_back) story.supply_back = entry.at;
        if (entry.happened == Happened::expected_back) story.expected_back = entry.by;
        if (entry.metered) story.meters.push_back(i);
        if (entry.reads || (entry.shows && !entry.happened) || (entry.sun && entry.sun->taken))
            story.readings.push_back(i);
        if (!entry.happened) continue;
        if (const auto load = place_of(scenario.loads, entry.load)) {
            if (entry.happened == Happened::switched_on) switching[*load].on(at);
            if (entry.happened == Happened::switched_off || entry.happened == Happened::fuse_opened)
                switching[*load].off(at);
        } else if (const auto pack = place_of(scenario.packs, entry.pack)) {
            const int joined = joined_by(entry, scenario.packs[*pack], where[*pack]);
            if (joined != 0)
                story.pack_changes.push_back(
                    {.at = at, .pack = *pack, .joined = joined, .charge = entry.shows});
        }
    }
    for (std::size_t load = 0; load < switching.size(); ++load) {
        story.off.push_back(switching[load].to(scenario.outage.lasts));
        if (switching[load].first_was_on()) story.taken_as_off.push_back(load);
    }
    return story;
}

}  // namespace estimate
