// The list of appliances as text.
#include <set>

#include "motor/appliances/appliances.hpp"

namespace {

using motor::read_appliances;
using units::watt;

TEST(read_appliances, a_row_is_taken_as_it_stands) {
    const auto read = read_appliances(R"([[appliance]]
name = "sump pump"
also = ["cellar pump"]
run = ["500 W", "800 W", "1 kW"]
duty = ["5 %", "10 %", "20 %"]
every = ["5 min", "10 min", "20 min"]
motor = {kind = "split_phase", horsepower = "1/3 hp"}
drives = "centrifugal_pump"
listed_start = ["1300 W", "2900 W"]
source = "[Generator manuals]"
)");
    ASSERT_TRUE(read) << print(read.error().front());
    ASSERT_EQ(read->size(), 1U);
    const motor::Appliance& pump = read->front();
    EXPECT_EQ(pump.also, std::vector<std::string>{"cellar pump"});
    EXPECT_EQ(pump.run.high(), 1000.0 * watt);
    EXPECT_NEAR(pump.duty->likely().value(), 0.1, 1e-12);
    EXPECT_EQ(pump.every->low(), 5.0 * units::minute);
    EXPECT_EQ(pump.motor->kind, scenario::MotorKind::split_phase);
    EXPECT_NEAR(*pump.motor->horsepower / watt, 745.7 / 3.0, 0.05);  // of 550 foot-pounds a second
    EXPECT_EQ(pump.drives, motor::DrivenLoad::centrifugal_pump);
    EXPECT_FALSE(pump.medical);
    EXPECT_EQ(pump.source, "[Generator manuals]");
}

TEST(read_appliances, errors_of_a_file_are_told_with_their_lines) {
    const auto read = read_appliances(
        "[[appliance]]\nname = \"a\"\nrun = [\"1 W\", \"2 V\", \"3 W\"]\nsource = \"s\"\n"
        "[[appliance]]\nname = \"b\"\nrun = [\"3 W\", \"2 W\", \"1 W\"]\nsource = \"s\"\n"
        "colour = \"red\"\n");
    ASSERT_FALSE(read);
    std::set<int> lines;
    for (const units::Error& error : read.error()) {
        lines.insert(error.line);
    }
    EXPECT_TRUE(lines.contains(3));
    EXPECT_TRUE(lines.contains(7));
    EXPECT_TRUE(lines.contains(9));
    EXPECT_FALSE(read_appliances("[[appliance]\n"));
}

}  // namespace
