#include "faces/pictures/wiring_svg.hpp"

#include "closed.hpp"

namespace {

using answers::BoxKind;
using answers::WiringDiagram;
using faces::in_svg;
using scenario::Severity;
using testing::HasSubstr;
using testing::Not;

WiringDiagram pack_and_lamp() {
    return {.width = 2.0,
            .height = 1.0,
            .boxes = {{.id = "main",
                       .kind = BoxKind::pack,
                       .x = 0.5,
                       .y = 0.5,
                       .title = "main",
                       .detail = "100 Ah"},
                      {.id = "lamp",
                       .kind = BoxKind::load,
                       .x = 1.5,
                       .y = 0.5,
                       .title = "lamp",
                       .detail = "9 W",
                       .severity = Severity::stop,
                       .finding = "too <thin>"}},
            .lines = {{.from = "main", .to = "lamp", .text = "16 AWG", .severity = Severity::stop}},
            .description = "a pack & a lamp"};
}

// Cells are 172 by 96 below a title of 40, boxes 142 by 62 in their middle: the first box from 86 -
// 71 = 15 across and 40 + 48 - 31 = 57 down; the line from its right side at 157 to the left one of
// the other at 258 - 71 = 187, both at 88 down.
TEST(wiring_svg, boxes_stand_in_their_cells_and_lines_go_from_side_to_side) {
    const auto svg = in_svg(pack_and_lamp(), "A lamp");
    EXPECT_EQ(page_of::what_is_not_closed(svg), "");
    EXPECT_THAT(svg, HasSubstr("<rect x=\"15.0\" y=\"57.0\" width=\"142.0\" height=\"62.0\""));
    EXPECT_THAT(svg, HasSubstr("<rect x=\"187.0\" y=\"57.0\""));
    EXPECT_THAT(svg, HasSubstr("<path d=\"M157.0 88.0 H179.0 V88.0 H187.0\""));
    EXPECT_THAT(svg, HasSubstr("viewBox=\"0 0 364 156\""));
}

TEST(wiring_svg, what_is_wrong_is_said_in_words_beside_its_colour) {
    const auto svg = in_svg(pack_and_lamp(), "A lamp");
    EXPECT_THAT(svg, HasSubstr(">STOP</text>"));
    EXPECT_THAT(svg, HasSubstr("<title>lamp. STOP: too &lt;thin&gt;</title>"));
    EXPECT_THAT(svg, HasSubstr("<desc>a pack &amp; a lamp</desc>"));
}

TEST(wiring_svg, words_with_signs_of_xml_stay_words) {
    auto diagram = pack_and_lamp();
    diagram.boxes.front().title = "a\x01";
    const auto svg = in_svg(diagram, "<b>\"A\" & B</b>");
    EXPECT_THAT(svg, HasSubstr("&lt;b&gt;&quot;A&quot; &amp; B&lt;/b&gt;"));
    EXPECT_THAT(svg, Not(HasSubstr("<b>")));
    EXPECT_THAT(svg, HasSubstr("<title>a?</title>"));
}

TEST(wiring_svg, a_line_to_a_box_that_is_not_there_is_left_out) {
    auto diagram = pack_and_lamp();
    diagram.lines.front().to = "nowhere";
    EXPECT_THAT(in_svg(diagram, "A lamp"), Not(HasSubstr("<path")));
}

}  // namespace
