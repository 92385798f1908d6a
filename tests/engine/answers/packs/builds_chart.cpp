#include "answers/packs/builds_chart.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using answers::BuildsChart;
using answers::BuildsView;
using sizing::Build;
using testing::ElementsAre;

units::Mass kilogrammes(double number) {
    return number * units::kilogram;
}

// So many of 1,000 members last to the end.
Build build(int packs, int panels, int lasted, std::optional<double> weight,
            std::optional<double> price) {
    Build made{.packs = packs,
               .panels = panels,
               .figures = {.of = units::Probability(lasted / 1000.0), .members = 1000}};
    if (weight) made.bill.weight = kilogrammes(*weight);
    if (price) made.bill.price = units::Price(*price);
    return made;
}

// Two packs by two numbers of panels; the file has one pack and no panel.
questions::PacksFound found_with(std::vector<Build> frontier) {
    questions::PacksFound found;
    found.of_the_file = build(1, 0, 100, {}, {});
    found.builds.goal = units::Probability(0.9);
    found.builds.frontier = std::move(frontier);
    return found;
}

const BuildsView* view_named(const BuildsChart& chart, const std::string& name) {
    const auto found = std::ranges::find(chart.views, name, &BuildsView::name);
    return found == chart.views.end() ? nullptr : &*found;
}

std::vector<int> packs_in(const BuildsChart& chart, const BuildsView& view) {
    std::vector<int> packs;
    for (const auto& place : view.places)
        packs.push_back(chart.points[place.point].packs);
    return packs;
}

TEST(builds_chart, a_view_holds_what_no_other_beats_in_its_own_figure) {
    const auto chart = answers::builds_chart(
        found_with({build(4, 1, 500, 50.0, 100.0), build(3, 5, 600, 60.0, 110.0),
                    build(5, 1, 700, 55.0, 120.0)}));
    ASSERT_TRUE(chart);
    ASSERT_EQ(chart->views.size(), 2U);
    // By weight the second is beaten by the third: lighter and surer; by price it is not.
    EXPECT_THAT(packs_in(*chart, *view_named(*chart, "weight")), ElementsAre(4, 5));
    EXPECT_THAT(packs_in(*chart, *view_named(*chart, "price")), ElementsAre(4, 3, 5));
    for (const auto& view : chart->views) {
        EXPECT_LE(view.from, view.places.front().at);
        EXPECT_GE(view.to, view.places.back().at);
        double surest = -1.0;
        for (const auto& place : view.places) {
            EXPECT_TRUE(place.unbeaten);
            EXPECT_GT(chart->points[place.point].chance, surest);
            surest = chart->points[place.point].chance;
        }
    }
}

TEST(builds_chart, what_is_not_known_has_no_view) {
    const auto by_weight =
        answers::builds_chart(found_with({build(4, 1, 500, 50.0, {}), build(5, 1, 700, {}, {})}));
    ASSERT_TRUE(by_weight);
    ASSERT_EQ(by_weight->views.size(), 1U);
    EXPECT_THAT(packs_in(*by_weight, by_weight->views.front()), ElementsAre(4));
    const auto by_none = answers::builds_chart(found_with({build(4, 1, 500, {}, {})}));
    ASSERT_TRUE(by_none);
    EXPECT_TRUE(by_none->views.empty());
    EXPECT_FALSE(answers::builds_chart(found_with({})));
}

TEST(builds_chart, the_answer_and_the_file_are_marked_even_where_they_are_beaten) {
    auto found = found_with({build(4, 1, 950, 50.0, 100.0)});
    found.builds.with_these_panels = build(6, 0, 940, 70.0, 130.0);
    found.of_the_file->bill.weight = kilogrammes(12.0);
    const auto chart = answers::builds_chart(found);
    ASSERT_TRUE(chart);
    const auto* view = view_named(*chart, "weight");
    ASSERT_NE(view, nullptr);
    ASSERT_THAT(packs_in(*chart, *view), ElementsAre(1, 4, 6));
    EXPECT_TRUE(chart->points[view->places[0].point].of_file);
    const auto& answer = chart->points[view->places[2].point];
    EXPECT_TRUE(answer.answers);
    EXPECT_FALSE(view->places[2].unbeaten);
    EXPECT_EQ(answer.members, 1000);
    EXPECT_EQ(view_named(*chart, "price")->places.size(), 2U);  // the file's price is not known
}

TEST(builds_chart, the_table_holds_the_points_as_numbers) {
    auto found = found_with({build(4, 1, 500, 50.0, {}), build(5, 2, 700, 55.5, {})});
    found.of_the_file.reset();
    const auto chart = answers::builds_chart(found);
    ASSERT_TRUE(chart);
    const auto table = answers::builds_table(*chart, chart->views.front());
    const auto numbers = [&](std::size_t column) {
        return std::get<std::vector<double>>(table.columns[column].points);
    };
    EXPECT_THAT(numbers(0), ElementsAre(4.0, 5.0));
    EXPECT_THAT(numbers(1), ElementsAre(1.0, 2.0));
    EXPECT_THAT(numbers(2), ElementsAre(50.0, 55.5));
    EXPECT_EQ(table.columns[2].unit, "kg");
    EXPECT_NEAR(numbers(3)[0], 50.0, 1e-9);
    EXPECT_LT(numbers(4)[1], 70.0);
    EXPECT_GT(numbers(5)[1], 70.0);
}

}  // namespace
