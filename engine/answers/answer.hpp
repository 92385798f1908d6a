// One answer behind every face: text, JSON, CSV and the touch program show the same values.
// Everything here is finished: display units, rounded texts, whole sentences. No face computes.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "answers/wiring/diagram.hpp"
#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"
#include "words/said.hpp"

namespace answers {

// A number as people read it.
struct Quantity {
    double value = 0.0;  // in `unit`; always finite
    std::string unit;    // UCUM: "h", "W.h", "V", "%"; "1" where there is none
    words::Said shown;   // rounded, with the unit as people write it: "26.8 h"

    friend bool operator==(const Quantity&, const Quantity&) = default;
};

// A key that has no value this time, and why.
struct Absent {
    words::Said reason;

    friend bool operator==(const Absent&, const Absent&) = default;
};

// One of a few things, or a date: a program reads the code, a person the words.
struct Code {
    std::string code;      // "low_voltage", "2026-01-15T03:00:00"; the same in every language
    words::Said said;      // "the inverter switches off on low voltage"
    bool is_time = false;  // a date or a moment, which a spreadsheet reads by its code

    friend bool operator==(const Code&, const Code&) = default;
};

// The tree of an answer: shaped like JSON, members in the order they are to be read.
struct Member;
struct Value;
using List = std::vector<Value>;
using Members = std::vector<Member>;

struct Value {
    // A text is a name, the same in every language; what is said is words::Said.
    std::variant<Absent, bool, std::int64_t, Quantity, std::string, words::Said, List, Members,
                 Code>
        held;
};

struct Member {
    std::string key;    // what a script reads: "stored_at_end"
    words::Said label;  // in plain words: "left at the end"; empty where the key says it
    Value value;
    bool aside = false;  // text shows it only where all is shown
};

// A code of which nothing is said: what it tells stands beside it in words.
[[nodiscard]] bool is_for_programs(const Member& member);

// A finding and, when it belongs to one moment of the outage, which.
struct PinnedFinding {
    scenario::Finding finding;
    std::optional<units::Duration> at = {};  // after the outage starts
    words::Said when = {};                   // the same in words: "Thursday 03:00"
};

// One step of the arithmetic.
struct WorkingRow {
    words::Said section;   // "Loads", "Inverter", "Sun", "Battery", "Energy account"
    words::Said quantity;  // what it is: "refrigerator, a mean day"
    Quantity value;
    std::string formula;  // "outage method.md (3)"; empty for what was read from the file
    words::Said source;  // where it comes from: "metered 1.9 kWh over 31 h", a key of references.md
};

// A hazard the scenario touches.
struct Caution {
    words::Said hazard;  // "Electric shock"
    words::Said text;
    words::Said source;
};

// A table of numbers and words; every column has as many points as the others.
struct Column {
    std::string name;     // "stored"
    words::Said heading;  // "stored in the packs"
    std::string unit;     // UCUM; empty for words and codes
    std::variant<std::vector<double>, std::vector<words::Said>, std::vector<Code>> points;
};

// The words at a row; nullptr where the column has numbers, or no such row.
[[nodiscard]] const words::Said* words_at(const Column& column, std::size_t row);

struct Series {
    std::string name;  // "hours", "events", "loads", "sun_days"
    words::Said title;
    std::vector<Column> columns;
    bool brief = false;  // printed as a table on the first screen of text
};

// What is pinned to an hour of the chart.
struct Marker {
    double at = 0.0;    // h after the start
    char sign = '*';    // for plots made of characters; explained by `label`
    words::Said label;  // "Thursday 03:00 inverter switches off"
    scenario::Severity severity = scenario::Severity::note;
};

// The plot of the outage days, the same points in every face. Times in h after the start,
// energies in W.h, powers in W. Curves have one value for each entry of `at`.
struct DaysChart {
    units::LocalTime starts;
    double lasts = 0.0;   // h that are shown: to the end of the outage where that is known
    double top = 0.0;     // W.h, what all packs hold when full
    double usable = 0.0;  // W.h, what may be used of it at the start
    // h after the start, until which nine members in ten last, half and one in ten; until which the
    // likely course does where no chance is told. May lie beyond the end.
    struct Burns {
        double nine_in_ten = 0.0;
        double half = 0.0;
        double one_in_ten = 0.0;
    };
    Burns burns = {};
    std::optional<double> looked_at = {};  // h, where nobody knows how long the outage lasts
    std::vector<double> at = {};
    std::vector<double> nine_in_ten = {};  // stored, by nine members in ten at least
    std::vector<double> likely = {};       // stored
    std::vector<double> one_in_ten = {};   // stored, by one member in ten at least
    // Likewise three in four and one in four; empty where no member's store was followed.
    std::vector<double> three_in_four = {};
    std::vector<double> one_in_four = {};
    double empty = 0.0;                // W.h, that are left when the packs may give no more
    std::vector<int> priorities = {};  // of the loads, the first first
    // Where nobody knows how long it lasts: the chance that it is still out; else empty.
    std::vector<double> still_out = {};
    // What flowed in an hour of the likely course; the last may be shorter. What is stored at its
    // end is stored_before + sun_taken + charger_taken - served - lost. All in W.h.
    struct Hour {
        double from = 0.0;
        double to = 0.0;
        double stored_before = 0.0;
        double sun_offered = 0.0;
        double sun_taken = 0.0;
        double charger_taken = 0.0;
        double wanted = 0.0;  // by the loads
        double served = 0.0;
        double lost = 0.0;  // in inverter, adaptors, wiring and packs
        double stored = 0.0;
        double nine_in_ten = 0.0;  // stored at its end, by nine members in ten at least
        double one_in_ten = 0.0;
        std::vector<double> wanted_by = {};  // of `wanted`, by each of `priorities`
        double mean(double energy) const { return to > from ? energy / (to - from) : 0.0; }  // W
    };
    std::vector<Hour> hours = {};
    struct Span {
        double from = 0.0;
        double to = 0.0;
    };
    std::vector<Span> nights = {};     // between sunset and sunrise, clipped to the outage
    std::vector<Marker> markers = {};  // in time order
};

// One row of a bar chart. Low, likely and high are equal where there is no range.
struct Bar {
    words::Said label;  // "Thu 15 Jan", "flat on the ground", "3 panels"
    double low = 0.0;   // in the chart's unit, at least 0
    double likely = 0.0;
    double high = 0.0;
    words::Said words;    // "640 Wh (120 to 1300)", finished
    bool chosen = false;  // what the scenario has
};

// The same bars in every face.
struct BarChart {
    std::string name;  // "recharge", "placements", "panels"
    words::Said title;
    std::string unit;  // UCUM
    std::vector<Bar> bars;
};

// A few curves over one day; each has one value for each entry of `at`.
struct DayCurves {
    struct Curve {
        std::string name;   // "low", "likely", "high"
        words::Said label;  // "a dull day"
        std::vector<double> values;
        words::Said words;  // "390 Wh"
    };
    words::Said title;
    std::string unit;        // UCUM
    std::vector<double> at;  // h after midnight
    std::vector<Curve> curves;
};

// One load's start: each constraint as a bar against its limit, and the likely course. Bars and
// speeds count in shares, 1 is the limit or the synchronous speed.
struct StartBar {
    std::string constraint;  // "pack_current"
    words::Said label;       // "current limit of the packs"
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    double comfortable = 0.9;  // up to here it surely holds
    bool binding = false;
    words::Said shown;  // "78 to 113 %"
};
struct StartChart {
    std::string name;     // of the load
    std::string verdict;  // "starts", "marginal", "will_not_start"
    words::Said words;    // "may or may not start"
    std::vector<StartBar> bars;
    // One value an instant, or all empty for motors without a torque curve.
    std::vector<double> time;            // s after switching on
    std::vector<double> speed;           // of the synchronous speed
    std::vector<double> current;         // A, the motor's own
    std::vector<double> voltage;         // V, at the motor
    std::vector<double> direct_voltage;  // V, at the inverter's battery terminals
    bool comes_up = true;
};

// Builds a person chooses among: how sure each is, against what it weighs or costs.
struct BuildPoint {
    int packs = 1;
    int panels = 0;
    double chance = 0.0;  // %, as are low and high, between which it lies 19 times in 20
    double low = 0.0;
    double high = 0.0;
    int members = 0;               // of the chance, that were run
    words::Said chance_words;      // "93 times in 100 (90 to 95)"
    std::optional<double> weight;  // kg
    std::optional<double> price;   // in the money of the file
    bool answers = false;          // the build that the first sentence names
    bool of_file = false;          // what the scenario has
};
// The same builds against one figure: those that no other beats in it and in chance, and those that
// answer or are of the file; from the least on.
struct BuildsView {
    struct Place {
        std::size_t point = 0;
        double at = 0.0;
        bool unbeaten = true;
    };
    std::string name;     // "weight", "price"
    words::Said heading;  // "packs and panels weigh"
    std::string unit;     // UCUM
    double from = 0.0;    // of the scale, whole steps
    double to = 1.0;
    double step = 1.0;
    std::vector<Place> places;
};
struct BuildsChart {
    double goal = 90.0;  // %
    std::vector<BuildPoint> points;
    std::vector<BuildsView> views;  // only by what is known
};

// Where energy came from, and where it went, over the likely course.
struct Account {
    struct Entry {
        words::Said label;  // "sun into packs"
        Quantity amount;
    };
    std::vector<Entry> from;
    std::vector<Entry> to;
};

struct Answer {
    std::string question;                 // "outage", "packs", "start" …: the command's name
    std::string title;                    // of the scenario
    std::vector<words::Said> sentences;   // the plain answer is the first
    Members values;                       // `answer` of the JSON, keys in order
    std::vector<PinnedFinding> findings;  // worst first, then by time
    std::vector<WorkingRow> working;
    scenario::Assumptions assumptions;
    std::vector<Caution> cautions;
    std::vector<Series> series;                // the first is the one CSV prints
    std::optional<DaysChart> days;             // for questions with a clock
    std::optional<WiringDiagram> wiring = {};  // for questions about the build
    words::Said closing;                       // the last line of every face
    std::optional<words::Said> defect;  // why the numbers cannot be relied on: a fault of ours
    std::vector<BarChart> bars = {};
    std::optional<DayCurves> curves = {};
    std::vector<StartChart> starts = {};  // for the question whether motors start
    std::optional<BuildsChart> builds = {};
    std::optional<Account> account = {};  // for questions with a clock
};

[[nodiscard]] words::Said closing_line();

// A quantity, or the reason where the number is not finite.
[[nodiscard]] Value quantity_or_reason(Quantity quantity, words::Said reason);

// The value at a path such as "energy.stored_at_end"; nullptr where there is none.
[[nodiscard]] const Value* value_at(const Members& members, std::string_view path);

[[nodiscard]] bool holds_a_stop(const Answer& answer);

// Worst first; findings of one severity by time, those without a time first.
void sort_by_weight(std::vector<PinnedFinding>& findings);

// "stop", "caution" or "note".
[[nodiscard]] std::string_view word_for(scenario::Severity severity);

}  // namespace answers
