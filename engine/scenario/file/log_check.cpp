#include "scenario/file/log_check.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "scenario/file/open_end.hpp"
#include "units/clock.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

using Places = std::vector<std::size_t>;
using words::Said;
using words::said;

// Entries of the log with where they stand.
class Entries {
  public:
    Entries(Reading& reading, const Spot& root, const Scenario& scenario)
        : reading_(reading),
          scenario_(scenario),
          list_(root.at(*root.node->find("log"), "log")),
          standing_(standing(scenario.log)) {}

    void check() {
        for (std::size_t i = 0; i < log().size(); ++i) {
            check_names(i);
            if (log()[i].strikes) check_strike(i);
        }
        for (const std::size_t i : standing_)
            check_time(i);
        check_instants();
        check_packs();
        check_loads();
    }

  private:
    Reading& reading_;
    const Scenario& scenario_;
    Spot list_;
    Places standing_;

    [[nodiscard]] const std::vector<LogEntry>& log() const { return scenario_.log; }
    [[nodiscard]] Spot spot(std::size_t i) const { return list_.at(list_.node->items[i], i); }
    // The key of an entry, or the entry where it is silent.
    [[nodiscard]] Spot spot(std::size_t i, std::string_view key) const {
        const Spot entry = spot(i);
        const Node* value = entry.node->find(key);
        return value == nullptr ? entry : entry.at(*value, key);
    }
    [[nodiscard]] int line(std::size_t i) const { return list_.node->items[i].line; }

    template <class Tables>
    void check_name(std::size_t i, const std::optional<std::string>& name, std::string_view label,
                    const Tables& tables) {
        if (!name ||
            std::ranges::find(tables, *name, [](const auto& t) { return t.name; }) != tables.end())
            return;
        std::vector<std::string_view> known;
        for (const auto& table : tables)
            known.emplace_back(table.name);
        const std::string_view nearest = nearest_word(*name, known);
        reading_.refuse(spot(i, label),
                        label == "pack"
                            ? said<"found \"{name}\", and no pack of this file has that name">(
                                  units::quote(*name))
                            : said<"found \"{name}\", and no load of this file has that name">(
                                  units::quote(*name)),
                        !nearest.empty() ? said<"did you mean {word}?">(nearest)
                        : known.empty()  ? said<"describe it under [[{table}]] first">(label)
                                         : said<"give one of {names}">(one_after_the_other(known)));
    }

    void check_names(std::size_t i) {
        check_name(i, log()[i].pack, "pack", scenario_.packs);
        auto loads = scenario_.loads;
        loads.insert(loads.end(), scenario_.on_generator.begin(), scenario_.on_generator.end());
        check_name(i, log()[i].load, "load", loads);
        if (log()[i].sun && scenario_.panels.empty())
            reading_.refuse(spot(i, "sun"),
                            said<"found sun that was counted, and no panel in this file">(),
                            said<"describe the panels under [[panel]]">());
    }

    void check_strike(std::size_t i) {
        if (std::ranges::any_of(
                log(), [&](const LogEntry& entry) { return is_struck_by(entry, log()[i]); }))
            return;
        const bool of_that_instant = std::ranges::any_of(log(), [&](const LogEntry& entry) {
            return !entry.strikes && entry.at == *log()[i].strikes;
        });
        reading_.refuse(spot(i, "strikes"),
                        of_that_instant
                            ? said<"found {time}, and no entry of that instant is about what is "
                                   "named beside it">(units::print(*log()[i].strikes))
                            : said<"found {time}, and no entry is of that instant">(
                                  units::print(*log()[i].strikes)),
                        said<"give the time of the entry that was wrong, as it stands there">());
    }

    void check_time(std::size_t i) {
        const Outage& outage = scenario_.outage;
        const units::LocalTime ends = outage.starts + looked_at(outage);
        if (log()[i].at < outage.starts) {
            reading_.refuse(spot(i, "at"),
                            said<"found {time}, before the outage starts at {start}">(
                                units::print(log()[i].at), units::print(outage.starts)),
                            said<"check the date; what was read before is the pack's charge or "
                                 "rested_voltage, or the load's metered">());
        } else if (log()[i].at > ends) {
            reading_.warn(spot(i, "at"),
                          said<"found {time}, after the outage is over at {end}">(
                              units::print(log()[i].at), units::print(ends)),
                          said<"give outage.lasts the length that it takes now; until then this "
                               "entry is left out">());
        }
    }

    // What an entry is about: two of them at one instant cannot both be.
    using About = std::tuple<int, std::string, std::string>;
    [[nodiscard]] static About about(const LogEntry& entry) {
        const int kind = entry.happened      ? (entry.load || entry.pack ? 0 : 1)
                         : entry.reads       ? 2
                         : entry.shows       ? 3
                         : entry.metered     ? 4
                         : entry.sun         ? 5
                         : entry.temperature ? 6
                                             : 7;
        return {kind, entry.pack.value_or("") + '\n' + entry.load.value_or(""),
                entry.keeps.value_or("")};
    }

    void check_instants() {
        for (std::size_t later = 1; later < standing_.size(); ++later)
            for (std::size_t earlier = later; earlier-- > 0;) {
                const std::size_t a = standing_[earlier];
                const std::size_t b = standing_[later];
                if (!(log()[a].at == log()[b].at)) break;
                if (about(log()[a]) != about(log()[b])) continue;
                const std::size_t second = std::max(a, b);
                reading_.refuse(
                    spot(second, "at"),
                    said<"found two entries of {time} about the same thing, this and the one on "
                         "line {line}">(units::print(log()[second].at), line(std::min(a, b))),
                    said<"give them the times at which they were made, or strike the wrong one">());
            }
    }

    // Of one kind of pack, how many stand where.
    struct Where {
        int joined = 0;
        int away = 0;
    };

    void check_packs() {
        for (const Pack& pack : scenario_.packs) {
            Where where{.joined = pack.count};
            for (const std::size_t i : standing_)
                if (log()[i].happened == Happened::pack_joined && log()[i].pack == pack.name)
                    where.joined -= log()[i].count.value_or(pack.count);
            if (where.joined < 0) {
                refuse_more_joined_than_there_are(pack);
                continue;
            }
            for (const std::size_t i : standing_)
                if (log()[i].pack == pack.name && log()[i].happened) walk(i, pack, where);
        }
    }

    void refuse_more_joined_than_there_are(const Pack& pack) {
        int joined = 0;
        for (const std::size_t i : standing_) {
            if (log()[i].happened != Happened::pack_joined || log()[i].pack != pack.name) continue;
            joined += log()[i].count.value_or(pack.count);
            if (joined <= pack.count) continue;
            reading_.refuse(spot(i, "happened"),
                            said<"found {n} of {pack} joined so far, and the file has {all}">(
                                joined, pack.name, pack.count),
                            said<"a pack that had left is back; else raise the pack's count, or "
                                 "give this entry a count">());
            return;
        }
    }

    // One event of a pack; what it contradicts is refused.
    void walk(std::size_t i, const Pack& pack, Where& where) {
        const LogEntry& entry = log()[i];
        switch (*entry.happened) {
            case Happened::pack_joined:
                where.joined += entry.count.value_or(pack.count);
                return;
            case Happened::pack_left:
            case Happened::fuse_opened: {
                const int gone = entry.count.value_or(where.joined);
                if (gone > where.joined || where.joined == 0) {
                    reading_.refuse(
                        spot(i, "happened"),
                        said<"found that {n} of {pack} went, and {joined} was joined then">(
                            std::max(gone, 1), pack.name, where.joined),
                        said<"check the times of the entries about this pack">());
                    return;
                }
                where.joined -= gone;
                if (*entry.happened == Happened::pack_left) where.away += gone;
                return;
            }
            case Happened::pack_back: {
                const int back = entry.count.value_or(where.away);
                if (back > where.away || where.away == 0) {
                    reading_.refuse(spot(i, "happened"),
                                    where.away == 0
                                        ? said<"found {pack} back, which never left">(pack.name)
                                        : said<"found {n} of {pack} back, and {away} had left">(
                                              back, pack.name, where.away),
                                    said<"write when it left, with happened = \"pack left\"; one "
                                         "that was not there before is \"pack joined\"">());
                    return;
                }
                where.away -= back;
                where.joined += back;
                return;
            }
            default:
                return;
        }
    }

    void check_loads() {
        std::map<std::string, bool> last_on;
        std::optional<units::LocalTime> back;
        for (const std::size_t i : standing_) {
            const LogEntry& entry = log()[i];
            if (back && entry.at > *back)
                reading_.warn(spot(i, "at"), said<"found an entry after the supply came back">(),
                              said<"it is left out; a new outage wants a file of its own">());
            if (entry.happened == Happened::supply_back && !back) back = entry.at;
            if (!entry.load || !entry.happened) continue;
            const bool on = *entry.happened == Happened::switched_on;
            const auto [at, first] = last_on.try_emplace(*entry.load, on);
            if (!first && at->second == on)
                reading_.warn(
                    spot(i, "happened"),
                    on ? said<"found {load} switched on twice in a row">(units::quote(*entry.load))
                       : said<"found {load} switched off twice in a row">(
                             units::quote(*entry.load)),
                    said<"the first counts; an entry between them may be missing">());
            at->second = on;
        }
    }
};

}  // namespace

void check_log(Reading& reading, const Spot& root, const Scenario& scenario) {
    const Node* list = root.node->find("log");
    if (list == nullptr || list->items.size() != scenario.log.size() || scenario.log.empty())
        return;
    Entries(reading, root, scenario).check();
}

}  // namespace scenario
