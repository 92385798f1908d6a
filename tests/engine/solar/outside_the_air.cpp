// Irradiation outside the air against table 1.10.1 of [Duffie Beckman] (2013), in MJ/m2 on the mean
// days of the months, read in public code that carries the table. It was made with a finer
// declination than that of the tables, which is half a degree off in February and October: 0.33
// MJ/m2 and 1.4 % at most. Rows near the polar night, where that makes a tenth, are left out.
#include "solar/irradiation.hpp"
#include "solar/places/site.hpp"

namespace {

using namespace units;
using namespace solar;

struct Row {
    double latitude;
    std::array<double, 12> megajoules;
};

constexpr std::array rows{
    Row{45, {12.2, 17.4, 25.1, 33.2, 39.2, 41.7, 40.4, 35.3, 27.8, 19.6, 13.3, 10.7}},
    Row{30, {21.3, 25.7, 31.5, 36.8, 40.0, 41.1, 40.4, 37.8, 33.2, 27.4, 22.2, 19.9}},
    Row{15, {29.6, 32.6, 35.9, 38.0, 38.5, 38.4, 38.3, 38.0, 36.4, 33.4, 30.1, 28.5}},
    Row{0, {36.2, 37.4, 37.8, 36.7, 34.8, 33.5, 34.0, 35.7, 37.2, 37.3, 36.3, 35.7}},
    Row{-10, {39.5, 39.3, 37.7, 34.5, 31.1, 29.2, 29.9, 32.9, 36.3, 38.5, 39.3, 39.4}},
    Row{-45, {42.8, 37.1, 28.6, 19.6, 12.9, 10.0, 11.3, 16.6, 24.9, 34.0, 41.2, 44.5}}};

double megajoules(double latitude, int day) {
    return extraterrestrial_day(latitude * degree, declination_of_day(day), day) /
           (1e6 * joule / square_metre);
}

TEST(outside_the_air, the_published_table_of_latitudes_and_months) {
    for (const Row& row : rows)
        for (int month = 1; month <= 12; ++month)
            EXPECT_NEAR(megajoules(row.latitude, mean_day_of_month(month)),
                        row.megajoules[std::size_t(month - 1)], 0.34)
                << row.latitude << " degrees, month " << month;
}

TEST(outside_the_air, published_examples) {
    EXPECT_NEAR(megajoules(43.0, 105), 33.8, 0.1);  // example 1.10.1
    EXPECT_NEAR(megajoules(43.0, 162), 41.8, 0.1);  // example 2.12.1
}

}  // namespace
