#include "units/written/plain_letters.hpp"

namespace units {

std::string in_plain_letters(std::string_view text) {
    struct Written {
        std::string_view fancy;
        std::string_view plain;
    };
    static constexpr std::array spellings = {
        Written{"\t", " "},       Written{"\u00a0", " "}, Written{"\u2009", " "},
        Written{"\u202f", " "},   Written{"−", "-"},      Written{"\u2126", "ohm"},
        Written{"\u03a9", "ohm"}, Written{"\u00b5", "u"}, Written{"\u03bc", "u"},
        Written{"°", "deg"},      Written{"º", "deg"},    Written{"℃", "degC"},
        Written{"℉", "degF"},     Written{"²", "2"},      Written{"³", "3"},
        Written{"½", "1/2"},      Written{"¼", "1/4"},    Written{"¾", "3/4"}};
    std::string plain;
    while (!text.empty()) {
        const auto* const found = std::ranges::find_if(
            spellings, [&](const Written& spelling) { return text.starts_with(spelling.fancy); });
        if (found == spellings.end()) {
            plain += text.front();
            text.remove_prefix(1);
            continue;
        }
        const bool after_digit = !plain.empty() && plain.back() >= '0' && plain.back() <= '9';
        const bool mixed_number = after_digit && found->plain.find('/') != std::string_view::npos;
        plain += mixed_number ? " " : "";
        plain += found->plain;
        text.remove_prefix(found->fancy.size());
    }
    return std::string(trimmed(plain));
}

std::string_view trimmed(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    return text.substr(0, text.find_last_not_of(' ') + 1);
}

}  // namespace units
