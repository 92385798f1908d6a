// What a weather file says and what is made of it: its clock, kinds of light that are missing,
// hours in which the sun rises, the ground, and files that were spoilt on the way.
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <unistd.h>

#include "solar/sun_setup.hpp"
#include "solar/typical_sky.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;
using test_support::epw_text;
using test_support::MadeHour;
using test_support::tmy3_text;

const Coordinates field{40.0 * degree, -90.0 * degree};

double height_at(int day, double hour_of_day) {
    const LocalTime when =
        local_time(std::chrono::year(2026) / 1 / 1, double(day) * 24.0 * units::hour) +
        hour_of_day * units::hour;
    return std::max(
        0.0, std::cos(sun_position(field, instant(when, -6.0 * units::hour)).zenith / radian));
}

double height_of(int day, int hour) {
    double sum = 0.0;
    for (int part = 0; part < 12; ++part)
        sum += height_at(day, hour - 1 + (part + 0.5) / 12.0) / 12.0;
    return sum;
}

// Light that closes: the sun's beam on every other day, thin cloud on the others. The sky's light
// grows with the sun, so that nothing falls before sunrise.
MadeHour closing(int day, int hour) {
    const double height = height_of(day, hour);
    if (height <= 0.0) return {0.0, 0.0, 0.0, 10.0};
    const double direct = (day % 2 == 0 ? 700.0 : 200.0) * (height > 0.05 ? 1.0 : 0.0);
    const double diffuse = 150.0 * std::min(1.0, 2.0 * height);
    return {direct * height + diffuse, direct, diffuse,
            10.0 + 5.0 * std::sin(2.0 * 3.14159265358979 * (hour - 9) / 24.0)};
}

const std::string& closing_text() {
    static const std::string text = epw_text(closing);
    return text;
}

WeatherYear year_of(const std::string& text) {
    auto year = read_weather(text, "field.epw");
    EXPECT_TRUE(year) << (year ? "" : print(year.error()[0]));
    return year.value_or(WeatherYear{});
}

std::array<PanelGroup, 1> panels(double tilt, double azimuth) {
    return {PanelGroup{.model = {},
                       .aims = {{{}, tilt * degree, azimuth * degree}},
                       .out = {},
                       .shade = {},
                       .covered_days = {}}};
}

Irradiation on_plane(const WeatherYear& year, const Site& site, double tilt, double azimuth,
                     LocalTime from, Duration lasts) {
    const auto held = std::make_shared<const WeatherYear>(year);
    return sum(sun_offered(site, panels(tilt, azimuth), {}, from, lasts, HourlySky{held})).on_plane;
}

const LocalTime first_of_may = local_time(std::chrono::year(2026) / 5 / 1, {});

TEST(weather_truth, another_clock_sees_the_same_sun) {
    const WeatherYear year = year_of(closing_text());
    const Site at_home = site_of(year);
    for (const double ahead : {1.0, -1.0, 0.5}) {
        Site moved = at_home;
        moved.utc_offset = at_home.utc_offset + ahead * hour;
        const double home = on_plane(year, at_home, 90.0, 90.0, first_of_may, 10.0 * day).value();
        const double away =
            on_plane(year, moved, 90.0, 90.0, first_of_may + ahead * hour, 10.0 * day).value();
        EXPECT_NEAR(away / home, 1.0, 0.002) << ahead;
    }
}

scenario::Scenario one_panel() {
    scenario::Scenario made;
    made.outage.starts = first_of_may;
    made.outage.lasts = 2.0 * day;
    made.place.weather_file = "field.epw";
    made.panels = {{.count = 1, .power = 100.0 * watt}};
    return made;
}

class Folder {
  public:
    explicit Folder(const std::string& text)
        : path_(std::filesystem::temp_directory_path() /
                fmt::format("candlemark_weather_truth_{}", getpid())) {
        std::filesystem::create_directories(path_);
        std::ofstream(path_ / "field.epw") << text;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }
    [[nodiscard]] std::string name() const { return path_.string(); }

  private:
    std::filesystem::path path_;
};

bool tells(const SunSetup& setup, const std::string& where, const std::string& part) {
    return std::any_of(setup.findings.begin(), setup.findings.end(), [&](const auto& finding) {
        return finding.where == where && finding.text.find(part) != std::string::npos;
    });
}

TEST(weather_truth, a_typed_clock_and_a_cause_beside_a_file_are_told) {
    const Folder folder(closing_text());
    auto scenario = one_panel();
    const auto plain = sun_setup(scenario, folder.name());
    ASSERT_TRUE(plain) << print(plain.error()[0]);
    EXPECT_TRUE(plain->findings.empty()) << plain->findings[0].text;
    scenario.place.utc_offset = -5.0 * hour;
    scenario.outage.cause = scenario::Cause::storm;
    const auto setup = sun_setup(scenario, folder.name());
    ASSERT_TRUE(setup);
    EXPECT_TRUE(tells(*setup, "place.utc_offset", "UTC-5 h"));
    EXPECT_TRUE(tells(*setup, "place.utc_offset", "UTC-6 h"));
    EXPECT_TRUE(tells(*setup, "outage.cause", "changes nothing"));
}

TEST(weather_truth, figures_made_from_a_file_are_refused_at_the_file) {
    const Folder folder(closing_text());
    auto scenario = one_panel();
    scenario.place.latitude = 78.0 * degree;  // where the polar night gets the file's winter
    scenario.place.longitude = -90.0 * degree;
    const auto setup = sun_setup(scenario, folder.name());
    ASSERT_FALSE(setup);
    for (const Error& error : setup.error())
        EXPECT_EQ(error.where, "place.weather_file");
}

std::string without(bool global, bool direct, bool diffuse) {
    return epw_text([=](int day, int hour) {
        MadeHour made = closing(day, hour);
        if (global) made.global = 9999.0;
        if (direct) made.direct = 9999.0;
        if (diffuse) made.diffuse = 9999.0;
        return made;
    });
}

TEST(weather_truth, a_kind_of_light_that_is_missing_follows_from_the_others) {
    const WeatherSummary whole = summary(year_of(closing_text()));
    EXPECT_EQ(whole.worked_out, 0);
    EXPECT_TRUE(oddities_of(whole).empty());
    for (int missing = 0; missing < 3; ++missing) {
        const WeatherSummary found =
            summary(year_of(without(missing == 0, missing == 1, missing == 2)));
        EXPECT_NEAR(found.global / whole.global, 1.0, 0.002) << missing;
        EXPECT_NEAR(found.direct / whole.direct, 1.0, 0.01) << missing;
        EXPECT_NEAR(found.diffuse / whole.diffuse, 1.0, 0.01) << missing;
        EXPECT_EQ(found.missing, 0);
        EXPECT_GT(found.worked_out, 4000);
        ASSERT_FALSE(oddities_of(found).empty());
        EXPECT_NE(oddities_of(found)[0].text.find("worked out"), std::string::npos);
    }
}

// Before sunrise a station sees some light of the sky. With a kind missing all day those are the
// only hours that hold all three, and the clock is not told from them.
TEST(weather_truth, twilight_alone_says_nothing_of_the_clock) {
    for (int missing = 0; missing < 3; ++missing) {
        const WeatherSummary found = summary(year_of(epw_text([=](int day, int hour) {
            MadeHour made = closing(day, hour);
            const bool twilight = height_of(day, hour) <= 0.0 && height_of(day, hour + 1) > 0.0;
            if (twilight) made.global = made.diffuse = 9.0;
            if (missing == 0) made.global = 9999.0;
            if (missing == 1) made.direct = 9999.0;
            if (missing == 2) made.diffuse = 9999.0;
            return made;
        })));
        EXPECT_EQ(found.sun_late, 0.0 * hour) << missing;
        ASSERT_EQ(oddities_of(found).size(), 1u) << missing;
        EXPECT_NE(oddities_of(found)[0].text.find("worked out"), std::string::npos);
    }
}

TEST(weather_truth, global_light_alone_is_split_by_the_hours_clearness) {
    const auto dull = epw_text([](int day, int hour) {
        const double height = height_of(day, hour);
        return MadeHour{height > 0.0 ? 50.0 * height : 0.0, 9999.0, 9999.0, 10.0};
    });
    const WeatherYear year = year_of(dull);
    // [Erbs 1982]: 1 - 0.09 k below k = 0.22. 21 June: 1326 W/m2 outside the air, so k = 0.0377.
    const HourOfWeather& noon = year.hours[171 * 24 + 11];
    EXPECT_NEAR(*noon.diffuse / *noon.global, 1.0 - 0.09 * 0.0377, 1e-4);
    EXPECT_EQ(noon.light, LightFrom::worked_out);
}

TEST(weather_truth, one_kind_of_light_alone_is_refused_with_its_line) {
    for (const bool direct : {true, false}) {
        const auto year = read_weather(without(true, !direct, direct), "field.epw");
        ASSERT_FALSE(year);
        EXPECT_EQ(year.error().size(), 12u);
        EXPECT_EQ(year.error()[1].line, 8 + 31 * 24 + 1);
        EXPECT_NE(year.error()[1].found.find("February"), std::string::npos);
    }
}

TEST(weather_truth, more_light_than_the_sun_gives_is_refused_at_its_month) {
    const auto tenfold = epw_text([](int day, int hour) {
        MadeHour made = closing(day, hour);
        if (day < 31) made.global = std::min(1500.0, made.global * 3.0);
        return made;
    });
    const auto year = read_weather(tenfold, "field.epw");
    ASSERT_FALSE(year);
    EXPECT_EQ(year.error()[0].line, 9);
    EXPECT_NE(year.error()[0].found.find("January brings"), std::string::npos);
}

// The hours of sunrise and sunset hold 47 W/m2 of sky and a strong beam, whatever part of them is
// lit. Gathered into five minutes that would be 564 W/m2 of sky and a beam of 8400.
TEST(weather_truth, the_hour_of_sunrise_makes_no_peak) {
    const auto year = year_of(epw_text([](int day, int hour) {
        const double height = height_of(day, hour);
        if (height <= 0.0) return MadeHour{};
        return MadeHour{350.0 * height + 47.0, 350.0, 47.0, 10.0};
    }));
    const auto held = std::make_shared<const WeatherYear>(year);
    const LocalTime january = local_time(std::chrono::year(2026) / 1 / 1, {});
    int low = 0;
    for (const double tilt : {0.0, 60.0, 90.0})
        for (const double azimuth : {90.0, 180.0, 270.0})
            for (const SunStep& step : sun_offered(site_of(year), panels(tilt, azimuth), {},
                                                   january, 365.0 * day, HourlySky{held})) {
                const double hours = (step.start - january) / hour + 0.5 * (step.duration / hour);
                const double of_day = hours - 24.0 * std::floor(hours / 24.0);
                const double height = height_at(int(hours / 24.0), of_day);
                if (height <= 0.0 || height > 0.05) continue;
                ++low;
                // Beams of 350 W/m2 fall on the panel as they stand, bent by the bound at 85
                // degrees; the sky gives no more than reaches the top of the air.
                EXPECT_LT(step.on_plane.value(), (350.0 + 1400.0) * height / 0.087)
                    << hours << " " << tilt;
            }
    EXPECT_GT(low, 1000);
}

TEST(weather_truth, the_grounds_albedo_is_the_files_unless_typed) {
    std::string snowy = closing_text();
    for (std::size_t at = 0; (at = snowy.find("999.000", at)) != std::string::npos; at += 5)
        snowy.replace(at, 7, "0.600");
    const WeatherYear bare = year_of(closing_text());
    const WeatherYear white = year_of(snowy);
    const Site site = site_of(bare);
    ASSERT_TRUE(mean_ground(white));
    EXPECT_NEAR(mean_ground(white)->value(), 0.6, 1e-12);
    EXPECT_FALSE(mean_ground(bare));
    // An upright plane sees half the ground: 0.5 (0.6 - 0.2) of the level light.
    const double level = on_plane(bare, site, 0.0, 180.0, first_of_may, 5.0 * day).value();
    const double gains = on_plane(white, site, 90.0, 0.0, first_of_may, 5.0 * day).value() -
                         on_plane(bare, site, 90.0, 0.0, first_of_may, 5.0 * day).value();
    EXPECT_NEAR(gains / level, 0.2, 1e-3);
    Site typed = site;
    typed.ground_is_known = true;
    EXPECT_EQ(on_plane(white, typed, 90.0, 0.0, first_of_may, 5.0 * day),
              on_plane(bare, typed, 90.0, 0.0, first_of_may, 5.0 * day));
}

TEST(weather_truth, a_clock_that_is_out_is_told_with_its_hours) {
    for (const int out : {-3, -1, 1, 2, 6}) {
        const WeatherSummary found = summary(year_of(epw_text([=](int day, int hour) {
            const int moved = day * 24 + hour - 1 + out;
            const int within = (moved + 8760) % 8760;
            return closing(within / 24, within % 24 + 1);
        })));
        EXPECT_NEAR(found.sun_late / hour, out, 1e-9);
        ASSERT_FALSE(oddities_of(found).empty());
        EXPECT_EQ(oddities_of(found)[0].severity, scenario::Severity::caution);
    }
}

// --- Files spoilt on the way: none may change the light or the warmth unspoken.

using Random = std::mt19937_64;

std::size_t below(std::size_t count, Random& random) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
}

struct Table {
    std::vector<std::vector<std::string>> rows;
    std::size_t heads;
    std::array<std::size_t, 3> light;
    std::size_t air;
};

std::vector<std::string> parts_of(const std::string& text, char between) {
    std::vector<std::string> parts(1);
    for (const char letter : text)
        letter == between ? void(parts.emplace_back()) : void(parts.back() += letter);
    return parts;
}

Table table_of(const std::string& text, bool epw) {
    Table made{
        .rows = {},
        .heads = epw ? 8u : 2u,
        .light = epw ? std::array<std::size_t, 3>{13, 14, 15} : std::array<std::size_t, 3>{3, 5, 6},
        .air = epw ? 6u : 7u};
    for (const std::string& line : parts_of(text, '\n'))
        made.rows.push_back(parts_of(line, ','));
    return made;
}

std::string text_of(const Table& table) {
    std::string text;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (i > 0) text += '\n';
        for (std::size_t j = 0; j < table.rows[i].size(); ++j)
            (j > 0 ? text += ',' : text) += table.rows[i][j];
    }
    return text;
}

std::string scaled(const std::string& cell, double factor) {
    return fmt::format("{:g}", std::strtod(cell.c_str(), nullptr) * factor);
}

std::string spoilt(Table table, Random& random, std::string& how) {
    constexpr std::array cells{"0",   "",    "x",    "-5",  "9999", "-9900", "37",
                               "250", "999", "1450", "1e3", "nan",  "\"",    "80"};
    constexpr std::size_t year = 8760;
    const auto row = [&]() -> std::vector<std::string>& {
        return table.rows[table.heads + below(year, random)];
    };
    const auto each = [&](const auto& change) {
        for (std::size_t i = 0; i < year; ++i)
            change(table.rows[table.heads + i], i);
    };
    const std::size_t one = table.light[below(3, random)];
    const std::size_t kind = below(13, random);
    how = fmt::format("kind {}, column {}", kind, one + 1);

    switch (kind) {
        case 0:
            row()[one] = cells[below(cells.size(), random)];
            break;
        case 1:
            row()[table.air] = cells[below(cells.size(), random)];
            break;
        case 2: {
            const auto at = std::ptrdiff_t(table.heads + below(year, random));
            table.rows.erase(table.rows.begin() + at);
            break;
        }
        case 3: {
            const auto at = std::ptrdiff_t(table.heads + below(year, random));
            table.rows.insert(table.rows.begin() + at, table.rows[std::size_t(at)]);
            break;
        }
        case 4:
            std::swap(row(), row());
            break;
        case 5:
            each([&](auto& cells_of, std::size_t) { cells_of[one] = "9999"; });
            break;
        case 6: {
            constexpr std::array factors{0.0, 0.1, 0.5, 0.8, 1.25, 2.0, 3.6, 10.0};
            const double factor = factors[below(factors.size(), random)];
            each([&](auto& cells_of, std::size_t) {
                cells_of[one] = scaled(cells_of[one], factor);
            });
            break;
        }
        case 7: {
            const std::size_t other = one == table.light[0] ? table.light[1] : table.light[0];
            each([&](auto& cells_of, std::size_t) { std::swap(cells_of[one], cells_of[other]); });
            break;
        }
        case 8: {  // the station's line: latitude, longitude or clock
            auto& line = table.rows[0];
            const bool epw = table.heads == 8;
            const std::array<std::size_t, 3> columns =
                epw ? std::array<std::size_t, 3>{6, 7, 8} : std::array<std::size_t, 3>{5, 6, 4};
            auto& cell = line[columns[below(3, random)]];
            const double value = std::strtod(cell.c_str(), nullptr);
            constexpr std::array moves{-30.0, -10.0, -5.0, -3.0, -1.0, 1.0, 3.0, 5.0, 10.0, 30.0};
            cell = below(4, random) == 0 ? fmt::format("{:g}", -value)
                                         : fmt::format("{:g}", value + moves[below(10, random)]);
            break;
        }
        case 9: {  // light moved against the clock
            const std::size_t by = 1 + below(23, random);
            const auto old = table.rows;
            each([&](auto& cells_of, std::size_t i) {
                for (const std::size_t column : table.light)
                    cells_of[column] = old[table.heads + (i + by) % year][column];
            });
            break;
        }
        case 10:
            table.rows.resize(below(table.rows.size(), random));
            break;
        case 11: {  // a few days without one kind of light, or without any
            const std::size_t from = below(year - 240, random);
            const bool all = below(2, random) == 0;
            each([&](auto& cells_of, std::size_t i) {
                if (i < from || i >= from + 240) return;
                for (const std::size_t column : table.light)
                    if (all || column == one) cells_of[column] = "9999";
            });
            break;
        }
        default: {  // light of winter and summer exchanged, hour for hour
            const std::size_t a = 24 * below(40, random);
            const std::size_t b = 24 * (140 + below(60, random));
            for (std::size_t i = 0; i < 24 * 20; ++i)
                for (const std::size_t column : table.light)
                    std::swap(table.rows[table.heads + a + i][column],
                              table.rows[table.heads + b + i][column]);
        }
    }
    return text_of(table);
}

std::vector<std::string> told(const WeatherSummary& sums) {
    std::vector<std::string> texts;
    for (const Oddity& odd : oddities_of(sums))
        texts.push_back(odd.text);
    return texts;
}

// Whether the file's hours differ by what would be seen in an answer.
bool matters(const WeatherYear& whole, const WeatherYear& other) {
    if (abs(whole.at.latitude - other.at.latitude) > 2.0 * degree) return true;
    const double sun = (other.at.longitude - whole.at.longitude) / degree / 15.0 -
                       (other.utc_offset - whole.utc_offset) / hour;
    if (std::abs(sun) > 0.4) return true;
    for (std::size_t i = 0; i < whole.hours.size(); ++i) {
        const auto& a = whole.hours[i];
        const auto& b = other.hours[i];
        const auto apart = [](const auto& left, const auto& right) {
            return std::abs(left.value_or(Irradiance{}).value() -
                            right.value_or(Irradiance{}).value());
        };
        const bool up = height_at(int(i / 24), double(i % 24) + 0.5) > 0.17;
        if (apart(a.global, b.global) > 110.0 || apart(a.diffuse, b.diffuse) > 110.0 ||
            (up && apart(a.direct, b.direct) > 650.0))
            return true;
        if (a.air.has_value() != b.air.has_value()) return true;
        if (a.air && std::abs(in_celsius(*a.air) - in_celsius(*b.air)) > 10.0) return true;
    }
    return false;
}

TEST(weather_truth, a_spoilt_file_is_refused_or_told) {
    const char* asked = std::getenv("CANDLEMARK_SPOILT_WEATHER");
    const int tries = asked ? std::atoi(asked) : 60;
    const std::array texts{closing_text(), tmy3_text(closing)};
    const std::array years{year_of(texts[0]), year_of(texts[1])};
    const std::array tables{table_of(texts[0], true), table_of(texts[1], false)};
    Random random(20261128);
    int refused = 0;
    int said = 0;
    int harmless = 0;
    int silent = 0;
    for (int i = 0; i < tries; ++i) {
        const std::size_t format = std::size_t(i % 2);
        std::string how;
        const auto year = read_weather(spoilt(tables[format], random, how), "field.epw");
        if (!year) {
            ++refused;
        } else if (!told(summary(*year)).empty()) {
            ++said;
        } else if (!matters(years[format], *year)) {
            ++harmless;
        } else {
            ++silent;
            ADD_FAILURE() << "unspoken: try " << i << ", " << how << ", at "
                          << year->at.latitude / degree << " " << year->at.longitude / degree << " "
                          << year->utc_offset / hour << ", misfit " << summary(*year).misfit;
        }
    }
    EXPECT_EQ(silent, 0);
    EXPECT_GT(refused, tries / 10);
    EXPECT_GT(said, tries / 10);
    if (asked)
        std::printf("%d files: %d refused, %d told, %d harmless, %d silent\n", tries, refused, said,
                    harmless, silent);
}

}  // namespace
