#include "units/written/unit_table.hpp"

namespace {

using namespace units;

TEST(similar_units, prefer_the_wanted_kind_and_the_closest) {
    EXPECT_THAT(similar_units(Dimension::energy, "kwh"), testing::ElementsAre("kWh"));
    EXPECT_THAT(similar_units(Dimension::power, "mw"), testing::ElementsAre("mW", "MW"));
    EXPECT_THAT(similar_units(Dimension::charge, "xyzzy"), testing::IsEmpty());
    EXPECT_THAT(similar_units(Dimension::charge, ""), testing::IsEmpty());
    EXPECT_THAT(similar_units(Dimension::charge, std::string(10'000, 'A')), testing::IsEmpty());
    EXPECT_THAT(similar_units(Dimension::duration, "mni"), testing::ElementsAre("min"));
}

}  // namespace
