// Whether all that was said has its German: what the catalogue lacks would come out in English.
#pragma once

#include <algorithm>
#include <string>
#include <variant>

#include <gtest/gtest.h>

#include "words/catalogue.hpp"
#include "words/language.hpp"

namespace words {

inline const Language& german() {
    static const Language found = *language("de");
    return found;
}

// It and all that it is made of.
inline void expect_known_in_german(const Said& said) {
    const bool known = !german().catalogue->text_of(*said.saying, 2).empty();
    EXPECT_TRUE(known || !said.saying->has_words()) << said.saying->english;
    for (const Part& part : said.parts) {
        if (const auto* inner = std::get_if<Said>(&part.held())) expect_known_in_german(*inner);
        if (const auto* list = std::get_if<List>(&part.held()))
            std::ranges::for_each(list->items, expect_known_in_german);
    }
}

}  // namespace words
