#include "fitting/silent.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using testing::HasSubstr;
using wiring_builds::unit;  // not the folder of the engine

// 16 cells of 3.65 V, [LFP 100 sheet]: 58.4 V, above what a 58 V part stands.
TEST(silent, sixteen_cells_are_charged_to_58_4_volts_where_nothing_is_said) {
    auto build = branch_of({fuse(10, "terminal"), wire(AmericanGauge{12}, 3.0)});
    build.packs[0].voltage = 51.2 * volt;
    build.packs[0].resistance.reset();
    const auto silent = fitted(build, drawing(1.0, 42.0));
    EXPECT_NEAR(silent.top / volt, 58.4, 1e-9);
    EXPECT_EQ(worst(silent, "C5", "lamps"), Verdict::fails);
    build.packs[0].absorption_voltage = 57.6 * volt;
    EXPECT_EQ(worst(fitted(build, drawing(1.0, 42.0)), "C5", "lamps"), Verdict::fits);
}

TEST(silent, a_switch_that_does_not_say_what_it_is_rated_for_may_fail) {
    auto build = branch_of({fuse(10, "blade"), scenario::Switch{.rating = 20.0 * ampere},
                            wire(AmericanGauge{16}, 3.0)});
    const auto fit = fitted(build, drawing(4.0));
    const auto* check = find(fit, "C1", "lamps", "20 A switch");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->verdict, Verdict::fails);
    EXPECT_EQ(check->best, Verdict::fits);
    EXPECT_EQ(fitting::word_for(*check), "may fail");
    EXPECT_THAT(check->text, HasSubstr("rated_for"));
    std::get<scenario::Switch>(build.circuits[0].links[1]).rated_for = "dc";
    EXPECT_EQ(find(fitted(build, drawing(4.0)), "C1", "lamps", "20 A switch"), nullptr);
}

// [NEC] 110.14(C)(1): 60 degC for 14 to 1 AWG where nothing is marked, 75 degC beyond; 90 degC at
// most. Along the range from one end to the other.
TEST(silent, terminals_behind_the_inverter_lie_between_what_is_unmarked_and_90_degrees) {
    auto build = unit(1500);
    for (const auto& [size, unmarked] : {std::pair{12, 60.0}, std::pair{0, 75.0}}) {
        build.circuits[3].links[1] = wire(AmericanGauge{size}, 3.0, 90.0);
        const auto figures = fitting::silent_figures(build);
        const auto found =
            std::ranges::find(figures, std::string("terminals"), &fitting::SilentFigure::key);
        ASSERT_NE(found, figures.end());
        EXPECT_EQ(found->circuit, "outlet");
        EXPECT_EQ(found->harm, fitting::Harm::low);
        const auto at = [&](double along) {
            auto there = build;
            found->set(there, along);
            return in_celsius(*std::get<scenario::Wire>(there.circuits[3].links[1]).terminals);
        };
        EXPECT_NEAR(at(0.0), unmarked, 1e-9);
        EXPECT_NEAR(at(1.0), 90.0, 1e-9);
    }
}

TEST(silent, what_the_file_says_is_not_listed) {
    auto build = unit(1500);
    EXPECT_TRUE(std::ranges::none_of(fitting::silent_figures(build), [](const auto& figure) {
        return figure.where == "pack.pack" && figure.key == "resistance";
    }));
    build.packs[0].resistance.reset();
    const auto figures = fitting::silent_figures(build);
    const auto found = std::ranges::find_if(figures, [](const auto& figure) {
        return figure.where == "pack.pack" && figure.key == "resistance";
    });
    ASSERT_NE(found, figures.end());
    // Two fifths to half again of 10 mohm for 100 Ah: method.md, "What the file leaves open".
    const auto low =
        fitting::completed(build, {*found}, {.others = fitting::Completion::Other::low});
    const auto high =
        fitting::completed(build, {*found}, {.others = fitting::Completion::Other::high});
    EXPECT_NEAR(*low.packs[0].resistance / ohm, 0.004, 1e-12);
    EXPECT_NEAR(*high.packs[0].resistance / ohm, 0.015, 1e-12);
}

}  // namespace
