// What a weather file says and what is made of it: its clock, kinds of light that are missing,
// hours in which the sun rises, the ground, and files that were spoilt on the way.
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <unistd.h>

#include "engine/solar/closing_weather.hpp"

namespace {

using namespace closing_weather;

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
        return finding.where == where && in_english(finding.text).find(part) != std::string::npos;
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
    EXPECT_TRUE(tells(*setup, "place.utc_offset", "UTC−5 h"));
    EXPECT_TRUE(tells(*setup, "place.utc_offset", "UTC−6 h"));
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

TEST(weather_truth, one_kind_of_light_alone_is_refused_with_its_line) {
    for (const bool direct : {true, false}) {
        const auto year = read_weather(without(true, !direct, direct), "field.epw");
        ASSERT_FALSE(year);
        EXPECT_EQ(year.error().size(), 12u);
        EXPECT_EQ(year.error()[1].line, 8 + 31 * 24 + 1);
        EXPECT_NE(in_english(year.error()[1].found).find("February"), std::string::npos);
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
    EXPECT_NE(in_english(year.error()[0].found).find("January brings"), std::string::npos);
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
        texts.push_back(words::in_english(odd.text));
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
