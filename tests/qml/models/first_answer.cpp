// How soon an answer stands on the screen, and how soon the whole: figures to read, in processor
// time, because machines differ and are busy.
#include <chrono>
#include <cstdio>
#include <ctime>

#include <QCoreApplication>
#include <QFile>
#include <QTest>
#include <gtest/gtest.h>

#include "models/plan_runner.hpp"
#include "models/words/plan_text.hpp"

namespace {

using touch::DaysView;

QString four_nights() {
    QFile file(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

// Thirty days of the same household with sixteen kinds of pack, no two of one capacity.
QString thirty_days_of_unlike_packs() {
    QString text = four_nights();
    text.replace(QStringLiteral("lasts = \"4 d\""), QStringLiteral("lasts = \"30 d\""));
    const qsizetype inverter = text.indexOf(QStringLiteral("[inverter]"));
    QString packs;
    for (int number = 3; number <= 16; ++number)
        packs += QStringLiteral(
                     "[[pack]]\nname = \"kind %1\"\ncapacity = \"%2 Ah\"\n"
                     "charge_limit = \"50 A\"\n\n")
                     .arg(number)
                     .arg(60 + 3 * number);
    return text.insert(inverter, packs);
}

struct Took {
    double seconds = 0.0;
    double processor = 0.0;
};

template <class Work>
Took timed(Work work) {
    const auto begun = std::chrono::steady_clock::now();
    const std::clock_t processor = std::clock();
    work();
    return {std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(),
            double(std::clock() - processor) / CLOCKS_PER_SEC};
}

void measure(const char* name, const QString& text) {
    DaysView few;
    DaysView all;
    Took first{1e9, 1e9};
    Took whole{1e9, 1e9};
    for (int times = 0; times < 3; ++times) {
        const auto less = [](const Took& one, const Took& other) {
            return one.processor < other.processor ? one : other;
        };
        first = less(timed([&] { few = touch::plan_text(text); }), first);
        whole = less(timed([&] { all = touch::weighed_text(text); }), whole);
    }
    ASSERT_TRUE(few.answered) << name;
    ASSERT_TRUE(all.answered) << name;
    std::printf("%s: first answer %.0f ms (processor %.0f), whole %.0f ms (processor %.0f)\n", name,
                1e3 * first.seconds, 1e3 * first.processor, 1e3 * whole.seconds,
                1e3 * whole.processor);
    EXPECT_TRUE(few.chances.isEmpty());
    EXPECT_FALSE(all.chances.isEmpty());
    EXPECT_LT(first.processor, whole.processor) << name;
    EXPECT_EQ(few.told.size(), 3);  // a chance is told from the first on
    EXPECT_EQ(all.told.size(), 3);
}

TEST(first_answer, of_the_ice_storm_comes_before_the_whole) {
    measure("ice_storm", four_nights());
}

TEST(first_answer, of_thirty_days_with_sixteen_unlike_packs_comes_before_the_whole) {
    measure("30 days, 16 unlike packs", thirty_days_of_unlike_packs());
}

// A touch that was looked ahead to: from the step to the new plan in the models of the screen.
TEST(first_answer, a_pack_more_is_answered_within_a_frame) {
    touch::ScenarioDocument document;
    touch::PlanRunner runner;
    document.openExample();
    runner.set_document(&document);
    const auto quiet = [&] { return !runner.running() && !runner.weighing(); };
    ASSERT_TRUE(QTest::qWaitFor([&] { return quiet() && !runner.chances().isEmpty(); }, 60000));
    // It begins a moment later, where a plan is soon made at all.
    if (!QTest::qWaitFor([&] { return runner.looks_ahead(); }, 2000))
        GTEST_SKIP() << "a plan takes too long here to be made ahead";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.looks_ahead(); }, 60000));
    const QString before = runner.candle().spoken + runner.sentence();
    const Took step = timed([&] { document.packs()->more(); });
    std::printf("a pack more, looked ahead to: %.1f ms (processor %.1f)\n", 1e3 * step.seconds,
                1e3 * step.processor);
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return runner.candle().spoken + runner.sentence() != before; }, 100));
    ASSERT_TRUE(QTest::qWaitFor(quiet, 60000));
}

}  // namespace
