// Every answer keeps to the width of the page, from a narrow window to a wide one.
#include <filesystem>
#include <fstream>
#include <sstream>

#include "briefly.hpp"
#include <gtest/gtest.h>

#include "command_line/arguments.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "faces/text.hpp"

namespace {

using command_line::Request;

// An evening with a motor, a sun, a log and circuits: of each kind of line one.
constexpr const char* evening = R"toml(format = 1
title = "A title that is rather longer than a narrow page can ever hold in one line of it"
[outage]
starts = 2026-01-14T18:00:00
lasts = "20 h"
cause = "storm"
[place]
name = "Chicago IL"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[pack]]
name = "a second pack with a name that goes on and on"
count = 1
[inverter]
continuous = "2400 W"
surge = "4800 W"
surge_lasts = "1 s"
[[panel]]
power = "100 W"
[charge_controller]
kind = "mppt"
[[load]]
name = "refrigerator in the cellar, the old one"
like = "refrigerator"
[[load]]
name = "lamps"
from = "12V"
power = "9 W"
hours = ["16:30-22:30"]
[[circuit]]
name = "lights of the whole house and of the garden"
feeds = ["lamps"]
links = [{fuse = "5 A", family = "blade"}, {wire = "16 AWG", length = "5 ft"}]
[storage]
since = 2025-10-01
[[log]]
at = 2026-01-14T21:00:00
pack = "main"
reads = "13.1 V"
under = "150 W"
)toml";

std::string file(const std::string& question) {
    const auto path =
        std::filesystem::path(testing::TempDir()) / ("an_evening_" + question + ".toml");
    std::ofstream(path) << evening;
    return path.string();
}

std::optional<answers::Answer> answer_to(const char* question) {
    std::vector<std::string> words{question, file(question)};
    for (const auto& option : briefly::options_of(question, file("beside")))
        words.push_back(option);
    const auto asked = command_line::read_arguments(words);
    const auto* request = std::get_if<Request>(&asked);
    if (request == nullptr) return std::nullopt;
    const auto read = command_line::read_request(*request, {});
    if (!read) return std::nullopt;
    auto answer = command_line::answer_to(*read, *request);
    if (!answer) {
        ADD_FAILURE() << question << ": " << units::print(answer.error().front());
        return std::nullopt;
    }
    return std::move(*answer);
}

class widths : public testing::TestWithParam<const char*> {};

TEST_P(widths, no_line_is_longer_than_the_page) {
    const auto answer = answer_to(GetParam());
    ASSERT_TRUE(answer.has_value());
    for (int width = 40; width <= 200; width += width < 100 ? 4 : 20) {
        for (const bool full : {false, true}) {
            std::istringstream lines(
                faces::in_text(*answer, {.width = width, .colour = true, .full = full}));
            for (std::string line; std::getline(lines, line);) {
                EXPECT_LE(faces::width_of(faces::without_colour(line)), width) << line;
                if (testing::Test::HasFailure()) return;
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(of_each, widths, testing::ValuesIn(briefly::all_questions()),
                         [](const auto& info) { return std::string(info.param); });

}  // namespace
