#include "command_line/made_by.hpp"

#include <array>
#include <cstdint>
#include <sha2.h>

#include "command_line/version.hpp"
#include "scenario/file/file.hpp"
#include "solar/weather/weather_file.hpp"

namespace command_line {

namespace {

using scenario::ReadScenario;

void add(std::string name, std::string_view bytes, answers::MadeBy& made) {
    made.files.push_back({.name = std::move(name), .sha256 = sha256_of(bytes)});
}

void add_with_weather(const ReadScenario& read, answers::MadeBy& made) {
    add(read.file_name, read.text, made);
    const auto& place = read.scenario.place;
    if (!place.weather_file) return;
    const auto folder = scenario::folder_of(read.file_name);
    if (const auto bytes = solar::bytes_of_weather_of(place, folder))
        add(*place.weather_file, *bytes, made);
}

}  // namespace

std::string name_and_version() {
    return "Candlemark " + std::string(version);
}

std::string sha256_of(std::string_view bytes) {
    std::array<char, SHA256_DIGEST_STRING_LENGTH> digits{};
    SHA256Data(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size(), digits.data());
    return digits.data();
}

answers::MadeBy made_by(const ReadScenario& read, const Request& request) {
    answers::MadeBy made{
        .version = std::string(version), .arguments = request.arguments, .seed = request.seed};
    add_with_weather(read, made);
    if (!request.other_file.empty()) {
        if (const auto other = scenario::read_scenario_file(request.other_file))
            add_with_weather(*other, made);
    }
    return made;
}

}  // namespace command_line
