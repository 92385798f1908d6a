#include "answers/compare/words.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <optional>
#include <utility>

#include "answers/chance_words.hpp"
#include "answers/shown.hpp"
#include "answers/start/words.hpp"

namespace answers {

using fitting::Change;
using fitting::Dirty;
using fitting::Moved;
using fitting::Reach;
using words::Said;
using words::said;
using words::said_of;
using Joint = words::List::Joint;

namespace {

// 1 for "C1".
std::size_t number_of(std::string_view check) {
    std::size_t number = 0;
    std::from_chars(check.data() + 1, check.data() + check.size(), number);
    return number;
}

using Place = std::pair<Reach, std::string>;

Said checks_at(const Place& place, std::vector<std::string> checks) {
    std::ranges::sort(checks, {}, number_of);
    std::vector<Said> named;
    for (const std::string& check : checks)
        named.push_back(check_in_words(check));
    const Said all = words::joined(std::move(named), Joint::all);
    switch (place.first) {
        case Reach::here:
            return said<"{checks} of {place}">(all, place_in_words(place.second));
        case Reach::trunk:
            return said<"{checks} of the main path, the packs' leads and the outlets">(all);
        case Reach::everywhere:
            return said<"{checks} everywhere">(all);
    }
    return {};
}

// "fuse size and voltage drop of work lamps; short circuit everywhere"
Said dirty_in_words(const std::set<Dirty>& dirty) {
    std::map<Place, std::vector<std::string>> by_place;
    for (const Dirty& one : dirty)
        by_place[{one.reach, one.reach == Reach::here ? one.circuit : std::string()}].push_back(
            one.check);
    std::vector<Said> parts;
    for (const auto& [place, checks] : by_place)
        parts.push_back(checks_at(place, checks));
    return words::joined(std::move(parts), Joint::semicolon);
}

Said moved_in_words(const std::vector<Moved>& moved) {
    const auto worse = std::ranges::count_if(moved, fitting::is_worse);
    const auto better = static_cast<std::ptrdiff_t>(moved.size()) - worse;
    if (moved.empty()) return said<"No check is better or worse than before.">();
    if (worse == 0)
        return said_of<"{n} check is now better, none is worse.",
                       "{n} checks are now better, none is worse.">(better);
    if (better == 0) return said_of<"{n} check is now worse.", "{n} checks are now worse.">(worse);
    return said_of<"{n} check is now worse, {better} better.",
                   "{n} checks are now worse, {better} better.">(worse, better);
}

Said ask_again(const std::vector<Change>& changes) {
    std::vector<Said> questions;
    for (const std::string& question : questions_of(changes))
        questions.push_back(question_in_words(question));
    if (questions.empty()) return {};
    return said<"Ask again: {questions}.">(words::joined(std::move(questions), Joint::comma));
}

Said lasting(const questions::ComparedBuild& build) {
    const chance::Figures& figures = *build.figures;
    const Said often = chance_in_words(figures);
    if (counted_on_to_the_end(build.read.scenario.outage, figures))
        return said<"to the end, {often}">(often);
    return said<"{time} {goal}, to the end {often}">(in_words(figures.count_on, 2),
                                                     goal_in_words(figures.goal), often);
}

Said start_now(const questions::ComparedStart& start) {
    switch (start.verdict) {
        case starting::StartVerdict::starts:
            return said<"{load} starts">(start.load);
        case starting::StartVerdict::marginal:
            return said<"{load} may or may not start">(start.load);
        case starting::StartVerdict::will_not_start:
            return said<"{load} does not start">(start.load);
    }
    return {};
}

}  // namespace

Said place_in_words(const std::string& circuit) {
    return circuit.empty() ? said<"the unit">() : said<"{circuit}">(circuit);
}

Said verdict_in_words(const std::optional<fitting::Verdict>& verdict) {
    return verdict ? fitting::word_for(*verdict) : said<"{?check}absent">();
}

Said check_in_words(std::string_view check) {
    static const std::array all{said<"fuse size">(),
                                said<"load of the fuse">(),
                                said<"surge">(),
                                said<"short circuit">(),
                                said<"voltage rating">(),
                                said<"load of the wire">(),
                                said<"connector, switch or outlet">(),
                                said<"voltage drop">(),
                                said<"share of each pack">(),
                                said<"current from the other packs">(),
                                said<"what the inverter feeds">(),
                                said<"heat in the case">(),
                                said<"hydrogen and water">(),
                                said<"wire in its terminals">(),
                                said<"crimps, torque and polarity">(),
                                said<"place of use">()};
    const std::size_t number = number_of(check);
    if (number == 0 || number > all.size()) return said<"{check}">(check);
    return all[number - 1];
}

Said question_in_words(const std::string& question) {
    if (question == "outage") return said<"how long it lasts">();
    if (question == "start") return said<"whether the motors start">();
    if (question == "packs") return said<"how many packs">();
    if (question == "join") return said<"joining the packs">();
    if (question == "gauge") return said<"reading the voltmeter">();
    if (question == "storage") return said<"putting it away">();
    if (question == "sun") return said<"what the sun gives">();
    return said<"{question}">(question);
}

std::set<std::string> questions_of(const std::vector<Change>& changes) {
    std::set<std::string> questions;
    for (const Change& change : changes) {
        const auto asked = fitting::questions_of(change);
        questions.insert(asked.begin(), asked.end());
    }
    return questions;
}

Said changes_in_words(const std::vector<Change>& changes) {
    std::vector<Said> told;
    for (const Change& change : changes)
        told.push_back(change.circuit.empty()
                           ? change.words
                           : said<"{circuit}: {change}">(change.circuit, change.words));
    return said<"What changed: {changes}.">(words::joined(std::move(told), Joint::semicolon));
}

Said to_look_at_again(const questions::CompareFound& found) {
    return words::together({found.dirty.empty()
                                ? said<"No part of the wiring differs.">()
                                : said<"Check again: {checks}.">(dirty_in_words(found.dirty)),
                            moved_in_words(found.moved), ask_again(found.changes)});
}

Said start_in_words(const questions::ComparedStart* before, const questions::ComparedStart& after) {
    const Said now = said<"{start}: {share} of its tightest limit, {limit}">(
        start_now(after), in_percent(after.worst), starting::in_words(after.binding));
    if (before == nullptr) return said<"{now} (it was not there before).">(now);
    return said<"{now} (before: {verdict}, {share}).">(now, plain(before->verdict),
                                                       in_percent(before->worst));
}

Said runtime_in_words(const questions::ComparedBuild& before,
                      const questions::ComparedBuild& after) {
    if (!before.figures || !after.figures) return {};
    const Said then = lasting(before);
    const Said now = lasting(after);
    if (then == now) return said<"Both last {lasting}.">(now);
    return said<"The new build lasts {now}; the old one {before}.">(now, then);
}

}  // namespace answers
