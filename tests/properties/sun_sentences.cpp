// What `sun` says of panels, held against the members of drawn scenarios: no sentence praises a
// panel that changes no time and no chance, none calls panels enough where one more gives 2 in 100,
// and what comes back is what the outage says comes back. CANDLEMARK_SUN_SENTENCES=1000 draws as
// many.
#include <cstdlib>
#include <random>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "answers/answer_of.hpp"
#include "questions/found.hpp"
#include "scenario/file/read.hpp"

namespace {

class Drawing {
  public:
    explicit Drawing(unsigned seed) : random_(seed) {}

    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    bool often(int in_ten) { return whole(1, 10) <= in_ten; }
    std::string one_of(std::initializer_list<const char*> words) {
        return *(words.begin() + whole(0, int(words.size()) - 1));
    }

  private:
    std::mt19937 random_;
};

// In any month, warm and freezing, with packs that fill soon and such that do not, and with
// controllers that turn away.
std::string drawn_scenario(unsigned seed) {
    Drawing draw(seed);
    std::string text = fmt::format(
        "format = 1\ntitle = \"Drawn\"\n[outage]\nstarts = 2026-{:02}-{:02}T{:02}:00:00\n"
        "lasts = \"{} h\"\ncause = \"{}\"\nbattery_temperature = \"{} degC\"\n[place]\n"
        "name = \"{}\"\n[[pack]]\nname = \"main\"\nchemistry = \"{}\"\ncapacity = \"{} Ah\"\n"
        "count = {}\n[[panel]]\npower = \"{} W\"\ncount = {}\n",
        draw.whole(1, 12), draw.whole(1, 28), draw.whole(0, 23), draw.whole(20, 110),
        draw.one_of({"storm", "unknown", "clear"}), draw.whole(-10, 25),
        draw.one_of({"Cleveland OH", "Tacoma WA", "Chicago IL"}),
        draw.one_of({"lifepo4", "agm", "flooded", "gel"}), draw.whole(3, 12) * 10, draw.whole(1, 4),
        draw.whole(2, 20) * 10, draw.whole(1, 4));
    if (draw.often(3))
        text += fmt::format("[charge_controller]\nkind = \"mppt\"\ninput_limit = \"{} W\"\n",
                            draw.whole(3, 20) * 10);
    const int loads = draw.whole(1, 3);
    for (int number = 0; number < loads; ++number)
        text += fmt::format(
            "[[load]]\nname = \"load {}\"\nfrom = \"12V\"\npower = \"{} W\"\n"
            "evidence = \"{}\"\n",
            number, draw.whole(3, 60), draw.one_of({"metered", "label", "guess"}));
    return text;
}

double number_in(const answers::Members& members, const std::string& path) {
    const auto* value = answers::value_at(members, path);
    if (const auto* whole = value ? std::get_if<std::int64_t>(&value->held) : nullptr)
        return double(*whole);
    const auto* quantity = value ? std::get_if<answers::Quantity>(&value->held) : nullptr;
    if (!quantity) throw std::runtime_error("no number at " + path);
    return quantity->value;
}

// One count of panels, as it is told.
struct Told {
    double panels = 0.0, chance = 0.0, count_on = 0.0;  // -, percent, hours
};

std::vector<Told> told_by(const answers::Answer& sun) {
    std::vector<Told> told;
    const auto* rows = answers::value_at(sun.values, "panels");
    for (const auto& row : std::get<answers::List>(rows->held)) {
        const auto& members = std::get<answers::Members>(row.held);
        told.push_back({.panels = number_in(members, "panels"),
                        .chance = number_in(members, "chance"),
                        .count_on = number_in(members, "count_on")});
    }
    return told;
}

std::string all_of(const answers::Answer& answer) {
    std::string text;
    for (const auto& sentence : answer.sentences)
        text += std::string(sentence) + '\n';
    return text;
}

double enough_in(const answers::Answer& sun) {
    const auto* enough = answers::value_at(sun.values, "enough_panels");
    return std::holds_alternative<answers::Absent>(enough->held)
               ? -1.0
               : number_in(sun.values, "enough_panels.panels");
}

constexpr double rounding = 1e-9;

void expect_that_praise_is_earned(const std::string& text, const std::vector<Told>& told,
                                  double now) {
    if (text.find("Each further panel") == std::string::npos) return;
    for (std::size_t i = 1; i < told.size(); ++i)
        if (told[i - 1].panels >= now)
            EXPECT_TRUE(told[i].chance > told[i - 1].chance + rounding ||
                        told[i].count_on > told[i - 1].count_on + rounding)
                << told[i].panels << " panels";
}

void expect_that_enough_is_enough(const std::vector<Told>& told, double enough) {
    for (std::size_t i = 1; i < told.size(); ++i)
        if (told[i - 1].panels >= enough)
            EXPECT_LT(told[i].chance - told[i - 1].chance, 2.0 + rounding)
                << told[i].panels << " panels";
}

TEST(sun_sentences, praise_no_panel_for_nothing_and_call_none_enough_too_soon) {
    const char* wished = std::getenv("CANDLEMARK_SUN_SENTENCES");
    const int scenarios = wished ? std::atoi(wished) : 20;
    int praised = 0;
    int enough_of_them = 0;
    for (int number = 0; number < scenarios; ++number) {
        const auto text = drawn_scenario(unsigned(number));
        SCOPED_TRACE(text);
        const auto read = scenario::read_scenario(text, "drawn.toml", {});
        ASSERT_TRUE(read) << read.error().front().where << ": " << read.error().front().found;
        const auto sun_found = questions::find(*read, questions::SunAsked{.members = 64}, {});
        ASSERT_TRUE(sun_found) << sun_found.error().front().found;
        const auto sun = answers::answer_of(*sun_found);
        const auto words = all_of(sun);
        SCOPED_TRACE(words);
        const auto told = told_by(sun);
        const double enough = enough_in(sun);
        expect_that_praise_is_earned(words, told, number_in(sun.values, "panels_now"));
        if (words.find("Each further panel") != std::string::npos) ++praised;
        if (enough >= 0.0) {
            ++enough_of_them;
            expect_that_enough_is_enough(told, enough);
        }
        const auto outage_found = questions::find(*read, questions::OutageAsked{.members = 64}, {});
        ASSERT_TRUE(outage_found);
        const auto outage = answers::answer_of(*outage_found);
        for (const std::string end : {"low", "likely", "high", "mean"})
            EXPECT_EQ(number_in(sun.values, "per_day." + end),
                      number_in(outage.values, "recharge.per_day." + end));
        if (testing::Test::HasFailure()) return;
    }
    EXPECT_GT(praised, scenarios / 20);
    EXPECT_GT(enough_of_them, scenarios / 20);
}

}  // namespace
