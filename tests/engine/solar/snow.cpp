// Monthly losses to snow as the author of the law worked them out for five arrays at one place
// (T. Townsend, 27 January 2023, read with a public library that carries them as its test cases),
// printed to a whole percent: tilts of 2, 5, 23, 52 and 60 degrees.
#include "solar/snow.hpp"

namespace {

using namespace units;
using namespace solar;

using TwelveFigures = std::array<double, 12>;

constexpr TwelveFigures inches{20, 15, 10, 4, 1.5, 0, 0, 0, 0, 1.5, 4, 15};
constexpr TwelveFigures falls{5, 4.2, 2.8, 1.3, 0.8, 0, 0, 0, 0, 0.5, 1.5, 4.5};
constexpr TwelveFigures air{-6, -2, 1, 4, 7, 10, 13, 16, 14, 12, 7, -3};
constexpr TwelveFigures humidity{78, 80, 75, 65, 60, 55, 55, 55, 50, 55, 60, 70};
constexpr TwelveFigures level_light{60, 80, 100, 125, 175, 225, 225, 210, 175, 125, 90, 60};
constexpr TwelveFigures steep_light{80, 100, 125, 150, 225, 300, 300, 275, 225, 150, 115, 80};

struct Array {
    SnowyPanel panel;
    const TwelveFigures& light;
    TwelveFigures lost;  // percent
};

SnowyMonth month_of(std::size_t number, const TwelveFigures& light) {
    return {.fallen = inches[number] * 0.0254 * metre,
            .falls = falls[number],
            .humidity = Share(humidity[number] / 100.0),
            .air = celsius(air[number]),
            .on_plane = light[number] * kilowatt_hour_per_square_metre};
}

TEST(snow, losses_to_snow_at_five_tilts) {
    const std::array arrays{
        Array{{2.0 * degree, 79.0 / 39.37 * metre, 3.0 / 39.37 * metre, false},
              level_light,
              {44, 34, 20, 9, 3, 1, 0, 0, 0, 2, 6, 25}},
        Array{{5.0 * degree, 316.0 / 39.37 * metre, 120.0 / 39.37 * metre, true},
              level_light,
              {22, 16, 9, 4, 1, 0, 0, 0, 0, 1, 2, 12}},
        Array{{23.0 * degree, 158.0 / 39.37 * metre, 12.0 / 39.37 * metre, true},
              level_light,
              {28, 21, 13, 6, 2, 0, 0, 0, 0, 1, 4, 16}},
        Array{{52.0 * degree, 39.5 / 39.37 * metre, 34.0 / 39.37 * metre, true},
              steep_light,
              {7, 5, 3, 1, 0, 0, 0, 0, 0, 0, 1, 4}},
        Array{{60.0 * degree, 39.5 / 39.37 * metre, 25.0 / 39.37 * metre, false},
              steep_light,
              {7, 5, 3, 1, 0, 0, 0, 0, 0, 0, 1, 3}}};
    for (const Array& array : arrays)
        for (std::size_t number = 0; number < 12; ++number) {
            const Share lost = lost_to_snow(month_of(number, array.light),
                                            month_of((number + 11) % 12, array.light), array.panel);
            EXPECT_NEAR(100.0 * lost.value(), array.lost[number], 0.51)
                << array.panel.tilt / degree << " degrees, month " << number + 1;
        }
}

}  // namespace
