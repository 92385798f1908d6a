// What an error tells to give can be given: each hint is typed back in the place that it is about.
#include <regex>

#include "key_trials.hpp"
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using scenario::Override;
using scenario::Overrides;
using units::Error;

units::Errors errors_of(std::string_view base, const Overrides& overrides) {
    const auto read = scenario::read_scenario(base, "base.toml", overrides);
    return read ? units::Errors{} : read.error();
}

// A value as it stands after the =, or without its quotes, as a sentence may show it.
constexpr const char* in_quotes_or_brackets = R"((\{.*\}|\[.*\]|"[^"]*"|true\b|false\b))";
constexpr const char* bare = R"((-?[0-9][^;,()?"]*))";

// "add a line such as over = "31 h"" is about a key beside the place, or inside it.
std::optional<Override> key_and_value(const Error& error) {
    std::smatch match;
    const std::regex form(std::string(R"(([a-z_]+) = )") + in_quotes_or_brackets);
    const std::string remedy =
        std::string(error.remedy).substr(0, std::string(error.remedy).find('{'));
    if (!std::regex_search(remedy, match, form)) return std::nullopt;
    const auto dot = error.where.rfind('.');
    const std::string table = dot == std::string::npos ? "" : error.where.substr(0, dot + 1);
    return Override{.key = table + match[1].str(), .value = match[2]};
}

std::string quoted(std::string words) {
    words.erase(words.find_last_not_of(" .") + 1);
    return '"' + words + '"';
}

// What to type where; nothing where the hint shows nothing to type.
std::optional<Override> typed_back(const Error& error) {
    if (const auto beside = key_and_value(error)) return beside;
    const std::string remedy(error.remedy);
    std::smatch match;
    for (const std::string before : {"such as ", "for instance ", "write ", "give "}) {
        if (std::regex_search(remedy, match, std::regex(before + in_quotes_or_brackets)))
            return Override{.key = error.where, .value = match[1]};
        if (std::regex_search(remedy, match, std::regex(before + bare)))
            return Override{.key = error.where, .value = quoted(match[1])};
    }
    if (std::regex_search(remedy, match, std::regex("did you mean \"?([^?\"]+)\"?\\?")))
        return Override{.key = error.where, .value = quoted(match[1])};
    if (std::regex_search(remedy, match, std::regex("whole number from (-?[0-9]+)")))
        return Override{.key = error.where, .value = match[1]};
    if (std::regex_search(remedy, match, std::regex("(?:one of|write) \"?([A-Za-z_0-9]+)")))
        return Override{.key = error.where, .value = quoted(match[1])};
    return std::nullopt;
}

// Hints to leave something out, or to look at it again, show nothing to type.
bool says_what_to_do(const Error& error) {
    static const std::regex doing(
        "^(?:take|keep|give at most|give counts|check|use|put|name|end|"
        "write \\[|give each|give a name|write one line|give the|give both)");
    return std::regex_search(std::string(error.remedy), doing);
}

bool is_there(const units::Errors& errors, const Error& error) {
    return std::ranges::any_of(errors, [&](const Error& one) {
        return one.where == error.where && one.found == error.found;
    });
}

// The error at the key itself, not at what went wrong elsewhere because of it.
const Error* error_at(const units::Errors& errors, const std::string& key) {
    const std::string last = key.substr(key.rfind('.') + 1);
    const auto found = std::ranges::find_if(errors, [&](const Error& error) {
        const auto at = error.where.rfind('.' + last);
        return at != std::string::npos;
    });
    return found == errors.end() ? nullptr : &*found;
}

struct Counts {
    int typed = 0;
    int accepted = 0;
    int another = 0;
    int nothing = 0;
};

// Typed over what was refused; behind it where the hint is about another key.
Overrides with_hint(const key_trials::Trial& trial, const Error& error, const Override& typed) {
    const bool in_its_place =
        error.where.ends_with('.' + trial.key.substr(trial.key.rfind('.') + 1)) &&
        typed.key == error.where;
    if (in_its_place) return {{.key = trial.key, .value = typed.value}};
    // What stood in quotes and should not, inside a table or list.
    const std::string wrong = '"' + typed.value + '"';
    const auto at = trial.value.find(wrong);
    if (typed.key == error.where && at != std::string::npos) {
        std::string value = trial.value;
        return {{.key = trial.key, .value = value.replace(at, wrong.size(), typed.value)}};
    }
    return {{.key = trial.key, .value = trial.value}, typed};
}

void try_hint(const key_trials::Base& base, const key_trials::Trial& trial, Counts& counts) {
    const Override first{.key = trial.key, .value = trial.value};
    const auto errors = errors_of(base.text, {first});
    const Error* error = error_at(errors, trial.key);
    if (error == nullptr) return;
    const auto typed = typed_back(*error);
    if (!typed) {
        ++counts.nothing;
        EXPECT_TRUE(says_what_to_do(*error)) << units::print(*error);
        return;
    }
    ++counts.typed;
    const auto after = errors_of(base.text, with_hint(trial, *error, *typed));
    if (after.empty()) {
        ++counts.accepted;
    } else if (!is_there(after, *error)) {
        ++counts.another;
    } else {
        ADD_FAILURE() << units::print(*error) << "\ntyped back: " << typed->key << " = "
                      << typed->value << "\n"
                      << units::print(after.front());
    }
}

// Of a table typed whole nothing is told but to name a key.
bool is_whole_table(const key_trials::Trial& trial) {
    return trial.key.find('.') == std::string::npos;
}

TEST(Hints, typed_back_are_accepted_or_meet_another_error) {
    Counts counts;
    for (const auto& base : key_trials::bases())
        for (const auto& trial : key_trials::all_trials())
            if (trial.kind != key_trials::Kind::within && !is_whole_table(trial))
                try_hint(base, trial, counts);
    fmt::print("hints typed back {}, accepted {}, another error {}; nothing to type {}\n",
               counts.typed, counts.accepted, counts.another, counts.nothing);
    EXPECT_GT(counts.typed, 3000);
    EXPECT_GT(counts.accepted, 2 * counts.another);
}

}  // namespace
