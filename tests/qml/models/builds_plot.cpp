#include "models/days/builds_plot.hpp"

#include <QTest>
#include <gtest/gtest.h>

namespace {

using touch::BuildsPlot;

answers::BuildPoint by_hand(int packs, int panels, double chance, double weight,
                            std::optional<double> price) {
    return {.packs = packs,
            .panels = panels,
            .chance = chance,
            .low = chance - 4.0,
            .high = chance + 3.0,
            .members = 1000,
            .chance_words = "made by hand",
            .weight = weight,
            .price = price};
}

answers::Answer answer_with(answers::BuildsChart chart) {
    answers::Answer answer;
    answer.sentences = {"By hand."};
    answer.builds = std::move(chart);
    return answer;
}

answers::BuildsChart two_by_weight() {
    answers::BuildsChart chart{.goal = 90.0};
    chart.points = {by_hand(9, 5, 88.4, 150.0, 3590.0), by_hand(10, 3, 96.0, 158.0, 3790.0)};
    chart.points.back().answers = true;
    chart.points.front().of_file = true;
    chart.views = {{.name = "weight",
                    .heading = "packs and panels weigh",
                    .unit = "kg",
                    .from = 150.0,
                    .to = 160.0,
                    .step = 2.0,
                    .places = {{.point = 0, .at = 150.0}, {.point = 1, .at = 158.0}}}};
    return chart;
}

class BuildsOnPlot : public testing::Test {
  protected:
    void ask(answers::BuildsChart chart) {
        touch::AnswerRunner::set_asker(
            [chart](const QString&, const QString&, const touch::Asks&, const QString&) {
                return touch::answer_view_of(answer_with(chart));
            });
        runner = std::make_unique<touch::AnswerRunner>();
        document.openExample();
        runner->set_question("packs");
        runner->set_document(&document);
        ASSERT_TRUE(QTest::qWaitFor([this] { return runner->answered() && !runner->running(); }));
        plot.set_runner(runner.get());
    }
    void TearDown() override {
        plot.set_runner(nullptr);
        touch::AnswerRunner::set_asker({});
    }

    touch::ScenarioDocument document;
    std::unique_ptr<touch::AnswerRunner> runner;
    BuildsPlot plot;
};

TEST_F(BuildsOnPlot, a_point_stands_at_its_share_and_tells_its_build) {
    ask(two_by_weight());
    ASSERT_TRUE(plot.present());
    EXPECT_EQ(plot.measure(), "weight");
    ASSERT_EQ(plot.points().size(), 2);
    const QVariantMap answer = plot.points().at(1).toMap();
    EXPECT_DOUBLE_EQ(answer["across"].toDouble(), 0.8);
    EXPECT_DOUBLE_EQ(answer["up"].toDouble(), 0.96);
    EXPECT_DOUBLE_EQ(answer["low"].toDouble(), 0.92);
    EXPECT_EQ(answer["label"].toString(), "10×3");
    const QString words = answer["words"].toString();
    for (const char* said : {"Packs: 10, panels: 3", "158 kg", "3790 in all", "96 % (92 to 99)",
                             "build of the answer"})
        EXPECT_TRUE(words.contains(QLatin1String(said))) << said << ": " << words.toStdString();
    EXPECT_TRUE(plot.points().at(0).toMap()["words"].toString().contains("what the file has"));
    EXPECT_EQ(plot.landing(), 1);
    EXPECT_DOUBLE_EQ(plot.goal_at(), 0.9);
    EXPECT_EQ(plot.goal(), "Goal 90 %");
    EXPECT_EQ(plot.ticks_across().size(), 6);
    EXPECT_EQ(plot.ticks_across().at(1).toMap()["text"].toString(), "152 kg");
    EXPECT_TRUE(plot.missing().contains("price"));
}

TEST_F(BuildsOnPlot, the_nearest_point_is_found_within_a_finger) {
    ask(two_by_weight());
    EXPECT_EQ(plot.nearest(20.0, 30.0, 200.0, 100.0, 48.0), 0);
    EXPECT_EQ(plot.nearest(160.0, 4.0, 200.0, 100.0, 48.0), 1);
    EXPECT_EQ(plot.nearest(90.0, 95.0, 200.0, 100.0, 48.0), -1);
    EXPECT_EQ(plot.pointOf(10, 3), 1);
    EXPECT_EQ(plot.pointOf(10, 4), -1);
}

TEST_F(BuildsOnPlot, buttons_stand_below_their_points_and_apart) {
    auto chart = two_by_weight();
    for (double at : {158.2, 158.4, 159.9}) {
        chart.points.push_back(by_hand(11, 1, 97.0, at, {}));
        chart.views[0].places.push_back({.point = chart.points.size() - 1, .at = at});
    }
    ask(chart);
    const QVariantList wide = plot.middles(1000.0, 20.0, 60.0);
    ASSERT_EQ(wide.size(), 5);
    EXPECT_DOUBLE_EQ(wide[0].toDouble(), 30.0);                 // not beyond the end
    EXPECT_NEAR(wide[2].toDouble(), 20.0 + 0.82 * 960.0, 3.0);  // in the midst of three
    for (const double width : {300.0, 1000.0}) {
        const QVariantList places = plot.middles(width, 20.0, 60.0);
        EXPECT_GE(places.first().toDouble(), 30.0);
        EXPECT_LE(places.last().toDouble(), width - 30.0 + 1e-9);
        for (qsizetype one = 1; one < places.size(); ++one)
            EXPECT_GE(places[one].toDouble() - places[one - 1].toDouble(), 60.0 - 1e-9);
    }
}

TEST_F(BuildsOnPlot, only_what_is_known_can_be_chosen) {
    auto chart = two_by_weight();
    chart.views.push_back({.name = "price",
                           .heading = "packs and panels cost",
                           .unit = "1",
                           .from = 3500.0,
                           .to = 4000.0,
                           .step = 100.0,
                           .places = {{.point = 0, .at = 3590.0}, {.point = 1, .at = 3790.0}}});
    ask(chart);
    EXPECT_EQ(plot.measures().size(), 2);
    EXPECT_TRUE(plot.missing().isEmpty());
    plot.set_measure("price");
    EXPECT_EQ(plot.measure(), "price");
    EXPECT_DOUBLE_EQ(plot.points().at(0).toMap()["across"].toDouble(), 0.18);
    EXPECT_EQ(plot.ticks_across().at(1).toMap()["text"].toString(), "3600");
    plot.set_measure("nonsense");
    EXPECT_EQ(plot.measure(), "weight");
}

TEST_F(BuildsOnPlot, it_says_how_many_are_not_drawn) {
    auto chart = two_by_weight();
    chart.points.push_back(by_hand(8, 7, 99.0, 0.0, {}));
    chart.points.back().weight.reset();
    ask(chart);
    EXPECT_EQ(plot.points().size(), 2);
    EXPECT_TRUE(plot.missing().contains("some weight is not known: 1."))
        << plot.missing().toStdString();
}

TEST_F(BuildsOnPlot, without_weight_and_price_it_says_what_to_give) {
    auto chart = two_by_weight();
    chart.views.clear();
    ask(chart);
    EXPECT_FALSE(plot.present());
    EXPECT_TRUE(plot.missing().contains("weight or a price"));
}

}  // namespace
