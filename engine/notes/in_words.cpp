// An entry of the log said back, and put behind the text of a file.
#include "notes/understand.hpp"
#include "scenario/file/document.hpp"
#include "units/quote.hpp"
#include "units/said.hpp"

namespace notes {
namespace {

using scenario::Happened;
using scenario::LogEntry;
using units::amount;
using words::Said;
using words::said;
using words::said_of;

Said name_of(const std::optional<std::string>& name) {
    return units::quote(name.value_or(""), 80);
}

words::Amount volts(const scenario::VoltageShown& shown) {
    return units::amount_in(shown.volts, "V", shown.decimals);
}

words::Amount drawn(const scenario::DrawnMeanwhile& under) {
    return under.power ? amount(*under.power) : amount(under.current.value_or(units::Current()));
}

words::Moment with_date(units::LocalTime time) {
    return units::moment(time, words::Moment::Form::weekday_date_clock);
}

Said voltage_read(const LogEntry& entry) {
    const words::Amount voltage = volts(*entry.reads);
    Said text = entry.pack ? said<"{pack} reads {voltage}">(name_of(entry.pack), voltage)
                           : said<"all packs, joined, read {voltage}">(voltage);
    if (entry.under) text = said<"{reading} while {use} is drawn">(text, drawn(*entry.under));
    if (entry.rested) text = said<"{reading} after {time} of rest">(text, *entry.rested);
    return text;
}

Said word_of(scenario::SeenSky sky) {
    switch (sky) {
        case scenario::SeenSky::clear:
            return said<"clear">();
        case scenario::SeenSky::thin:
            return said<"thin">();
        case scenario::SeenSky::grey:
            return said<"grey">();
        case scenario::SeenSky::dark:
            break;
    }
    return said<"dark">();
}

Said sun_counted(units::Energy energy, const std::optional<scenario::SeenSky>& sky) {
    if (!sky) return said<"the controller counted {energy} since midnight">(energy);
    return said<"the controller counted {energy} since midnight, with a sky that was {sky}">(
        energy, word_of(*sky));
}

Said charge_shown(const LogEntry& entry) {
    const auto charge = entry.shows.value_or(units::StateOfCharge());
    return entry.pack ? said<"the display of {pack} shows {charge}">(name_of(entry.pack), charge)
                      : said<"the display of all packs shows {charge}">(charge);
}

Said what_was_read(const LogEntry& entry) {
    if (entry.reads) return voltage_read(entry);
    if (entry.metered)
        return said<"the meter on {load} counted {energy} over {time}">(
            name_of(entry.load), entry.metered->energy, entry.metered->over);
    if (entry.sun && entry.sun->taken) return sun_counted(*entry.sun->taken, entry.sky);
    if (entry.temperature)
        return said<"{temperature} in {place}">(*entry.temperature, name_of(entry.keeps));
    return charge_shown(entry);
}

Said fuse_opened(const LogEntry& entry) {
    if (entry.load) return said<"the fuse of {part} opened">(name_of(entry.load));
    if (!entry.count) return said<"the fuse of {part} opened">(name_of(entry.pack));
    return said<"the fuse of {n} of {packs} opened">(*entry.count, name_of(entry.pack));
}

// A pack, or some of its kind, that joined, left or came back.
Said pack_moved(const LogEntry& entry) {
    const Said pack = name_of(entry.pack);
    const int count = entry.count.value_or(0);
    switch (*entry.happened) {
        case Happened::pack_joined:
            return entry.count
                       ? said_of<"{n} of {packs} joined", "{n} of {packs} joined">(count, pack)
                       : said<"{pack} joined">(pack);
        case Happened::pack_left:
            return entry.count ? said_of<"{n} of {packs} left", "{n} of {packs} left">(count, pack)
                               : said<"{pack} left">(pack);
        default:
            return entry.count ? said_of<"{n} of {packs} came back", "{n} of {packs} came back">(
                                     count, pack)
                               : said<"{pack} came back">(pack);
    }
}

Said what_happened(const LogEntry& entry) {
    switch (*entry.happened) {
        case Happened::switched_off:
            return said<"{load} was switched off">(name_of(entry.load));
        case Happened::switched_on:
            return said<"{load} was switched on">(name_of(entry.load));
        case Happened::pack_joined:
        case Happened::pack_left:
        case Happened::pack_back:
            return entry.shows
                       ? said<"{event}, its display at {charge}">(pack_moved(entry), *entry.shows)
                       : pack_moved(entry);
        case Happened::fuse_opened:
            return fuse_opened(entry);
        case Happened::supply_back:
            return said<"the supply is back">();
        case Happened::expected_back:
            break;
    }
    return said<"the supply is expected back by {time}">(
        with_date(entry.by.value_or(units::LocalTime())));
}

Said struck(const LogEntry& entry) {
    const words::Moment time = with_date(*entry.strikes);
    if (entry.pack || entry.load)
        return said<"Struck: the entry of {time}, of {name}">(
            time, entry.pack ? *entry.pack : *entry.load);
    if (entry.sun) return said<"Struck: the entry of {time}, of the sun">(time);
    return said<"Struck: the entry of {time}">(time);
}

}  // namespace

Said in_short(const LogEntry& entry) {
    if (entry.strikes) return struck(entry);
    return said<"{time}: {event}">(with_date(entry.at),
                                   entry.happened ? what_happened(entry) : what_was_read(entry));
}

Said in_words(const LogEntry& entry) {
    return said<"{entry}.">(in_short(entry));
}

units::Result<std::string> with_entries(std::string_view text,
                                        const std::vector<LogEntry>& entries) {
    const auto document = scenario::read_document(text, "");
    if (!document) return units::fail(document.error());
    const scenario::Node* log = document->find("log");
    if (log != nullptr && log->form != scenario::Node::Form::header)
        return units::fail(
            {.where = "log",
             .found = said<"found a log in one pair of brackets">(),
             .remedy = said<"write [[log]] above each entry, so that others can follow">()});
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
