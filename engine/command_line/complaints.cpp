#include "command_line/complaints.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <string_view>
#include <utility>

#include "units/quote.hpp"

namespace command_line {

using words::Said;
using words::said;

namespace {

constexpr int longest_word = 200;  // characters of what was typed

Said joined(const std::vector<std::string>& names, words::List::Joint joint) {
    return words::joined({names.begin(), names.end()}, joint);
}

std::vector<std::string> quoted(std::vector<std::string> typed) {
    for (std::string& word : typed)
        word = units::quote(word, longest_word);
    return typed;
}

bool is_whole_number(const std::string& text, int least, int most) {
    int value = 0;
    const char* const end = text.data() + text.size();
    const auto [read_to, error] = std::from_chars(text.data(), end, value);
    return error == std::errc() && read_to == end && value >= least && value <= most;
}

// The question that was being read; nullptr where none was named.
const CLI::App* question_of(const CLI::App& program) {
    const auto named = program.get_subcommands();
    return named.empty() ? nullptr : named.front();
}

// What must be given and was not.
std::optional<std::string> missing_in(const CLI::App& question) {
    for (const CLI::Option* option : question.get_options())
        if (option->get_required() && option->count() == 0) return option->get_name();
    return std::nullopt;
}

bool takes_a_value(const CLI::App& question, const std::string& name) {
    const CLI::Option* option = question.get_option_no_throw(name);
    return option != nullptr && option->get_items_expected_min() > 0;
}

// An option behind which nothing stands.
std::optional<std::string> without_value(const CLI::App& question,
                                         const std::vector<std::string>& arguments) {
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const bool none_follows = i + 1 == arguments.size() || arguments[i + 1].starts_with("--");
        if (arguments[i].starts_with("--") && none_follows && takes_a_value(question, arguments[i]))
            return arguments[i];
    }
    return std::nullopt;
}

std::optional<std::string> given_twice(const CLI::App& question) {
    for (const CLI::Option* option : question.get_options())
        if (!option->get_name().empty() && option->get_items_expected_max() == 1 &&
            option->count() > 1)
            return option->get_name();
    return std::nullopt;
}

Said no_question(const std::vector<std::string>& arguments) {
    const std::string& first = arguments.front();
    if (first.starts_with('-')) return said<"no question is asked">();
    return said<"\"{word}\" is no question">(units::quote(first, longest_word));
}

}  // namespace

Misunderstood::Misunderstood(std::string option, Said found, Said remedy)
    : CLI::ParseError("Misunderstood", option, CLI::ExitCodes::ValidationError),
      wrong_(said<"{option}: {found}; {remedy}">(option, std::move(found), std::move(remedy))) {}

Said found(const std::string& typed) {
    return said<"found \"{typed}\"">(units::quote(typed, longest_word));
}

CLI::Validator one_of(std::string option, std::vector<std::string> values) {
    const auto refuse = [option = std::move(option),
                         values = std::move(values)](const std::string& typed) -> std::string {
        if (std::ranges::find(values, typed) != values.end()) return {};
        throw Misunderstood(
            option, found(typed),
            said<"give one of {values}">(joined(values, words::List::Joint::comma)));
    };
    return CLI::Validator(refuse, "");
}

CLI::Validator whole_number(std::string option, int least, int most) {
    const auto refuse = [option = std::move(option), least,
                         most](const std::string& typed) -> std::string {
        if (is_whole_number(typed, least, most)) return {};
        throw Misunderstood(
            option, found(typed),
            said<"give {limits}">(said<"a whole number from {least} to {most}">(least, most)));
    };
    return CLI::Validator(refuse, "");
}

Said in_words(const CLI::ParseError& error, const CLI::App& program,
              const std::vector<std::string>& arguments) {
    if (const auto* misunderstood = dynamic_cast<const Misunderstood*>(&error))
        return misunderstood->wrong();
    const CLI::App* question = question_of(program);
    if (question == nullptr) return no_question(arguments);
    if (dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr)
        return said<"not understood: {words}">(
            joined(quoted(program.remaining(true)), words::List::Joint::space));
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr)
        if (const auto name = missing_in(*question)) return said<"{name} is missing">(*name);
    if (const auto name = without_value(*question, arguments))
        return said<"{option} needs a value">(*name);
    if (const auto name = given_twice(*question))
        return said<"{option} is given more than once">(*name);
    return said<"{complaint}">(units::quote(error.what(), longest_word));
}

words::Language language_for_complaints(const std::vector<std::string>& arguments,
                                        const words::Language& locale) {
    constexpr std::string_view option = "--language";
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string_view one = arguments[i];
        std::string_view code;
        if (one == option && i + 1 < arguments.size()) code = arguments[i + 1];
        if (one.starts_with(option) && one.substr(option.size()).starts_with('='))
            code = one.substr(option.size() + 1);
        if (code.empty()) continue;
        if (const auto language = words::language(code)) return *language;
    }
    return locale;
}

}  // namespace command_line
