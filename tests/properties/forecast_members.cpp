// A forecast of the first days moves what the panels offer one way: on no day of any member does a
// clear one lower it, or a dark one raise it. Of the time that follows that is not true: a panel
// with the low sun behind it gives less at the edges of a clear day, when a night's store runs out.
// CANDLEMARK_FORECASTS=1000 draws as many scenarios.
#include <cstdlib>
#include <random>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "outage/ready.hpp"
#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

class Drawing {
  public:
    explicit Drawing(unsigned seed) : random_(seed) {}
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    std::string one_of(std::initializer_list<const char*> words) {
        return *(words.begin() + whole(0, int(words.size()) - 1));
    }

  private:
    std::mt19937 random_;
};

struct Drawn {
    std::string text;
    int days = 1;  // of the forecast
};

Drawn drawn_scenario(unsigned seed) {
    Drawing draw(seed);
    Drawn made;
    made.days = draw.whole(1, 6);
    made.text = fmt::format(
        "format = 1\ntitle = \"Drawn\"\n[outage]\nstarts = 2026-{:02}-{:02}T{:02}:00:00\n"
        "lasts = \"{} h\"\nbattery_temperature = \"{} degC\"\nSKY\n[place]\nname = \"{}\"\n"
        "[[pack]]\nname = \"main\"\nchemistry = \"{}\"\ncapacity = \"{} Ah\"\ncount = {}\n"
        "[[panel]]\npower = \"{} W\"\ntilt = \"{} deg\"\ncount = {}\n"
        "[[load]]\nname = \"router\"\nfrom = \"12V\"\npower = \"{} W\"\nevidence = \"label\"\n",
        draw.whole(1, 12), draw.whole(1, 28), draw.whole(0, 23), draw.whole(30, 120),
        draw.whole(1, 25), draw.one_of({"Cleveland OH", "Tacoma WA", "Chicago IL", "Phoenix AZ"}),
        draw.one_of({"lifepo4", "agm", "flooded", "gel"}), draw.whole(3, 10) * 10, draw.whole(1, 3),
        draw.whole(5, 20) * 10, draw.whole(0, 60), draw.whole(1, 3), draw.whole(8, 50));
    return made;
}

// What is offered to each member on each whole local day, under so many words of one kind; without
// any where `word` is empty.
std::vector<double> offered_under(const Drawn& drawn, const std::string& word) {
    std::string sky;
    for (int day = 0; day < drawn.days && !word.empty(); ++day)
        sky += fmt::format("{}\"{}\"", day == 0 ? "sky = [" : ", ", word);
    if (!word.empty()) sky += "]";
    std::string text = drawn.text;
    text.replace(text.find("SKY"), 3, sky);
    const auto read = scenario::read_scenario(text, "drawn.toml", {});
    EXPECT_TRUE(read) << read.error().front().where << ": " << read.error().front().found;
    if (!read) return {};
    auto made = outage::make_ready(read->scenario, "");
    EXPECT_TRUE(made);
    if (!made) return {};
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    const auto members = sizing::members_of(read->scenario, "", ready, 1, 64);
    std::vector<double> offered;
    const auto days = std::size_t((ready->outage.lasts - ready->midnight) / day);
    for (int number = 0; number < members.count(); ++number) {
        const auto sun = members.world().sun(members.values(number), members.world().panels());
        const std::size_t first = offered.size();
        offered.resize(first + days, 0.0);
        for (std::size_t i = 0; i < sun.size(); ++i) {
            const Duration until = i + 1 < sun.size() ? sun[i + 1].from : ready->outage.lasts;
            const Duration since = sun[i].from - ready->midnight;
            if (since < Duration{} || since >= double(days) * day) continue;
            offered[first + std::size_t(since / day)] +=
                sun[i].offered * (until - sun[i].from) / watt_hour;
        }
    }
    return offered;
}

TEST(forecast_members, clear_days_never_lower_and_dark_ones_never_raise) {
    const char* wished = std::getenv("CANDLEMARK_FORECASTS");
    const int scenarios = wished ? std::atoi(wished) : 12;
    int moved = 0;
    for (int number = 0; number < scenarios && !testing::Test::HasFailure(); ++number) {
        const auto drawn = drawn_scenario(unsigned(number));
        SCOPED_TRACE(drawn.text);
        const auto plain = offered_under(drawn, "");
        const auto clear = offered_under(drawn, "clear");
        const auto dark = offered_under(drawn, "dark");
        ASSERT_EQ(plain.size(), clear.size());
        ASSERT_EQ(plain.size(), dark.size());
        for (std::size_t i = 0; i < plain.size(); ++i) {
            EXPECT_GE(clear[i], plain[i] - 1e-6) << "day " << i;
            EXPECT_LE(dark[i], plain[i] + 1e-6) << "day " << i;
            moved += clear[i] > dark[i] + 1.0;
        }
    }
    EXPECT_GT(moved, 20 * scenarios);
}

}  // namespace
