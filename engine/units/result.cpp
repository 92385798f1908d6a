#include "units/result.hpp"

#include "units/quote.hpp"

namespace units {

namespace {

constexpr int longest_file_name = 4096;  // characters; what the system takes at most

}  // namespace

std::string print(const Error& error) {
    std::string text = quote(error.file, longest_file_name);
    if (error.line > 0) {
        text += fmt::format("{}{}", text.empty() ? "line " : ":", error.line);
    }
    for (const std::string_view part :
         {std::string_view(error.where), std::string_view(error.found)}) {
        if (!part.empty()) {
            text += text.empty() ? "" : ": ";
            text += part;
        }
    }
    if (!error.remedy.empty()) {
        text += text.empty() ? "" : "; ";
        text += error.remedy;
    }
    return text;
}

}  // namespace units
