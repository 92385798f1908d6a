#include "units/result.hpp"

namespace units {

std::string print(const Error& error) {
    std::string text = error.file;
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
