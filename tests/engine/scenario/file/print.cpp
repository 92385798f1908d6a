// A scenario as the text of a file, in the order of the format and with nothing that is silent.
#include "scenario/file/print.hpp"

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using told::read;

TEST(print, the_smallest_file_comes_out_with_nothing_that_is_silent) {
    EXPECT_EQ(scenario::print(read(sample::smallest()).scenario), R"(format = 1

[outage]
starts = 2026-01-14T18:00:00
lasts = "4 d"

[[pack]]
name = "main"
count = 1
chemistry = "agm"
capacity = "100 Ah"
)");
}

// Quotes, a backslash and letters of other alphabets.
TEST(print, words_are_quoted_so_that_they_read_back) {
    auto plan = read(sample::smallest()).scenario;
    plan.title = "\"Ice\" \\ \u6C37";
    const std::string text = scenario::print(plan);
    EXPECT_NE(text.find(R"(title = "\"Ice\" \\ )"), std::string::npos) << text;
    EXPECT_EQ(read(text).scenario.title, plan.title);
}

TEST(print, every_key_reads_back_to_the_same_text) {
    const std::string once = scenario::print(read(sample::every_key).scenario);
    EXPECT_EQ(scenario::print(read(once).scenario), once);
}

}  // namespace
