// What was said, compared and printed in English. Only tests do so: the engine compares sayings.
#pragma once

#include <ostream>
#include <string>
#include <string_view>

#include "words/language.hpp"

namespace words {

inline std::string in_english(const Said& said) {
    return in(english(), said);
}

inline std::string operator+(const Said& said, const std::string& text) {
    return in_english(said) + text;
}
inline std::string operator+(const Said& said, const char* text) {
    return in_english(said) + text;
}
inline std::string operator+(const std::string& text, const Said& said) {
    return text + in_english(said);
}
inline std::string operator+(const char* text, const Said& said) {
    return text + in_english(said);
}
inline std::string& operator+=(std::string& text, const Said& said) {
    return text += in_english(said);
}

inline bool operator==(const Said& said, const char* text) {
    return in_english(said).compare(text) == 0;
}
inline bool operator==(const Said& said, const std::string& text) {
    return in_english(said).compare(text) == 0;
}
inline bool operator==(const Said& said, std::string_view text) {
    return in_english(said).compare(text) == 0;
}

inline std::ostream& operator<<(std::ostream& out, const Said& said) {
    return out << in_english(said);
}

}  // namespace words
