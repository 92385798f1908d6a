// An entry of the log said back, and put behind the text of a file.
#include <fmt/format.h>

#include "notes/understand.hpp"
#include "scenario/document.hpp"
#include "units/clock.hpp"
#include "units/quote.hpp"
#include "units/text.hpp"

namespace notes {
namespace {

using scenario::Happened;
using scenario::LogEntry;

std::string volts(const scenario::VoltageShown& shown) {
    return fmt::format("{:.{}f} V", shown.volts / units::volt, shown.decimals);
}

std::string drawn(const scenario::DrawnMeanwhile& under) {
    return under.power ? units::show(*under.power)
                       : units::show(under.current.value_or(units::Current()));
}

std::string name_of(const std::optional<std::string>& name, std::string_view silent) {
    return name ? units::quote(*name, 80) : std::string(silent);
}

std::string what_was_read(const LogEntry& entry) {
    if (entry.reads) {
        std::string text = fmt::format("{} {} {}", name_of(entry.pack, "all packs, joined,"),
                                       entry.pack ? "reads" : "read", volts(*entry.reads));
        if (entry.under) text += fmt::format(" while {} is drawn", drawn(*entry.under));
        if (entry.rested) text += fmt::format(" after {} of rest", units::show(*entry.rested));
        return text;
    }
    if (entry.metered)
        return fmt::format("the meter on {} counted {} over {}", name_of(entry.load, "a load"),
                           units::show(entry.metered->energy), units::show(entry.metered->over));
    if (entry.sun && entry.sun->taken) {
        constexpr std::string_view skies[] = {"clear", "thin", "grey", "dark"};
        return fmt::format("the controller counted {} since midnight{}",
                           units::show(*entry.sun->taken),
                           entry.sky ? fmt::format(", with a sky that was {}",
                                                   skies[static_cast<std::size_t>(*entry.sky)])
                                     : "");
    }
    if (entry.temperature)
        return fmt::format("{} in {}", units::show(*entry.temperature),
                           name_of(entry.keeps, "a place"));
    return fmt::format("the display of {} shows {}", name_of(entry.pack, "all packs"),
                       units::show(entry.shows.value_or(units::StateOfCharge())));
}

std::string what_happened(const LogEntry& entry) {
    const std::string pack = (entry.count ? fmt::format("{} of ", *entry.count) : std::string()) +
                             name_of(entry.pack, "a pack");
    const std::string charge =
        entry.shows ? fmt::format(", its display at {}", units::show(*entry.shows)) : "";
    switch (*entry.happened) {
        case Happened::switched_off:
            return name_of(entry.load, "a load") + " was switched off";
        case Happened::switched_on:
            return name_of(entry.load, "a load") + " was switched on";
        case Happened::pack_joined:
            return pack + " joined" + charge;
        case Happened::pack_left:
            return pack + " left" + charge;
        case Happened::pack_back:
            return pack + " came back" + charge;
        case Happened::fuse_opened:
            return "the fuse of " + (entry.load ? name_of(entry.load, "") : pack) + " opened";
        case Happened::supply_back:
            return "the supply is back";
        case Happened::expected_back:
            break;
    }
    return "the supply is expected back by " + (entry.by ? units::show_clock(*entry.by) : "");
}

}  // namespace

std::string in_words(const LogEntry& entry) {
    if (entry.strikes) {
        const std::string about = entry.pack   ? ", of " + *entry.pack
                                  : entry.load ? ", of " + *entry.load
                                  : entry.sun  ? ", of the sun"
                                               : "";
        return fmt::format("Struck: the entry of {}{}.", units::show_clock(*entry.strikes), about);
    }
    return fmt::format("{}: {}.", units::show_clock(entry.at),
                       entry.happened ? what_happened(entry) : what_was_read(entry));
}

units::Result<std::string> with_entries(std::string_view text,
                                        const std::vector<LogEntry>& entries) {
    const auto document = scenario::read_document(text, "");
    if (!document) return units::fail(document.error());
    const scenario::Node* log = document->find("log");
    if (log != nullptr && log->form != scenario::Node::Form::header)
        return units::fail({.where = "log",
                            .found = "found a log in one pair of brackets",
                            .remedy = "write [[log]] above each entry, so that others can follow"});
    const std::size_t first = text.find('\n');
    const bool dos = first != std::string_view::npos && first > 0 && text[first - 1] == '\r';
    const std::string_view feed = dos ? "\r\n" : "\n";
    std::string made(text);
    if (!made.empty() && !made.ends_with('\n')) made += feed;
    for (const LogEntry& entry : entries) {
        made += feed;
        for (const char c : scenario::print(entry)) {
            if (c == '\n') {
                made += feed;
            } else {
                made += c;
            }
        }
    }
    return made;
}

}  // namespace notes
