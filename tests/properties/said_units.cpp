// Whatever is said of a quantity or a time, every face has it whole in the reader's units and
// clock: never one end of a range, a number without its other unit, or a bare hour.
#include <map>
#include <regex>

#include "faces/csv.hpp"
#include "faces/json.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
#include "units/said.hpp"
#include "units/size_said.hpp"

namespace {

using words::Amount;
using words::Between;
using words::Dimension;
using words::Part;
using words::Said;
using words::said;

// A quantity that has another name in the United States, with the span it is drawn from.
struct Kind {
    Dimension dimension;
    double least;  // SI
    double most;
};
constexpr std::array<Kind, 7> kinds{{{Dimension::temperature, 213.15, 393.15},
                                     {Dimension::temperature_difference, 0.1, 60.0},
                                     {Dimension::mass, 1e-5, 5e3},
                                     {Dimension::length, 1e-5, 1e6},
                                     {Dimension::area, 5e-8, 9e-5},
                                     {Dimension::area, 0.02, 50.0},
                                     {Dimension::volume, 1e-7, 20.0}}};

double between(double least, double most) {
    return least + (most - least) * *rc::gen::inRange(0, 1'000'001) * 1e-6;
}

// Small ones as often as large ones.
double si_of(const Kind& kind) {
    if (kind.dimension == Dimension::temperature) return between(kind.least, kind.most);
    return std::exp(between(std::log(kind.least), std::log(kind.most)));
}

Part some_wire() {
    return units::amount(units::WireSize(units::AmericanGauge{*rc::gen::inRange(-3, 41)}));
}

Part some_quantity() {
    const Kind& kind = kinds[*rc::gen::inRange<std::size_t>(0, kinds.size())];
    switch (*rc::gen::inRange(0, 4)) {
        case 0: {
            // What is known of a thing spans less than tenfold: both ends stand in one unit.
            const double one = si_of(kind);
            const double other = kind.dimension == Dimension::temperature
                                     ? si_of(kind)
                                     : std::min(kind.most, one * between(1.0, 10.0));
            return Between{kind.dimension, std::min(one, other), std::max(one, other)};
        }
        case 1:
            return Amount{.dimension = Dimension::length,
                          .si = between(300.0, 9e5),
                          .unit = *rc::gen::element("m", "km"),
                          .decimals = 0};
        case 2:
            return some_wire();
        default:
            return Amount{kind.dimension, si_of(kind)};
    }
}

Part some_moment() {
    return words::Moment{.since_1970 = 60.0 * *rc::gen::inRange(0, 40'000'000),
                         .form = *rc::gen::element(words::Moment::Form::clock,
                                                   words::Moment::Form::weekday_and_clock,
                                                   words::Moment::Form::date_and_clock,
                                                   words::Moment::Form::weekday_date_clock)};
}

// Sentences within sentences, and lists.
Said some_saying() {
    const Said inner = said<"{first}, {second}">(some_quantity(), some_moment());
    const Said list =
        words::joined({said<"{what}">(some_quantity()), inner}, words::List::Joint::all);
    return said<"{inner}: {first}; {second}.">(list, some_quantity(), some_moment());
}

answers::Answer some_answer() {
    answers::Answer answer;
    answer.question = "read";
    answer.sentences = {some_saying()};
    answer.values = {{"value", "value", {some_saying()}},
                     {"code", "code", {answers::Code{"code", some_saying()}}},
                     {"why", "why", {answers::Absent{some_saying()}}}};
    answer.findings = {{.finding = {.severity = scenario::Severity::stop,
                                    .where = "here",
                                    .text = some_saying(),
                                    .mend = some_saying(),
                                    .source = some_saying()}}};
    answer.assumptions = {{.where = "key", .text = some_saying(), .source = some_saying()}};
    answer.cautions = {{"hazard", some_saying(), some_saying()}};
    answer.series = {{.name = "rows",
                      .title = "rows",
                      .columns = {{"what", "what", "", std::vector<Said>{some_saying()}}}}};
    answer.closing = "";
    return answer;
}

words::Language some_reader() {
    words::Language reader = *words::language(*rc::gen::element<std::string>("en", "de", "es"));
    reader.us_units = *rc::gen::arbitrary<bool>();
    reader.twelve_hours = *rc::gen::arbitrary<bool>();
    return reader;
}

std::string on_one_line(const std::string& text) {
    std::string line;
    for (const char letter : text)
        if (letter != ' ' && letter != '\n')
            line += letter;
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    return line;
}

std::vector<std::string> faces_of(const answers::Answer& answer, const words::Language& reader) {
    const faces::Look narrow{.width = 44, .full = true, .language = reader};
    const faces::Look wide{.width = 200, .full = true, .language = reader};
    return {on_one_line(faces::in_text(answer, narrow)), on_one_line(faces::in_text(answer, wide)),
            faces::in_html(answer, reader), faces::in_csv(answer, reader)};
}

// ---- Quantities.

const std::string number = "(?:−|-)?[0-9]+(?:[.,][0-9]+|/0)?";
const std::string one_or_two = "(" + number + ")(?: [a-z]+ (" + number + "))? ";

struct Pair {
    std::string metric;
    std::string us;
    double factor;
    double offset = 0.0;
};

double value_of(std::string text) {
    if (text.starts_with("−")) text = "-" + text.substr(std::string("−").size());
    std::ranges::replace(text, ',', '.');
    return std::strtod(text.c_str(), nullptr);
}

// Half of the last digit.
double half_a_digit(const std::string& text) {
    const auto point = text.find_first_of(".,");
    return point == text.npos ? 0.5
                              : 0.5 * std::pow(10.0, double(point) + 1.0 - double(text.size()));
}

// As far as three digits of either number, or a whole one, are known.
bool agree(const std::string& metric, const std::string& us, const Pair& pair) {
    const double exact = value_of(metric) * pair.factor + pair.offset;
    const double rounding = std::max(0.0051 * std::abs(value_of(metric)), half_a_digit(metric));
    const double own = std::max(0.0051 * std::abs(value_of(us)), 1.01 * half_a_digit(us));
    return std::abs(value_of(us) - exact) <= rounding * pair.factor + own;
}

const std::regex& form_of(const std::string& text) {
    static std::map<std::string, std::regex> made;
    return made.try_emplace(text, text).first->second;
}

// Whether the numbers of a pair are the same on either side of its bracket. Two that are one in the
// other unit may stand there as one.
void expect_whole(const std::smatch& found, const Pair& pair) {
    RC_LOG() << found.str();
    RC_ASSERT(found[2].matched || !found[4].matched);
    if (pair.factor == 0.0) return;
    RC_ASSERT(agree(found[1], found[3], pair));
    if (found[2].matched) RC_ASSERT(agree(found[2], found[4].matched ? found[4] : found[3], pair));
    for (const auto place : {3, 4})
        if (found[place].matched && value_of(found[place]) == 0.0)
            RC_ASSERT(pair.offset != 0.0 || value_of(found[place - 2]) == 0.0);
}

// The text without the pairs of this kind.
std::string without(const std::string& text, const Pair& pair) {
    const std::regex& both =
        form_of(one_or_two + pair.metric + " \\(" + one_or_two + pair.us + "\\)");
    std::string rest;
    auto from = text.begin();
    for (std::sregex_iterator at(text.begin(), text.end(), both), end; at != end; ++at) {
        expect_whole(*at, pair);
        rest.append(from, (*at)[0].first);
        from = (*at)[0].second;
    }
    return rest.append(from, text.end());
}

const std::vector<Pair>& pairs() {
    static const std::vector<Pair> all{{"°C", "°F", 1.8, 32.0},
                                       {"K", "°F", 1.8},
                                       {"g", "oz", 16.0 / 453.59237},
                                       {"kg", "lb", 1.0 / 0.45359237},
                                       {"t", "lb", 1e3 / 0.45359237},
                                       {"mm", "in", 1.0 / 25.4},
                                       {"m", "ft", 1.0 / 0.3048},
                                       {"km", "mi", 1.0 / 1.609344},
                                       {"mL", "fl oz", 128.0 / 3785.411784},
                                       {"L", "gal", 1.0 / 3.785411784},
                                       {"m³", "gal", 1e3 / 3.785411784},
                                       {"m²", "ft²", 1.0 / (0.3048 * 0.3048)},
                                       {"mm²", "AWG", 0.0},  // no straight line; see amount.cpp
                                       {"AWG", "mm²", 0.0}};
    return all;
}

bool has_unit(const std::string& text, const std::string& unit) {
    return std::regex_search(text, form_of("[0-9] " + unit + "(?![a-zA-Z²³/0-9])"));
}

void expect_metric(const std::string& text) {
    RC_LOG() << text;
    for (const char* unit : {"°F", "oz", "fl oz", "lb", "in", "ft", "ft²", "mi", "gal"})
        RC_ASSERT(!has_unit(text, unit));
}

// Each number with a unit stands in a pair: nothing is left beside them.
void expect_both(const std::string& text) {
    RC_LOG() << text;
    std::string rest = text;
    for (const Pair& pair : pairs())
        rest = without(rest, pair);
    RC_LOG() << rest;
    expect_metric(rest);
    for (const Pair& pair : pairs())
        RC_ASSERT(!has_unit(rest, pair.metric));
}

TEST(said_units, every_quantity_is_metric_alone_or_whole_in_both) {
    EXPECT_TRUE(rc::check([] {
        const words::Language reader = some_reader();
        for (const std::string& text : faces_of(some_answer(), reader))
            reader.us_units ? expect_both(text) : expect_metric(text);
    }));
}

// ---- The clock.

void expect_clock(const std::string& text, bool twelve) {
    static const std::regex time("([0-9]+):[0-9][0-9]( AM| PM)?");
    RC_LOG() << text;
    int count = 0;
    for (std::sregex_iterator at(text.begin(), text.end(), time), end; at != end; ++at, ++count) {
        const int hour = std::stoi((*at)[1]);
        RC_ASSERT((*at)[2].matched == twelve);
        RC_ASSERT((twelve ? hour >= 1 && hour <= 12 : hour >= 0 && hour <= 23));
    }
    RC_ASSERT(count > 0);
}

TEST(said_units, every_time_of_day_is_of_the_readers_clock) {
    EXPECT_TRUE(rc::check([] {
        const words::Language reader = some_reader();
        for (const std::string& text : faces_of(some_answer(), reader))
            expect_clock(text, reader.twelve_hours);
    }));
}

// A program reads English in metric units, whoever asks.
TEST(said_units, json_is_the_same_for_every_reader) {
    EXPECT_TRUE(rc::check([] { expect_metric(faces::in_json(some_answer(), {})); }));
}

}  // namespace
