#include "units/size.hpp"

namespace {

using namespace units;

WireSize gauge(int number) {
    return AmericanGauge{number};
}

TEST(wire_size, reads_gauges) {
    EXPECT_EQ(*read<WireSize>("12 AWG"), gauge(12));
    EXPECT_EQ(*read<WireSize>("12AWG"), gauge(12));
    EXPECT_EQ(*read<WireSize>("AWG 12"), gauge(12));
    EXPECT_EQ(*read<WireSize>("0 AWG"), gauge(0));
    EXPECT_EQ(*read<WireSize>("1/0 AWG"), gauge(0));
    EXPECT_EQ(*read<WireSize>("2/0 AWG"), gauge(-1));
    EXPECT_EQ(*read<WireSize>("3/0 AWG"), gauge(-2));
    EXPECT_EQ(*read<WireSize>("4/0 AWG"), gauge(-3));
}

TEST(wire_size, reads_cross_sections) {
    EXPECT_EQ(*read<WireSize>("2.5 mm2"), WireSize(2.5 / 1e6 * square_metre));
    EXPECT_EQ(*read<WireSize>("2,5 mm²"), WireSize(2.5 / 1e6 * square_metre));
    EXPECT_EQ(*read<WireSize>("2.5mm^2"), WireSize(2.5 / 1e6 * square_metre));
}

TEST(wire_size, keeps_the_two_systems_apart) {
    EXPECT_NE(*read<WireSize>("12 AWG"), *read<WireSize>("3.31 mm2"));
}

TEST(wire_size, prints_what_reads_back) {
    for (const char* const text :
         {"18 AWG", "12 AWG", "1/0 AWG", "4/0 AWG", "2.5 mm2", "120 mm2"}) {
        EXPECT_EQ(print(*read<WireSize>(text)), text);
    }
    EXPECT_EQ(show(*read<WireSize>("2.5 mm2")), "2.5 mm²");
    EXPECT_EQ(show(*read<WireSize>("1/0 AWG")), "1/0 AWG");
}

TEST(wire_size, refuses_what_is_no_size) {
    for (const char* const text : {"", "12", "12 awg", "5/0 AWG", "0/0 AWG", "4/1 AWG", "-2 AWG",
                                   "41 AWG", "1.5 AWG", "AWG", "99999999999 AWG", "2.5 cm2",
                                   "2.5 ft2", "2.5 m", "0 mm2", "-2 mm2", "nan mm2", "mm2", "2"}) {
        const Result<WireSize> size = read<WireSize>(text);
        ASSERT_FALSE(size.has_value()) << text;
        EXPECT_FALSE(size.error().front().found.empty()) << text;
        EXPECT_FALSE(size.error().front().remedy.empty()) << text;
    }
    EXPECT_EQ(print(read<WireSize>("12").error().front()),
              "12 has no unit; give a wire size, such as 12 AWG, 4/0 AWG or 2.5 mm2");
    EXPECT_FALSE(read<WireSize>(std::string(10'000, '1') + " AWG").has_value());
}

}  // namespace
