#include "typed.hpp"
#include <nlohmann/json.hpp>

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

const std::string folder = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/";

TEST(candlemark_wiring, a_build_that_fits_answers_with_status_0) {
    const auto answer = typed::candlemark({"wiring", folder + "ice_storm.toml"});
    EXPECT_EQ(answer.status, 0);
    EXPECT_THAT(answer.output, HasSubstr("Nothing fails in 7 circuits"));
    EXPECT_THAT(answer.output, HasSubstr("The circuits"));
    EXPECT_THAT(answer.errors, IsEmpty());
}

TEST(candlemark_wiring, a_swap_that_breaks_a_link_answers_with_status_1) {
    const auto answer = typed::candlemark({"wiring", folder + "swap/as_built.toml", "--full"});
    EXPECT_EQ(answer.status, 1);
    EXPECT_THAT(answer.output, HasSubstr("5 A switch"));
    EXPECT_THAT(answer.output, HasSubstr("What would fit"));
}

TEST(candlemark_wiring, json_has_the_circuits) {
    const auto answer =
        typed::candlemark({"wiring", folder + "swap/as_built.toml", "--as", "json"});
    const auto json = nlohmann::json::parse(answer.output);
    EXPECT_EQ(json["question"], "wiring");
    const auto& lamps = json["answer"]["circuits"][3];
    EXPECT_EQ(lamps["verdict"], "fails");
    EXPECT_EQ(lamps["weakest_link"], "5 A switch");
    EXPECT_EQ(lamps["fuse_window"]["largest"]["value"], 5.0);
    EXPECT_EQ(lamps["links"][1]["derated"]["value"], 5.0);
}

TEST(candlemark_wiring, svg_and_html_are_whole_documents) {
    const auto svg = typed::candlemark({"wiring", folder + "ice_storm.toml", "--as", "svg"});
    EXPECT_THAT(svg.output, StartsWith("<svg "));
    const auto html = typed::candlemark({"wiring", folder + "ice_storm.toml", "--as", "html"});
    EXPECT_THAT(html.output, StartsWith("<!DOCTYPE html>"));
    EXPECT_THAT(html.output, HasSubstr("</html>"));
    const auto none = typed::candlemark({"read", folder + "ice_storm.toml", "--as", "svg"});
    EXPECT_EQ(none.status, 2);
    EXPECT_THAT(none.errors, HasSubstr("this answer has no picture"));
}

}  // namespace
