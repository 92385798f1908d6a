// Small weather files made on the spot, in all formats, for tests: the same year in each.
#pragma once

#include <cmath>
#include <functional>
#include <string>

#include <fmt/format.h>

namespace test_support {

struct MadeHour {
    double global = 0.0;  // W/m2
    double direct = 0.0;
    double diffuse = 0.0;
    double air = 10.0;  // degrees Celsius
    double snow = 0.0;  // that lies, cm; EPW alone
};

// Gives the hour ending at `hour` (1 to 24) of a day of the year (0 is 1 January).
using MakeHour = std::function<MadeHour(int day, int hour)>;

namespace made_weather {

template <class Row>
void for_each_hour(const Row& row) {
    constexpr int lengths[]{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    int day = 0;
    for (int month = 1; month <= 12; ++month)
        for (int date = 1; date <= lengths[month - 1]; ++date, ++day)
            for (int hour = 1; hour <= 24; ++hour)
                row(month, date, hour, day);
}

}  // namespace made_weather

// A year of 8760 hours at 40 N, 90 W, UTC-6, 200 m.
inline std::string tmy3_text(const MakeHour& make, const char* line_end = "\n") {
    std::string text = fmt::format(
        "999999,\"MADE UP, FIELD\",IL,-6.0,40.000,-90.000,200{0}"
        "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,"
        "DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),Alb (unitless){0}",
        line_end);
    made_weather::for_each_hour([&](int month, int date, int hour, int day) {
        const MadeHour made = make(day, hour);
        text += fmt::format("{:02}/{:02}/{},{:02}:00,0,{:g},1,{:g},{:g},{:g},0.160{}", month, date,
                            1970 + month, hour, made.global, made.direct, made.diffuse, made.air,
                            line_end);
    });
    return text;
}

inline std::string epw_text(const MakeHour& make, const char* line_end = "\n") {
    std::string text = fmt::format(
        "LOCATION,Made Up Field,IL,USA,TMY3,999999,40.000,-90.000,-6.0,200.0{}", line_end);
    for (const char* heading :
         {"DESIGN CONDITIONS,0", "TYPICAL/EXTREME PERIODS,0", "GROUND TEMPERATURES,0",
          "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0", "COMMENTS 1,made up", "COMMENTS 2,",
          "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31"})
        text += fmt::format("{}{}", heading, line_end);
    made_weather::for_each_hour([&](int month, int date, int hour, int day) {
        const MadeHour made = make(day, hour);
        text += fmt::format(
            "{},{},{},{},60,?9,{:g},5,70,99000,0,0,300,{:g},{:g},{:g},0,0,0,0,180,3.0,5,5,"
            "9999,9999,9,999999999,10,0.1,{:g},88,999.000,0,0{}",
            1970 + month, month, date, hour, made.air, made.global, made.direct, made.diffuse,
            made.snow, line_end);
    });
    return text;
}

// As the data base gives it, stamped in the middle of each hour unless minute says otherwise; with
// a 29 February like the 28th where it leaps.
inline std::string nsrdb_text(const MakeHour& make, const char* line_end = "\n", int minute = 30,
                              bool leaps = false) {
    std::string text = fmt::format(
        "Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,"
        "Local Time Zone,DHI Units,DNI Units,GHI Units,Temperature Units,Version{0}"
        "NSRDB,999999,-,-,-,40.0,-90.0,-6,200,-6,w/m2,w/m2,w/m2,c,made up{0}"
        "Year,Month,Day,Hour,Minute,DHI,DNI,GHI,Surface Albedo,Temperature{0}",
        line_end);
    const auto row = [&](int month, int date, int hour, int day) {
        const MadeHour made = make(day, hour);
        text += fmt::format("2020,{},{},{},{},{:g},{:g},{:g},0.16,{:g}{}", month, date, hour - 1,
                            minute, made.diffuse, made.direct, made.global, made.air, line_end);
    };
    made_weather::for_each_hour([&](int month, int date, int hour, int day) {
        row(month, date, hour, day);
        if (!leaps || month != 2 || date != 28 || hour != 24) return;
        for (int again = 1; again <= 24; ++again)
            row(2, 29, again, day);
    });
    return text;
}

// 100 W/m2 of diffuse and 500 direct light from 8:00 to 16:00; 20 degrees in July, -5 in January.
inline MadeHour plain_hour(int day, int hour) {
    const bool bright = hour > 8 && hour <= 16;
    const double air = 7.5 - 12.5 * std::cos(2.0 * 3.14159265358979 * (day - 15) / 365.0);
    return {.global = bright ? 350.0 : 0.0,
            .direct = bright ? 500.0 : 0.0,
            .diffuse = bright ? 100.0 : 0.0,
            .air = air};
}

}  // namespace test_support
