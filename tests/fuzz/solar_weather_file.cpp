// Any bytes whatever through the reader of weather files: an answer or errors, never a fault. An
// input that begins with '+' is put into a whole year's rows, since no chance makes 8760 of them.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "support/weather_text.hpp"

#include "solar/weather_file.hpp"

namespace {

std::string in_a_year(std::string_view bytes) {
    static const std::string epw = test_support::epw_text(test_support::plain_hour);
    static const std::string tmy3 = test_support::tmy3_text(test_support::plain_hour);
    const bool first = !bytes.empty() && bytes.front() % 2 == 0;
    std::string text = first ? epw : tmy3;
    const std::size_t at =
        bytes.size() < 3 ? 0 : std::size_t(std::uint8_t(bytes[1])) * 256 + std::uint8_t(bytes[2]);
    for (std::size_t i = 3; i < bytes.size() && at + i < text.size(); ++i)
        text[at + i] = bytes[i];
    return text;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string_view bytes(reinterpret_cast<const char*>(data), size);
    std::string text(bytes);
    if (bytes.starts_with("+")) text = in_a_year(bytes.substr(1));
    const auto year = solar::read_weather(text, "fuzz");
    if (!year) {
        if (year.error().empty()) std::abort();
        return 0;
    }
    const solar::WeatherSummary sums = solar::summary(*year);
    if (!std::isfinite(sums.global.value()) || !std::isfinite(sums.closure)) std::abort();
    return 0;
}
