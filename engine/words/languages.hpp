// The files of languages/<code>/, compiled in.
#pragma once

#include <span>
#include <string_view>

namespace words {

struct LanguageText {
    std::string_view code;  // the folder it lies in
    std::string_view text;
};

[[nodiscard]] std::span<const LanguageText> language_texts();

}  // namespace words
