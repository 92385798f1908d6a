#include "units/result.hpp"

#include "units/quote.hpp"
#include "words/language.hpp"

namespace units {

namespace {

constexpr int longest_file_name = 4096;  // characters; what the system takes at most

using words::Said;
using words::said;

// "build.toml:12", "line 12"
Said file_and_line(const Error& error) {
    const std::string file = quote(error.file, longest_file_name);
    if (error.line <= 0) return file;
    if (file.empty()) return said<"line {number}">(error.line);
    return said<"{file}:{line}">(file, error.line);
}

Said after(Said place, Said fault) {
    if (place.empty()) return fault;
    if (fault.empty()) return place;
    return said<"{place}: {fault}">(std::move(place), std::move(fault));
}

}  // namespace

std::string print(const Error& error) {
    return print(error, words::english());
}

std::string print(const Error& error, const words::Language& language) {
    return words::in(language, in_words(error));
}

words::Said in_words(const Error& error) {
    Said text = after(file_and_line(error), after(error.where, error.found));
    if (error.remedy.empty()) return text;
    if (text.empty()) return error.remedy;
    return said<"{fault}; {remedy}">(std::move(text), error.remedy);
}

}  // namespace units
