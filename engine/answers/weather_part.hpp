// What was understood of an hourly weather file, as a part of an answer.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "questions/read.hpp"

namespace answers {

// Adds a sentence, the values under "weather_file", a table of the months, and findings on missing
// hours and on a clock that does not fit the sun.
//   file  its name as the person gave it
void add_weather(Answer& answer, const std::string& file, const questions::WeatherRead& weather);

}  // namespace answers
