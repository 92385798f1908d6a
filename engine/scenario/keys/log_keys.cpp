// The keys of [[log]]. Limits without a source are common practice: what no portable unit reaches,
// so that a slip of the pen is told.
#include <cmath>

#include <fmt/format.h>

#include "scenario/file/open_end.hpp"
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"

namespace scenario {

using words::Said;
using words::said;

namespace {

using units::celsius;

// A voltage with the digits that were typed, for half the last one is how far it may be off.
struct VoltageShownForm {
    using Value = VoltageShown;
    QuantityForm<units::Voltage> inner = from_to(0.1 * units::volt, 200.0 * units::volt, "12.9 V");

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] words::Said limits() const { return inner.limits(); }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] Shape shape() const { return inner.shape(); }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        const auto volts = inner.read(reading, spot);
        return volts ? std::optional(Value{*volts, decimals_of(spot.node->text)}) : std::nullopt;
    }
    // "12.90 V" where that reads back the same.
    [[nodiscard]] std::string print(const Value& value) const {
        const double volts = value.volts / units::volt;
        const std::string text = fmt::format("{:.{}f}", volts, value.decimals);
        return std::strtod(text.c_str(), nullptr) == volts ? '"' + text + " V\""
                                                           : inner.print(value.volts);
    }
};

// Watts or amperes, as the person's meter has it.
struct DrawnForm {
    using Value = DrawnMeanwhile;
    QuantityForm<units::Power> watts = from_to(units::Power(), 100'000.0 * units::watt, "150 W");
    QuantityForm<units::Current> amperes =
        from_to(units::Current(), 5'000.0 * units::ampere, "12 A");

    [[nodiscard]] std::string example() const { return watts.example(); }
    [[nodiscard]] Said limits() const { return said<"{limits}, or in A">(watts.limits()); }
    [[nodiscard]] Ends ends() const { return watts.ends(); }
    [[nodiscard]] Shape shape() const {
        Shape shape = watts.shape();
        shape.or_of = units::Dimension::current;
        return shape;
    }
    [[nodiscard]] std::string print(const Value& value) const {
        return value.power ? watts.print(*value.power)
                           : amperes.print(value.current.value_or(units::Current()));
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (spot.node->kind == Node::Kind::text && units::read<units::Current>(spot.node->text)) {
            const auto current = amperes.read(reading, spot);
            return current ? std::optional(Value{.power = {}, .current = *current}) : std::nullopt;
        }
        const auto power = watts.read(reading, spot);
        return power ? std::optional(Value{.power = *power, .current = {}}) : std::nullopt;
    }
};

// The controller's count, or true in an entry that strikes one.
struct SunForm {
    using Value = SunCounted;
    QuantityForm<units::Energy> inner =
        from_to(units::Energy(), 200'000.0 * units::watt_hour, "420 Wh");

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] Said limits() const {
        return said<"{limits}; true beside strikes">(inner.limits());
    }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] Shape shape() const {
        Shape shape = inner.shape();
        shape.besides = {"true"};
        return shape;
    }
    [[nodiscard]] std::string print(const Value& value) const {
        return value.taken ? inner.print(*value.taken) : "true";
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (spot.node->kind == Node::Kind::truth && spot.node->truth) return Value{};
        const auto taken = inner.read(reading, spot);
        return taken ? std::optional(Value{*taken}) : std::nullopt;
    }
};

std::vector<std::string_view> kinds_written(const Node& entry) {
    std::vector<std::string_view> kinds;
    for (const std::string_view kind :
         {"reads", "shows", "metered", "sun", "temperature", "happened", "strikes"}) {
        if (entry.find(kind) != nullptr) kinds.push_back(kind);
    }
    return kinds;
}

// Of an entry that tells several things: what may stand together.
bool may_stand_together(const std::vector<std::string_view>& kinds) {
    if (kinds.size() <= 1) return true;
    const auto both = [&](std::string_view one, std::string_view other) {
        return kinds.size() == 2 && std::ranges::find(kinds, one) != kinds.end() &&
               std::ranges::find(kinds, other) != kinds.end();
    };
    return both("shows", "happened") || both("sun", "strikes");
}

void needs(Reading& reading, const Spot& spot, std::string_view key, std::string_view beside,
           Said remedy) {
    if (spot.node->find(key) != nullptr && spot.node->find(beside) == nullptr) {
        reading.refuse(spot.at(*spot.node->find(key), key),
                       said<"found {key} without {beside}">(key, beside), std::move(remedy));
    }
}

Said what_an_entry_tells() {
    return said<
        "give one of reads = \"12.9 V\", shows = \"62 %\", metered = {{energy = \"1.15 kWh\", over "
        "= \"24 h\"}}, sun = \"420 Wh\", temperature = \"-11 degC\", happened = \"switched off\", "
        "strikes">();
}

void check_expected_back(Reading& reading, const Spot& spot, const LogEntry& entry) {
    const Node* by = spot.node->find("by");
    if (by == nullptr) {
        reading.demand(spot, "by", "2026-01-17T12:00:00");
    } else if (entry.by && !(*entry.by > entry.at)) {
        reading.refuse(spot.at(*by, "by"),
                       said<"found a time that is not after {time}">(units::print(entry.at)),
                       said<"give the time at which the supply is expected">());
    }
}

void check_happened(Reading& reading, const Spot& spot, const LogEntry& entry) {
    if (!entry.happened) return;
    const Spot happened = spot.at(*spot.node->find("happened"), "happened");
    const bool load = spot.node->find("load") != nullptr;
    const bool pack = spot.node->find("pack") != nullptr;
    switch (*entry.happened) {
        case Happened::switched_off:
        case Happened::switched_on:
            if (!load) {
                reading.refuse(happened, said<"found no load that was switched">(),
                               said<"add load = \"the name of the load\"">());
            }
            break;
        case Happened::pack_joined:
        case Happened::pack_left:
        case Happened::pack_back:
            if (!pack) {
                reading.refuse(happened, said<"found no pack that it is about">(),
                               said<"add pack = \"the name of the pack\"">());
            }
            break;
        case Happened::fuse_opened:
            if (load == pack) {
                reading.refuse(happened,
                               load ? said<"found both a load and a pack">()
                                    : said<"found neither a load nor a pack whose fuse it was">(),
                               said<"say whose fuse opened: load = … or pack = …">());
            }
            break;
        case Happened::expected_back:
            check_expected_back(reading, spot, entry);
            break;
        case Happened::supply_back:
            break;
    }
}

void check_entry(Reading& reading, const Spot& spot, const LogEntry& entry) {
    const auto kinds = kinds_written(*spot.node);
    if (kinds.empty()) {
        reading.refuse(spot, said<"found an entry that tells nothing">(), what_an_entry_tells());
    }
    if (!may_stand_together(kinds)) {
        reading.refuse(
            spot,
            said<"found {keys} together">(one_after_the_other(kinds, words::List::Joint::all)),
            said<"write an entry for each, with the same time">());
    }
    if (spot.node->find("reads") == nullptr) {
        needs(reading, spot, "under", "reads",
              said<"under says what was drawn while a voltage was read">());
        needs(reading, spot, "rested", "reads",
              said<"rested says for how long before a voltage was read">());
    }
    if (spot.node->find("strikes") == nullptr) {
        needs(reading, spot, "keeps", "temperature", said<"add temperature = \"-11 degC\"">());
        if (entry.sun && !entry.sun->taken) {
            reading.refuse(
                spot.at(*spot.node->find("sun"), "sun"), said<"found true without strikes">(),
                said<"give what the controller counted since midnight, such as \"420 Wh\"">());
        }
    }
    needs(reading, spot, "metered", "load",
          said<"add load = \"the name of what the meter is on\"">());
    needs(reading, spot, "temperature", "keeps", said<"add keeps = \"freezer\" or \"room\"">());
    needs(reading, spot, "sky", "sun",
          said<"add sun = \"420 Wh\", what the controller counted today">());
    needs(reading, spot, "by", "happened", said<"add happened = \"expected back\"">());
    needs(reading, spot, "count", "pack", said<"add pack = \"the name of the packs\"">());
    if (entry.under && entry.rested) {
        reading.refuse(spot.at(*spot.node->find("rested"), "rested"),
                       said<"found a rest beside a load that is on">(),
                       said<"keep under where something was drawn, rested where nothing was">());
    }
    check_happened(reading, spot, entry);
}

Keys<LogEntry> keys_of_what_was_read() {
    return keys_of(
        key<&LogEntry::reads>({.name = "reads", .means = said<"what the voltmeter shows">()},
                              VoltageShownForm()),
        key<&LogEntry::under>(
            {.name = "under",
             .means = said<"what was drawn from the packs while it was read">(),
             .silent =
                 said<"as much as the plan has running then, or nothing where rested is given">()},
            DrawnForm()),
        key<&LogEntry::rested>(
            {.name = "rested", .means = said<"for how long nothing had been drawn or charged">()},
            from_to(units::Duration(), longest_outage(), "8 h")),
        key<&LogEntry::shows>(
            {.name = "shows", .means = said<"charge that the pack's own display shows">()},
            from_to(units::StateOfCharge(0.0), units::StateOfCharge(1.0), "62 %")),
        key<&LogEntry::metered>(
            {.name = "metered",
             .means = said<"what a plug-in meter counted, in what time up to then">()},
            TableForm<MeteredUse>()),
        key<&LogEntry::sun>(
            {.name = "sun", .means = said<"what the controller has counted since midnight">()},
            SunForm()),
        key<&LogEntry::sky>({.name = "sky", .means = said<"how the sky looked on that day">()},
                            one_of<SeenSky>({{"clear", SeenSky::clear, said<"clear">()},
                                             {"thin", SeenSky::thin, said<"thin">()},
                                             {"grey", SeenSky::grey, said<"grey">()},
                                             {"dark", SeenSky::dark, said<"dark">()}})),
        key<&LogEntry::temperature>(
            {.name = "temperature", .means = said<"what the thermometer there shows">()},
            from_to(celsius(-60.0), celsius(80.0), "-11 degC")));
}

Keys<LogEntry> log_keys() {
    Keys<LogEntry> keys = keys_of(
        key<&LogEntry::at>({.name = "at",
                            .means = said<"when, by local standard time">(),
                            .demand = Demand::required},
                           MomentForm()),
        key<&LogEntry::pack>({.name = "pack",
                              .means = said<"the pack that it is about">(),
                              .silent = said<"all packs, joined">()},
                             WordsForm{.sample = "main"}),
        key<&LogEntry::load>({.name = "load", .means = said<"the load that it is about">()},
                             WordsForm{.sample = "refrigerator"}),
        key<&LogEntry::keeps>({.name = "keeps", .means = said<"where the thermometer hangs">()},
                              WordsForm{.sample = "freezer"}),
        key<&LogEntry::count>({.name = "count",
                               .means = said<"how many packs of that name">(),
                               .silent = said<"all of them">()},
                              WholeForm{1, most_packs}));
    for (AKey<LogEntry>& read : keys_of_what_was_read())
        keys.push_back(std::move(read));
    keys.push_back(key<&LogEntry::happened>(
        {.name = "happened", .means = said<"what was done or came about">()},
        one_of<Happened>(
            {{"switched off", Happened::switched_off, said<"switched off">()},
             {"switched on", Happened::switched_on, said<"switched on">()},
             {"pack joined", Happened::pack_joined, said<"a pack was plugged in">()},
             {"pack left", Happened::pack_left, said<"a pack was taken away">()},
             {"pack back", Happened::pack_back, said<"a pack came back">()},
             {"fuse opened", Happened::fuse_opened, said<"a fuse opened">()},
             {"supply back", Happened::supply_back, said<"the supply came back">()},
             {"expected back", Happened::expected_back, said<"the supply is expected back">()}})));
    keys.push_back(key<&LogEntry::by>(
        {.name = "by", .means = said<"when the supply is expected back">()}, MomentForm()));
    keys.push_back(
        key<&LogEntry::strikes>({.name = "strikes",
                                 .means = said<"time of a wrong entry; pack, load, keeps or sun = "
                                               "true says which, where there are several">()},
                                MomentForm()));
    return keys;
}

}  // namespace

template <>
const Description<LogEntry>& describe<LogEntry>() {
    static const Description<LogEntry> description = {
        .silent = said<"nothing was written down">(), .keys = log_keys(), .check = check_entry};
    return description;
}

std::string print(const LogEntry& entry) {
    return "[[log]]\n" + print_lines(entry);
}

}  // namespace scenario
