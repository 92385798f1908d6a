#include "command_line/reference/keys_manual.hpp"

#include <algorithm>
#include <array>
#include <sstream>

namespace {

using testing::HasSubstr;

TEST(keys_manual, tells_a_key_as_the_list_does) {
    EXPECT_THAT(command_line::keys_manual(),
                HasSubstr(".TP\n.B pack.rated_over\n"
                          "time of the even discharge over which the capacity holds.\n"
                          "Takes from 3 min to 10 d. Such as rated_over = \"20 h\".\n"
                          "Absent: assumed; the answers give the figure they take.\n"));
}

// [man-pages(7)]: the order of the sections.
TEST(keys_manual, has_its_sections_in_the_usual_order) {
    const auto page = command_line::keys_manual();
    std::size_t last = 0;
    for (const char* section :
         {".TH CANDLEMARK\\-SCENARIO 5", ".SH NAME", ".SH DESCRIPTION", ".SH EXAMPLE",
          ".SH \"KEYS AT THE TOP\"", ".SH \"KEYS OF [outage]\"", ".SH \"KEYS OF [[pack]]\"",
          ".SH \"SEE ALSO\""}) {
        const auto place = page.find(section);
        ASSERT_NE(place, std::string::npos) << section;
        EXPECT_GE(place, last) << section;
        last = place;
    }
}

// A "-" by itself would be printed as a hyphen, which nobody can copy into a file, and a line that
// begins with "." or "'" is an instruction. [groff_char(7)], [groff_man(7)]
TEST(keys_manual, has_no_sign_that_man_would_take_for_another) {
    constexpr std::array known{".TH ", ".SH ", ".TP", ".B ", ".BR ", ".PP", ".nf", ".fi", ".\\\""};
    std::istringstream lines(command_line::keys_manual());
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with(".\\\"")) continue;  // a remark
        for (std::size_t at = 0; at < line.size(); ++at)
            EXPECT_FALSE(line[at] == '-' && (at == 0 || line[at - 1] != '\\')) << line;
        if (!line.starts_with('.') && !line.starts_with('\'')) continue;
        EXPECT_TRUE(std::ranges::any_of(known, [&](const char* instruction) {
            return line.starts_with(instruction);
        })) << line;
    }
}

}  // namespace
