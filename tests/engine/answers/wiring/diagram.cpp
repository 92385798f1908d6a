#include "answers/wiring/diagram.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "answers/wiring/answer.hpp"
#include "questions/found.hpp"
#include "support/wiring_builds.hpp"

namespace {

using namespace answers;
using testing::HasSubstr;

WiringDiagram diagram_of(const scenario::Scenario& scenario) {
    return wiring_diagram(scenario,
                          wiring_builds::fitted(scenario, wiring_builds::draws_for(scenario)));
}

WiringDiagram of_the_ice_storm() {
    const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml");
    const auto found = questions::find(*read, questions::WiringAsked{}, {});
    return wiring_diagram(found->scenario, found->fit);
}

TEST(wiring_diagram, every_part_has_a_box_of_its_own_and_lines_end_at_boxes) {
    const WiringDiagram diagram = of_the_ice_storm();
    for (const auto& box : diagram.boxes) {
        EXPECT_LE(box.x + 0.5, diagram.width);
        EXPECT_GE(box.x, 0.5);
        EXPECT_EQ(std::ranges::count(diagram.boxes, box.id, &DiagramBox::id), 1) << box.id;
        for (const auto& other : diagram.boxes) {
            const bool apart = &box == &other || box.kind == BoxKind::bus ||
                               other.kind == BoxKind::bus || box.x != other.x || box.y != other.y;
            EXPECT_TRUE(apart) << box.id << " lies on " << other.id;
        }
    }
    for (const auto& line : diagram.lines) {
        EXPECT_EQ(std::ranges::count(diagram.boxes, line.from, &DiagramBox::id), 1) << line.from;
        EXPECT_EQ(std::ranges::count(diagram.boxes, line.to, &DiagramBox::id), 1) << line.to;
    }
    EXPECT_THAT(diagram.description, HasSubstr("4 packs on a bus"));
}

// Two packs with leads of four parts, the longest way to the bus: 4 + 1.5 to the right. Behind it
// the main path's three parts, then the inverter; behind that three parts of the outlet.
TEST(wiring_diagram, parts_lie_in_a_row_from_the_packs_to_the_outlet) {
    const auto diagram = diagram_of(wiring_builds::unit(1500, 2));
    const auto at = [&](std::string_view id) {
        return std::ranges::find(diagram.boxes, id, &DiagramBox::id)->x;
    };
    EXPECT_EQ(at("inverter") - at("bus"), 4.0);
    EXPECT_THAT(diagram.description, HasSubstr("2 packs on a bus"));
}

}  // namespace
