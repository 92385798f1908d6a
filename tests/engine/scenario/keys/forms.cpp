// The forms of values: what each takes, and what it says of anything else.
#include "scenario/keys/forms.hpp"

#include <gmock/gmock.h>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using told::error_at;
using told::errors_of;

// Controls, line ends, marks of direction and letters of no width: they act, or hide in a name that
// looks like another.
TEST(forms, words_of_letters_that_are_not_seen_are_refused) {
    const auto with = [](const char* key, const std::string& letter) {
        std::string text(sample::ice_storm);
        const std::string line = std::string(key) + "\"";
        return text.insert(text.find(line) + line.size(), letter);
    };
    for (const unsigned code :
         {0x00U,   0x07U,   0x09U,   0x0AU,   0x0DU,   0x1BU,   0x7FU,   0x80U,   0x85U,   0x9BU,
          0x9FU,   0x200BU, 0x200CU, 0x200DU, 0x200EU, 0x200FU, 0x202AU, 0x202BU, 0x202CU, 0x202DU,
          0x202EU, 0x2066U, 0x2067U, 0x2068U, 0x2069U, 0x2028U, 0x2029U, 0xFEFFU}) {
        const std::string letter = fmt::format("\\u{:04X}", code);
        const std::string shown =
            code < 0x100 ? fmt::format("\\x{:02x}", code) : fmt::format("\\u{{{:x}}}", code);
        for (const auto& [key, where] :
             {std::pair{"title  = ", "title"}, std::pair{"name = ", "place.name"}}) {
            const units::Error error = error_at(errors_of(with(key, letter)), where);
            EXPECT_THAT(error.found, HasSubstr(shown)) << letter;
            EXPECT_GT(error.line, 0);
        }
    }
    for (const char* letters : {"Küche ", "Ω ", "台所 ", "מטבח ", "مطبخ ", "🔋 "}) {
        EXPECT_THAT(errors_of(with("title  = ", letters)), IsEmpty()) << letters;
    }
}

TEST(forms, lists_have_limits) {
    std::string loads = sample::smallest();
    for (int i = 0; i < 201; ++i) {
        loads += "[[load]]\nname = \"l" + std::to_string(i) + "\"\npower = \"1 W\"\n";
    }
    EXPECT_THAT(error_at(errors_of(loads), "load").found, HasSubstr("201"));
    std::string hours = "hours = [";
    for (int i = 0; i < 100'000; ++i) {
        hours += "\"06:00-07:00\",";
    }
    const auto errors =
        errors_of(sample::smallest("[[load]]\nname = \"lamp\"\npower = \"1 W\"\n" + hours + "]\n"));
    EXPECT_THAT(error_at(errors, "load[0].hours").found, HasSubstr("a list of 100000"));
}

}  // namespace
