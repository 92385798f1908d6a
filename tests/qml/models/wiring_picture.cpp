#include "models/days/wiring_picture.hpp"

#include <QTest>
#include <gtest/gtest.h>

namespace {

using touch::LinePiece;
using touch::WiringPicture;

answers::WiringDiagram two_branches() {
    return {.width = 3.0,
            .height = 3.0,
            .boxes = {{.id = "pack", .x = 0.5, .y = 0.5, .title = "main"},
                      {.id = "bus",
                       .kind = answers::BoxKind::bus,
                       .x = 1.5,
                       .y = 1.0,
                       .height = 2.0,
                       .title = "bus"},
                      {.id = "fuse",
                       .kind = answers::BoxKind::fuse,
                       .x = 2.5,
                       .y = 2.5,
                       .title = "fuse 5 A",
                       .severity = scenario::Severity::stop,
                       .finding = "It opens."}},
            .lines = {{.from = "pack", .to = "bus"},
                      {.from = "bus",
                       .to = "fuse",
                       .text = "lamps",
                       .severity = scenario::Severity::stop},
                      {.from = "bus", .to = "nowhere"}},
            .description = "A pack feeds a bus."};
}

TEST(pieces_of, a_line_to_a_bus_beside_it_is_straight) {
    const QList<LinePiece> pieces = touch::pieces_of(two_branches());
    ASSERT_EQ(pieces.size(), 4);
    EXPECT_DOUBLE_EQ(pieces[0].y, 0.5);
    EXPECT_DOUBLE_EQ(pieces[0].across, 1.0);
    EXPECT_DOUBLE_EQ(pieces[0].down, 0.0);
}

TEST(pieces_of, a_line_to_another_height_bends_half_way) {
    const QList<LinePiece> pieces = touch::pieces_of(two_branches());
    EXPECT_DOUBLE_EQ(pieces[1].y, 1.5);  // the bus reaches down to here
    EXPECT_DOUBLE_EQ(pieces[2].x, 2.0);
    EXPECT_DOUBLE_EQ(pieces[2].down, 1.0);
    EXPECT_DOUBLE_EQ(pieces[3].y, 2.5);
    EXPECT_EQ(pieces[3].mark, "stop");
}

TEST(wiring_picture, every_box_says_what_it_is_and_what_was_found) {
    touch::AnswerRunner::set_asker(
        [](const QString&, const QString&, const touch::Asks&, const QString&) {
            answers::Answer answer;
            answer.wiring = two_branches();
            return touch::answer_view_of(answer);
        });
    touch::ScenarioDocument document;
    document.openExample();
    touch::AnswerRunner runner;
    runner.set_question("wiring");
    runner.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.answered(); }));
    WiringPicture picture;
    picture.set_runner(&runner);
    ASSERT_TRUE(picture.present());
    const QVariantMap fuse = picture.boxes()[2].toMap();
    EXPECT_EQ(fuse["spoken"], "lamps, fuse, fuse 5 A, It opens.");
    EXPECT_EQ(fuse["mark"], "stop");
    EXPECT_EQ(picture.spoken(), "A pack feeds a bus.");
    touch::AnswerRunner::set_asker({});
}

}  // namespace
