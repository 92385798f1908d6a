#include "print/saved_plot.hpp"

#include <algorithm>

#include <QFile>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

namespace {

using namespace printing;

QList<SavedPlot> plots_of_example() {
    const auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) +
                                                   "/scenarios/ice_storm.toml");
    EXPECT_TRUE(read);
    return plots_to_save(*read) + builds_to_save(*read);
}

const SavedPlot* named(const QList<SavedPlot>& plots, const QString& name) {
    for (const SavedPlot& plot : plots)
        if (plot.name == name) return &plot;
    return nullptr;
}

TEST(saved_plot, every_plot_has_a_drawing_and_its_numbers) {
    const auto plots = plots_of_example();
    ASSERT_GE(plots.size(), 6);
    for (const SavedPlot& plot : plots) {
        EXPECT_FALSE(plot.drawing.words.isEmpty()) << plot.name.toStdString();
        EXPECT_GE(plot.numbers.count("\r\n"), 2) << plot.name.toStdString();
        const QRectF paper(QPointF(), plot.drawing.size);
        for (const Words& words : plot.drawing.words)
            EXPECT_TRUE(paper.contains(words.box))
                << plot.name.toStdString() << ": " << words.text.toStdString();
    }
    for (const char* name : {"outage days", "sun recharge", "sun placements", "sun panels",
                             "start start of chest freezer", "start course of chest freezer",
                             "wiring wiring", "packs builds by weight", "packs builds by price"})
        EXPECT_NE(named(plots, QLatin1String(name)), nullptr) << name;
}

TEST(saved_plot, the_numbers_are_those_that_were_drawn) {
    const auto plots = plots_of_example();
    const auto* panels = named(plots, QStringLiteral("sun panels"));
    ASSERT_NE(panels, nullptr);
    const QByteArray head = panels->numbers.left(panels->numbers.indexOf('\r'));
    EXPECT_EQ(head, "what,low [W.h],likely [W.h],high [W.h]");
    EXPECT_TRUE(panels->numbers.contains("\r\n3 panels,"));
    const auto* days = named(plots, QStringLiteral("outage days"));
    ASSERT_NE(days, nullptr);
    EXPECT_TRUE(days->numbers.contains("2026-01-14 18:00"));
}

TEST(saved_plot, the_builds_are_saved_with_their_intervals) {
    const auto plots = plots_of_example();
    const auto* weight = named(plots, QStringLiteral("packs builds by weight"));
    ASSERT_NE(weight, nullptr);
    const QByteArray head = weight->numbers.left(weight->numbers.indexOf('\r'));
    EXPECT_EQ(head,
              "packs [1],panels [1],packs and panels weigh [kg],chance of lasting [%],"
              "\"at least, 19 times in 20 [%]\",\"at most, 19 times in 20 [%]\",what it is");
    EXPECT_TRUE(weight->numbers.contains("\r\n9,3,144,"));
    EXPECT_TRUE(weight->numbers.contains(",answer\r\n"));
    // A point or two, the interval of each, and the goal.
    EXPECT_GE(weight->drawing.shapes.size(), 2);
    const auto said = [&](const QString& part) {
        return std::ranges::any_of(weight->drawing.words,
                                   [&](const Words& words) { return words.text.contains(part); });
    };
    EXPECT_TRUE(said(QStringLiteral("goal 90 %")));
    EXPECT_TRUE(said(QStringLiteral("large: the answer")));
}

TEST(saved_plot, in_german_titles_headings_and_letters_are_german_and_names_stay) {
    const auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) +
                                                   "/scenarios/ice_storm.toml");
    ASSERT_TRUE(read);
    const auto plots = plots_to_save(*read, *words::language("de"));
    const auto* days = named(plots, QStringLiteral("outage days"));
    ASSERT_NE(days, nullptr);
    EXPECT_EQ(days->title, "In den Akkus");
    const auto* panels = named(plots, QStringLiteral("sun panels"));
    ASSERT_NE(panels, nullptr);
    EXPECT_TRUE(panels->numbers.startsWith("was,mindestens [W.h],erwartet [W.h],"));
    EXPECT_TRUE(std::ranges::any_of(panels->drawing.words, [](const Words& words) {
        return words.text.contains(QStringLiteral("Fett ist"));
    }));
}

TEST(saved_plot, the_name_of_the_file_chooses_numbers_or_drawing) {
    const auto plots = plots_of_example();
    const QTemporaryDir folder;
    const QString csv = folder.filePath(QStringLiteral("days.csv"));
    const QString svg = folder.filePath(QStringLiteral("days.svg"));
    EXPECT_TRUE(write_plot(plots.front(), csv).saved());
    EXPECT_TRUE(write_plot(plots.front(), svg).saved());
    QFile file(svg);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader reader(&file);
    while (!reader.atEnd())
        reader.readNext();
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_FALSE(write_plot(plots.front(), QStringLiteral("/no/such/folder/days.svg")).saved());
}

}  // namespace
