#include "notes/understand.hpp"

#include <algorithm>

#include "notes/amounts.hpp"
#include "notes/moments.hpp"
#include "notes/names.hpp"
#include "notes/words.hpp"
#include "units/quote.hpp"

namespace notes {
namespace {

using scenario::Happened;
using scenario::LogEntry;
using scenario::SeenSky;
using units::Errors;
using words::Said;
using words::said;

Said how_to_write() {
    return said<
        "write such as \"21:30 main 12.9 V under 150 W\", \"freezer 1.15 kWh over 24 h\", \"sun "
        "420 Wh grey\", \"modem off\" or \"expansion left\"">();
}

// One line on its way to an entry.
class Line {
  public:
    Line(std::string_view line, const scenario::Scenario& scenario, units::LocalTime now)
        : line_(line), scenario_(scenario), now_(now), words_(line) {}

    units::Result<Understood> understood() {
        if (!take_strike()) {
            take_expected();
            take_time();
            named_ = take_names(words_, scenario_);
            auto amounts = take_amounts(words_);
            if (!amounts) return units::fail(std::move(amounts.error()));
            amounts_ = *amounts;
            take_sky();
            take_readings();
            take_happening();
        }
        words_.take_all({"the",       "a",     "an",   "of",    "is",    "was",      "are",
                         "at",        "in",    "with", "under", "while", "drawing",  "drawn",
                         "pack",      "packs", "load", "reads", "read",  "shows",    "display",
                         "voltmeter", "has",   "and",  "by",    "since", "midnight", "to",
                         "its",       "all",   "for",  "over",  "today"});
        if (about_a_meter_) words_.take_all({"meter", "metered", "used", "on", "counted"});
        for (const std::string& word : words_.left())
            refuse_word(word);
        check_all_used();
        if (!errors_.empty()) return units::fail(std::move(errors_));
        return Understood{.entry = entry_, .said = in_words(entry_)};
    }

  private:
    std::string_view line_;
    const scenario::Scenario& scenario_;
    units::LocalTime now_;
    Words words_;
    Named named_;
    Amounts amounts_;
    LogEntry entry_;
    Errors errors_;
    int told_ = 0;  // things that the line tells
    bool about_a_meter_ = false;

    void refuse(Said found, Said remedy) {
        errors_.push_back({.where = '"' + units::quote(line_, 80) + '"',
                           .found = std::move(found),
                           .remedy = std::move(remedy)});
    }
    void refuse_word(const std::string& word) {
        refuse(said<"found \"{word}\", which is not understood">(units::quote(word)),
               how_to_write());
    }

    // ---- "strike 21:30 main"

    bool take_strike() {
        if (!words_.take_phrase("strike") && !words_.take_phrase("strikes") &&
            !words_.take_phrase("struck"))
            return false;
        ++told_;
        entry_.at = now_;
        entry_.strikes = take_moment(words_, Day::latest, now_);
        if (!entry_.strikes)
            refuse(said<"found no time of the entry that was wrong">(),
                   said<"write strike 21:30">());
        const Named named = take_names(words_, scenario_);
        entry_.pack = named.pack;
        entry_.load = named.pack ? std::nullopt : named.load;
        if (words_.take_phrase("sun")) entry_.sun = scenario::SunCounted{};
        return true;
    }

    // ---- "expected back by 12:00"

    void take_expected() {
        if (!words_.take_phrase("expected back") && !words_.take_phrase("back expected")) return;
        ++told_;
        entry_.happened = Happened::expected_back;
        for (std::size_t at = 0; at < words_.size() && !entry_.by; ++at) {
            if (words_.plain(at) != "by" && words_.plain(at) != "at") continue;
            entry_.by = take_moment(words_, at + 1, Day::next, now_);
        }
        if (!entry_.by)
            refuse(said<"found no time at which it is expected">(), said<"add by 12:00">());
        words_.take_all({"supply", "power"});
    }

    void take_time() {
        entry_.at = now_;
        const auto first = take_moment(words_, Day::latest, now_);
        if (!first) return;
        entry_.at = *first;
        if (take_moment(words_, Day::latest, now_))
            refuse(said<"found two times">(), said<"write a line for each thing, with one time">());
    }

    void take_sky() {
        const std::vector<std::pair<std::string_view, SeenSky>> skies{{"clear", SeenSky::clear},
                                                                      {"thin", SeenSky::thin},
                                                                      {"grey", SeenSky::grey},
                                                                      {"gray", SeenSky::grey},
                                                                      {"dark", SeenSky::dark}};
        for (const auto& [word, sky] : skies)
            if (words_.take_phrase(word)) {
                if (entry_.sky)
                    refuse(said<"found two skies">(), said<"give the one of most of the day">());
                entry_.sky = sky;
            }
    }

    // ---- What was read.

    void take_readings() {
        if (amounts_.voltage) take_voltage();
        if (amounts_.charge) {
            ++told_;
            entry_.shows = amounts_.charge;
            entry_.pack = named_.pack;
        }
        if (amounts_.energy) take_energy();
        if (amounts_.temperature) take_temperature();
    }

    void take_voltage() {
        ++told_;
        entry_.reads = amounts_.voltage;
        entry_.pack = named_.pack;
        if (amounts_.power && amounts_.current)
            refuse(said<"found both watts and amperes">(), said<"give one of them">());
        if (amounts_.power || amounts_.current)
            entry_.under = {.power = amounts_.power,
                            .current = amounts_.power ? std::nullopt : amounts_.current};
        const bool rested = words_.take_phrase("rested") || words_.take_phrase("resting") ||
                            words_.take_phrase("rest");
        if (rested && amounts_.duration && !amounts_.energy) entry_.rested = amounts_.duration;
        if (rested && !amounts_.duration)
            refuse(said<"found a rest without its length">(), said<"write rested 8 h">());
        if (rested && entry_.under)
            refuse(said<"found a rest beside what was drawn">(), said<"give one of them">());
    }

    void take_energy() {
        ++told_;
        const bool sun = words_.take_phrase("sun") || words_.take_phrase("solar") ||
                         words_.take_phrase("panels") || entry_.sky.has_value();
        words_.take_all({"controller", "counter", "counted"});
        if (sun) {
            entry_.sun = scenario::SunCounted{amounts_.energy};
            return;
        }
        about_a_meter_ = true;
        if (!named_.load)
            refuse(said<"found energy, and not of what">(),
                   said<"name the load that the meter is on, or write sun 420 Wh">());
        if (!amounts_.duration)
            refuse(said<"found energy without the time in which it was counted">(),
                   said<"add over 24 h">());
        entry_.load = named_.load;
        if (amounts_.duration)
            entry_.metered = scenario::MeteredUse{
                .energy = *amounts_.energy, .over = *amounts_.duration, .room = {}};
    }

    void take_temperature() {
        ++told_;
        entry_.temperature = amounts_.temperature;
        entry_.keeps = named_.load;
        for (const std::string_view place :
             {"room", "freezer", "refrigerator", "fridge", "outside", "cooler"})
            if (!entry_.keeps && words_.take_phrase(place)) entry_.keeps = std::string(place);
        words_.take_all({"thermometer"});
        if (!entry_.keeps)
            refuse(said<"found a temperature, and not of what">(),
                   said<"say where the thermometer hangs: room, refrigerator, freezer">());
    }

    // ---- What was done.

    bool takes_any(const std::vector<std::string_view>& phrases) {
        return std::ranges::any_of(
            phrases, [&](std::string_view phrase) { return words_.take_phrase(phrase); });
    }

    void take_happening() {
        if (takes_any({"fuse opened", "fuse blew", "fuse blown", "fuse has opened", "fuse open"})) {
            happened(Happened::fuse_opened, true, true);
        } else if (takes_any({"supply back", "power back", "grid back", "mains back",
                              "supply is back", "power is back"})) {
            happened(Happened::supply_back, false, false);
        } else if (takes_any({"joined", "added"})) {
            happened(Happened::pack_joined, true, false);
        } else if (takes_any({"left", "gone"})) {
            happened(Happened::pack_left, true, false);
        } else if (takes_any({"back", "returned"})) {
            happened(Happened::pack_back, true, false);
        } else if (takes_any({"switched off", "turned off", "unplugged", "off"})) {
            happened(Happened::switched_off, false, true);
        } else if (!about_a_meter_ && takes_any({"switched on", "turned on", "plugged in", "on"})) {
            happened(Happened::switched_on, false, true);
        }
        if (told_ == 0 && errors_.empty() && !entry_.happened && !amounts_.power &&
            !amounts_.current)
            refuse(words_.left().empty() ? said<"found nothing that was read or done">()
                                         : said<"found nothing that is understood">(),
                   how_to_write());
    }

    void happened(Happened what, bool of_packs, bool of_loads) {
        // A pack that joins with the charge its display shows is one thing.
        const bool with_charge = of_packs && entry_.shows && told_ == 1;
        told_ += with_charge ? 0 : 1;
        entry_.happened = what;
        if (of_packs && named_.pack) {
            entry_.pack = named_.pack;
            entry_.count = amounts_.count;
            amounts_.count.reset();
        } else if (of_loads && named_.load) {
            entry_.load = named_.load;
        } else if (of_packs || of_loads) {
            refuse(of_packs && of_loads
                       ? said<"found no pack or load of this file that it is about">()
                   : of_packs ? said<"found no pack of this file that it is about">()
                              : said<"found no load of this file that it is about">(),
                   said<"name it as the file does">());
        }
    }

    // Nothing that was read off the line may be dropped on the way.
    void check_all_used() {
        if (told_ > 1)
            refuse(said<"found several things in one line">(),
                   said<"write a line for each of them">());
        if (amounts_.count)
            refuse(said<"found {number} without a unit">(*amounts_.count),
                   said<"add the unit: V, W, Wh, %, degC, h">());
        const bool drawn = amounts_.power || amounts_.current;
        if (drawn && !entry_.under && errors_.empty())
            refuse(said<"found what was drawn, and no voltage">(),
                   said<"add the volts; what a load draws is told by a meter, as 1.15 kWh over 24 "
                        "h">());
        if (amounts_.duration && !entry_.rested && !amounts_.energy && errors_.empty())
            refuse(said<"found a length of time that belongs to nothing">(),
                   said<"write rested 8 h beside volts, or over 24 h beside a meter's energy">());
        if (amounts_.duration && entry_.sun && entry_.sun->taken && errors_.empty())
            refuse(said<"found a length of time beside the sun of today">(),
                   said<"the controller counts since midnight; leave it out">());
        if (entry_.sky && !entry_.sun && errors_.empty())
            refuse(said<"found a sky without what the controller counted">(),
                   said<"add sun 420 Wh">());
        const bool told_of_pack = entry_.pack || !named_.pack || named_.pack == named_.load;
        const bool told_of_load =
            entry_.load || entry_.keeps || !named_.load || named_.pack == named_.load;
        if (errors_.empty() && !(told_of_pack && told_of_load))
            refuse(said<"found {name}, which this is not about">(told_of_pack ? *named_.load
                                                                              : *named_.pack),
                   said<"leave it out, or write a line for it">());
    }
};

}  // namespace

units::Result<Understood> understand(std::string_view line, const scenario::Scenario& scenario,
                                     units::LocalTime now) {
    return Line(line, scenario, now).understood();
}

units::Result<std::vector<Understood>> understand_all(const std::vector<std::string>& lines,
                                                      const scenario::Scenario& scenario,
                                                      units::LocalTime now) {
    std::vector<Understood> all;
    Errors errors;
    for (const std::string& line : lines) {
        if (line.find_first_not_of(" \t\r\n") == std::string::npos) continue;
        auto one = understand(line, scenario, now);
        if (one) {
            all.push_back(std::move(*one));
        } else {
            std::ranges::move(one.error(), std::back_inserter(errors));
        }
    }
    if (!errors.empty()) return units::fail(std::move(errors));
    return all;
}

}  // namespace notes
