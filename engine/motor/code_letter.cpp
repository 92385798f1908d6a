#include "motor/code_letter.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

#include "words/said.hpp"

namespace motor {

namespace {

struct Band {
    char letter;
    double from;  // kVA/hp, included
};

// [NEC] Table 430.7(B); the last row is where V, which is open above, begins.
constexpr std::array<Band, 19> bands{{
    {'A', 0.0},  {'B', 3.15}, {'C', 3.55}, {'D', 4.0},  {'E', 4.5},  {'F', 5.0},  {'G', 5.6},
    {'H', 6.3},  {'J', 7.1},  {'K', 8.0},  {'L', 9.0},  {'M', 10.0}, {'N', 11.2}, {'P', 12.5},
    {'R', 14.0}, {'S', 16.0}, {'T', 18.0}, {'U', 20.0}, {'V', 22.4},
}};

units::ApparentPower at(double kilovolt_ampere_per_horsepower, units::Power output) {
    return 1000.0 * kilovolt_ampere_per_horsepower * (output / horsepower) * units::volt_ampere;
}

}  // namespace

units::Result<units::Range<units::ApparentPower>> locked_rotor_power(std::string_view text,
                                                                     units::Power rated_output) {
    using words::said;
    if (text.size() != 1 || std::isalpha(static_cast<unsigned char>(text.front())) == 0) {
        return units::fail(
            {.where = "",
             .found = said<"'{text}' is not a code letter">(text),
             .remedy = said<"give the one letter A to V beside CODE on the plate">()});
    }
    const char letter = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    if (letter == 'V') {
        return units::fail(
            {.where = "",
             .found = said<"code letter V means 22.4 kVA per horsepower and up, "
                           "with no upper end">(),
             .remedy = said<"give locked_rotor_current, marked LRA on the plate">()});
    }
    const auto band = std::find_if(bands.begin(), bands.end() - 1, [letter](const Band& candidate) {
        return candidate.letter == letter;
    });
    if (band == bands.end() - 1) {
        return units::fail(
            {.where = "",
             .found = said<"code letter {letter} is not used on motors (I, O and Q are left out, "
                           "and V is the last)">(std::string(1, letter)),
             .remedy = said<"read the plate again: 1 and J look like I; D, G and C look like O "
                            "and Q">()});
    }
    const double low = band->from;
    const double high = (band + 1)->from;
    return units::spanning(at(low, rated_output), at((low + high) / 2.0, rated_output),
                           at(high, rated_output));
}

char code_letter_of(units::ApparentPower locked_rotor, units::Power rated_output) {
    const double kilovolt_ampere_per_horsepower =
        locked_rotor / units::volt_ampere / 1000.0 / (rated_output / horsepower);
    const auto above = std::find_if(bands.begin() + 1, bands.end(), [&](const Band& band) {
        return band.from > kilovolt_ampere_per_horsepower;
    });
    return (above - 1)->letter;
}

}  // namespace motor
