#include "faces/pictures/drawing.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;

// XML 1.0, 2.4: & and < must be written as entities; " within an attribute. 2.2: no control
// characters but tab and line ends.
TEST(drawing, writes_what_xml_keeps_for_itself_as_entities) {
    EXPECT_EQ(faces::in_xml("a < b & \"c\" > d"), "a &lt; b &amp; &quot;c&quot; &gt; d");
    EXPECT_EQ(faces::in_xml(std::string_view("\x01\x7f°", 4)), "??°");
}

TEST(drawing, is_a_document_of_its_own_with_its_title_to_be_read_aloud) {
    const auto svg = faces::in_svg({.title = "Days", .pieces = "<g/>", .height = 12.5});
    EXPECT_THAT(svg, HasSubstr("viewBox=\"0 0 720 12.5\" role=\"img\" aria-label=\"Days\""));
    EXPECT_THAT(svg, HasSubstr("prefers-color-scheme:dark"));
    EXPECT_THAT(svg, HasSubstr("@media print"));
}

}  // namespace
