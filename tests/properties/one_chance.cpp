// Whoever is asked how long and how surely gives the same figures, to the last bit.
// CANDLEMARK_ONE_CHANCE=1000 draws as many scenarios.
#include <cstdlib>
#include <filesystem>
#include <random>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "answers/answer_of.hpp"
#include "questions/card.hpp"
#include "questions/found.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/members_of.hpp"
#include "sizing/ration.hpp"
#include "units/text.hpp"

namespace {

using namespace units;

struct Figures {
    double of = 0.0, count_on = 0.0, nine_in_ten = 0.0, half = 0.0, one_in_ten = 0.0;

    friend bool operator==(const Figures&, const Figures&) = default;
};

void PrintTo(const Figures& figures, std::ostream* out) {
    *out << fmt::format("{} {} {} {} {}", figures.of, figures.count_on, figures.nine_in_ten,
                        figures.half, figures.one_in_ten);
}

double number(const answers::Answer& answer, const std::string& path) {
    const auto* value = answers::value_at(answer.values, path);
    const auto* quantity = value ? std::get_if<answers::Quantity>(&value->held) : nullptr;
    if (!quantity) throw std::runtime_error("no number at " + path);
    return quantity->value;
}

Figures figures_in(const answers::Answer& answer, const std::string& chance,
                   const std::string& count_on, const std::string& times) {
    return {.of = number(answer, chance),
            .count_on = number(answer, count_on),
            .nine_in_ten = number(answer, times + "nine_in_ten"),
            .half = number(answer, times + "half"),
            .one_in_ten = number(answer, times + "one_in_ten")};
}

// As the answers show them: in percent and hours.
Figures figures_in(const chance::Figures& figures) {
    const auto shown = [](auto quantity) { return units::in_customary_unit(quantity).value; };
    return {.of = shown(figures.of),
            .count_on = shown(figures.count_on),
            .nine_in_ten = shown(figures.nine_in_ten),
            .half = shown(figures.half),
            .one_in_ten = shown(figures.one_in_ten)};
}

units::Result<answers::Answer> answer_to(const scenario::ReadScenario& read,
                                         const questions::Asked& asked) {
    const auto found = questions::find(read, asked, {});
    if (!found) return units::fail(found.error());
    return answers::answer_of(*found);
}

// What each question says of the unit as it is.
//   members   nothing takes the usual number, for which the card is asked too
void expect_one_chance(const scenario::ReadScenario& read, std::optional<int> members,
                       int most_packs, int most_panels) {
    const auto ask = [&](const questions::Asked& asked) { return answer_to(read, asked); };
    const auto outage = ask(questions::OutageAsked{.members = members});
    ASSERT_TRUE(outage) << outage.error().front().where << ": " << outage.error().front().found;
    const auto told = figures_in(*outage, "chance.of", "count_on.lasts", "over_chances.");
    const auto packs = ask(questions::PacksAsked{
        .members = members, .most_packs = most_packs, .most_panels = most_panels});
    ASSERT_TRUE(packs) << packs.error().front().where << ": " << packs.error().front().found;
    EXPECT_EQ(told,
              figures_in(*packs, "of_the_file.chance", "of_the_file.count_on", "of_the_file."));
    if (!read.scenario.panels.empty()) {
        const auto sun = ask(questions::SunAsked{.members = members});
        ASSERT_TRUE(sun);
        EXPECT_EQ(told, figures_in(*sun, "chance_of_lasting", "lasts.count_on", "lasts."));
    }
    const auto folder = scenario::folder_of(read.file_name);
    const auto ready =
        std::make_shared<const outage::Ready>(outage::make_ready(read.scenario, folder).value());
    const auto ration = sizing::ration(
        sizing::members_of(read.scenario, folder, ready, questions::How{}.seed, members),
        sizing::goal_of(read.scenario));
    EXPECT_EQ(told, figures_in(ration.all_on.figures));
    if (members) return;
    const auto card = questions::find_for_card(read, {});
    ASSERT_TRUE(card.ration && card.outage);
    EXPECT_EQ(told, figures_in(card.ration->all_on.figures));
    EXPECT_EQ(told, figures_in(answers::answer_of(*card.outage), "chance.of", "count_on.lasts",
                               "over_chances."));
}

TEST(one_chance, the_shipped_scenarios_tell_one) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CANDLEMARK_SOURCE_DIR "/scenarios"))) {
        if (entry.path().extension() != ".toml") continue;
        SCOPED_TRACE(entry.path().string());
        const auto read = scenario::read_scenario_file(entry.path().string());
        ASSERT_TRUE(read);
        expect_one_chance(*read, std::nullopt, 8, 5);
    }
}

// ---- Drawn scenarios.

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

std::string pack(Drawing& draw, const std::string& name, const std::string& chemistry, int count) {
    std::string text = fmt::format(
        "[[pack]]\nname = \"{}\"\nchemistry = \"{}\"\ncapacity = \"{} Ah\"\ncount = {}\n", name,
        chemistry, draw.whole(4, 12) * 10, count);
    if (draw.often(3)) text += fmt::format("charge = \"{} %\"\n", draw.whole(40, 95));
    if (draw.often(4)) text += fmt::format("lead_resistance = \"{} mohm\"\n", draw.whole(1, 9));
    return text;
}

std::string load(Drawing& draw, int number) {
    std::string text = fmt::format(
        "[[load]]\nname = \"load {}\"\nfrom = \"{}\"\npower = \"{} W\"\nevidence = \"{}\"\n"
        "priority = {}\n",
        number, draw.one_of({"ac", "ac", "12V"}), draw.whole(5, 120),
        draw.one_of({"metered", "label", "guess"}), draw.whole(2, 5));
    if (draw.often(4)) text += "runs = { on = \"15 min\", every = \"1 h\" }\n";
    if (draw.often(4)) text += "hours = [\"06:30-08:00\", \"17:00-22:00\"]\n";
    return text;
}

std::string drawn_scenario(unsigned seed) {
    Drawing draw(seed);
    std::string text = fmt::format(
        "format = 1\ntitle = \"Drawn\"\n[outage]\nstarts = 2026-{:02}-{:02}T{:02}:00:00\n"
        "lasts = \"{} h\"\ncause = \"{}\"\nbattery_temperature = \"{} degC\"\n[place]\n"
        "name = \"Cleveland OH\"\n[inverter]\ncontinuous = \"2000 W\"\nsurge = \"4000 W\"\n",
        draw.whole(1, 12), draw.whole(1, 28), draw.whole(0, 23), draw.whole(8, 90),
        draw.one_of({"storm", "unknown", "clear"}), draw.whole(0, 30));
    const auto chemistry = draw.one_of({"lifepo4", "agm", "flooded", "gel"});
    text += pack(draw, "main", chemistry, 1);
    if (draw.often(6)) text += pack(draw, "expansion", chemistry, draw.whole(1, 3));
    if (draw.often(7))
        text += fmt::format("[[panel]]\npower = \"100 W\"\ncount = {}\n", draw.whole(1, 3));
    const int loads = draw.whole(1, 4);
    for (int number = 0; number < loads; ++number)
        text += load(draw, number);
    return text;
}

TEST(one_chance, drawn_scenarios_tell_one) {
    const char* wished = std::getenv("CANDLEMARK_ONE_CHANCE");
    const int scenarios = wished ? std::atoi(wished) : 12;
    for (int number = 0; number < scenarios; ++number) {
        const auto text = drawn_scenario(unsigned(number));
        SCOPED_TRACE(text);
        const auto read = scenario::read_scenario(text, "drawn.toml", {});
        ASSERT_TRUE(read) << read.error().front().where << ": " << read.error().front().found;
        expect_one_chance(*read, 64, 5, 4);
        if (testing::Test::HasFailure()) return;
    }
}

TEST(one_chance, an_outage_of_unknown_length_tells_one) {
    for (const unsigned seed : {3U, 8U, 21U}) {
        const auto text = drawn_scenario(seed);
        SCOPED_TRACE(text);
        const auto read = scenario::read_scenario(
            text, "drawn.toml",
            {{.key = "outage.lasts", .value = "\"?\""},
             {.key = "outage.half_over_by", .value = fmt::format("\"{} h\"", 6 + seed)}});
        ASSERT_TRUE(read) << read.error().front().where << ": " << read.error().front().found;
        expect_one_chance(*read, 64, 4, 3);
    }
}

}  // namespace
