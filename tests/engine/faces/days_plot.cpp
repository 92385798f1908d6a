#include "faces/days_plot.hpp"

#include "answers/outage/series.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

DaysChart chart(bool uncertain) {
    return days_chart(made::scenario(), made::plan(uncertain),
                      uncertain ? std::optional(made::fan()) : std::nullopt);
}

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) {
        text += line + "\n";
    }
    return text;
}

TEST(days_plot, no_line_is_wider_than_asked_for) {
    for (const int width : {40, 60, 73, 120}) {
        for (const auto& line : days_plot(chart(true), width, 8, {})) {
            EXPECT_LE(width_of(line), width);
        }
    }
}

TEST(days_plot, each_midnight_is_named) {
    const auto text = joined(days_plot(chart(true), 73, 8, {}));
    for (const char* day : {"Thu", "Fri", "Sat", "Sun"}) {
        EXPECT_THAT(text, HasSubstr(day));
    }
}

TEST(days_plot, what_happens_is_marked_below_its_hour) {
    const auto lines = days_plot(chart(true), 107, 8, {});  // 97 columns for 96 hours
    const auto empty_at = made::plan(true).likely.lasts / units::hour;
    EXPECT_NEAR(static_cast<double>(lines.back().find('a')) - 10.0, empty_at, 1.5);
}

TEST(days_plot, the_store_fills_as_many_rows_as_its_share_of_the_full_store) {
    DaysChart flat{.starts = {}, .lasts = 24.0, .top = 1000.0, .usable = 900.0};
    flat.at = {0.0, 24.0};
    flat.likely = flat.nine_in_ten = flat.one_in_ten = {500.0, 500.0};
    const auto lines = days_plot(flat, 40, 8, {.ascii = true});
    EXPECT_THAT(lines[3], Not(HasSubstr("#")));
    EXPECT_THAT(lines[4], HasSubstr("#####"));
    EXPECT_THAT(lines[7], HasSubstr("#####"));
}

TEST(days_plot, plain_ascii_stays_plain) {
    const Look typed{.ascii = true};
    for (const char letter :
         joined(days_plot(chart(true), 73, 8, typed)) + plot_key(chart(true), typed)) {
        EXPECT_LT(static_cast<unsigned char>(letter), 0x80);
    }
}

TEST(days_plot, the_key_explains_the_band_only_when_there_is_one) {
    EXPECT_THAT(plot_key(chart(true), {}), HasSubstr("1 in 10"));
    EXPECT_THAT(plot_key(chart(false), {}), Not(HasSubstr("1 in 10")));
}

}  // namespace
