#include "solar/places/site.hpp"

#include "solar/sun_position.hpp"

namespace {

using namespace units;
using namespace solar;

struct Made {
    scenario::Assumptions assumptions;
    scenario::Findings findings;
    Result<Site> site;

    explicit Made(const scenario::Place& place) : site(solar::site(place, assumptions, findings)) {}
};

scenario::Place chicago_by_hand() {
    return {.name = {},
            .latitude = 41.98 * degree,
            .longitude = -87.92 * degree,
            .elevation = 200.0 * metre,
            .utc_offset = -6.0 * hour,
            .irradiation = {},
            .sunshine = {},
            .temperature = {},
            .temperature_range = {},
            .weather_file = {},
            .ground_reflectance = {}};
}

bool mentions(const Errors& errors, const std::string& where) {
    return std::any_of(errors.begin(), errors.end(),
                       [&](const Error& e) { return e.where == where; });
}

TEST(site, a_built_in_place_needs_nothing_more) {
    scenario::Place place{};
    place.name = "chicago";
    const Made made(place);
    ASSERT_TRUE(made.site);
    EXPECT_EQ(made.site->name, "Chicago IL");
    EXPECT_NEAR(made.site->clearness[0].value(), 0.454, 0.012);
    EXPECT_NE(in_english(made.site->source).find("725300"), std::string::npos);
    EXPECT_TRUE(made.findings.empty());
}

TEST(site, a_built_in_place_keeps_its_monthly_irradiation) {
    scenario::Place place{};
    place.name = "chicago";
    const Site chicago = Made(place).site.value();
    // places.csv: 1.76 in January, 6.29 in June, 1.50 in December, printed to 0.01 kWh/m2
    for (const auto& [month, printed] :
         std::vector<std::pair<int, double>>{{1, 1.76}, {6, 6.29}, {12, 1.50}})
        EXPECT_NEAR(chicago.clearness[std::size_t(month - 1)].value() *
                        (extraterrestrial_of_month(chicago.at.latitude, month) /
                         kilowatt_hour_per_square_metre),
                    printed, 0.01);
}

TEST(site, twelve_irradiations_become_clearness_at_the_latitude_given) {
    scenario::Place place = chicago_by_hand();
    place.irradiation.emplace().fill(1.5 * kilowatt_hour_per_square_metre);
    const Made made(place);
    ASSERT_TRUE(made.site);
    EXPECT_NEAR(made.site->clearness[11].value(), 0.432,
                0.012);  // Chicago's December row: 1.50, 0.432
    EXPECT_TRUE(made.findings.empty());
}

TEST(site, a_spot_far_from_every_place_borrows_the_nearest_with_a_caution) {
    scenario::Place place = chicago_by_hand();
    place.latitude = 46.0 * degree;
    place.longitude = -60.0 * degree;
    place.utc_offset = -4.0 * hour;
    const Made made(place);
    ASSERT_TRUE(made.site);
    EXPECT_DOUBLE_EQ(made.site->at.latitude / degree, 46.0);
    ASSERT_EQ(made.findings.size(), 1u);
    EXPECT_EQ(made.findings[0].severity, scenario::Severity::caution);
}

TEST(site, more_light_than_reaches_the_air_is_refused_with_its_month) {
    scenario::Place place = chicago_by_hand();
    place.irradiation.emplace().fill(6.0 * kilowatt_hour_per_square_metre);
    const Made made(place);
    ASSERT_FALSE(made.site);
    EXPECT_TRUE(mentions(made.site.error(), "place.irradiation[0]"));
    EXPECT_FALSE(mentions(made.site.error(), "place.irradiation[5]"));
}

TEST(site, sunshine_longer_than_the_day_is_refused) {
    scenario::Place place = chicago_by_hand();
    place.sunshine.emplace().fill(12.0 * hour);
    const Made made(place);
    ASSERT_FALSE(made.site);
    EXPECT_TRUE(mentions(made.site.error(), "place.sunshine[11]"));
    EXPECT_FALSE(mentions(made.site.error(), "place.sunshine[5]"));
}

TEST(site, sunshine_and_temperature_ranges_give_estimates_that_are_said_to_be_such) {
    scenario::Place place = chicago_by_hand();
    place.sunshine.emplace().fill(4.0 * hour);
    const Made by_sunshine(place);
    ASSERT_TRUE(by_sunshine.site);
    EXPECT_GT(by_sunshine.site->clearness[11], by_sunshine.site->clearness[5]);
    place.sunshine.reset();
    place.temperature_range.emplace().fill(9.0 * kelvin);
    const Made by_range(place);
    ASSERT_TRUE(by_range.site);
    EXPECT_NEAR(by_range.site->clearness[3].value(), 0.48, 1e-9);
    EXPECT_FALSE(by_range.assumptions.empty());
}

TEST(site, a_clock_on_the_other_side_of_the_earth_is_refused) {
    scenario::Place place = chicago_by_hand();
    place.utc_offset = 6.0 * hour;  // the sign forgotten
    place.irradiation.emplace().fill(1.5 * kilowatt_hour_per_square_metre);
    const Made made(place);
    ASSERT_FALSE(made.site);
    EXPECT_TRUE(mentions(made.site.error(), "place.utc_offset"));
}

TEST(site, the_date_line_is_no_contradiction) {
    scenario::Place place = chicago_by_hand();
    place.latitude = -21.0 * degree;
    place.longitude = -175.0 * degree;
    place.utc_offset = 13.0 * hour;
    EXPECT_TRUE(Made(place).site);
}

TEST(site, a_latitude_beyond_the_pole_and_a_missing_one_are_refused) {
    scenario::Place place = chicago_by_hand();
    place.latitude = 95.0 * degree;
    EXPECT_TRUE(mentions(Made(place).site.error(), "place.latitude"));
    place.latitude.reset();
    EXPECT_TRUE(mentions(Made(place).site.error(), "place.latitude"));
    EXPECT_FALSE(Made(scenario::Place{}).site);
}

TEST(site, a_name_of_ones_own_is_kept_beside_coordinates) {
    scenario::Place place = chicago_by_hand();
    place.name = "the cabin";
    const Made made(place);
    ASSERT_TRUE(made.site);
    EXPECT_EQ(made.site->name, "the cabin");
}

TEST(site, the_air_is_warmest_in_the_afternoon_and_keeps_the_mean) {
    Site place;
    place.temperature.emplace().fill(celsius(10.0));
    const LocalTime midnight = local_time(std::chrono::year(2026) / 4 / 10, {});
    double sum = 0.0;
    for (int h = 0; h < 24; ++h)
        sum += in_celsius(air_temperature(place, midnight + double(h) * hour)) / 24.0;
    EXPECT_NEAR(sum, 10.0, 1e-9);
    EXPECT_NEAR(in_celsius(air_temperature(place, midnight + 14.5 * hour)), 14.5, 1e-9);
}

TEST(site, a_polar_night_needs_no_light_to_be_a_site) {
    scenario::Place place = chicago_by_hand();
    place.latitude = 78.0 * degree;
    place.longitude = 15.0 * degree;
    place.utc_offset = 1.0 * hour;
    place.irradiation = std::array<Irradiation, 12>{};
    for (std::size_t month = 2; month < 9; ++month)
        (*place.irradiation)[month] = 1.0 * kilowatt_hour_per_square_metre;
    (*place.irradiation)[9] = 0.15 * kilowatt_hour_per_square_metre;
    const Made made(place);
    ASSERT_TRUE(made.site) << made.site.error()[0].where << made.site.error()[0].found;
    for (const Clearness clearness : made.site->clearness)
        EXPECT_GT(clearness.value(), 0.0);
}

}  // namespace
