#include "units/quote.hpp"

namespace units {

namespace {

bool continues(std::string_view text, std::size_t at) {
    return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
}

unsigned code_point(std::string_view character) {
    const auto first = static_cast<unsigned char>(character.front());
    if (character.size() == 1) {
        return first;
    }
    unsigned code = first & (0xFFU >> (character.size() + 1));
    for (const char byte : character.substr(1)) {
        code = (code << 6U) | (static_cast<unsigned char>(byte) & 0x3FU);
    }
    return code;
}

struct Range {
    unsigned first;
    unsigned last;
};

// Controls, line and paragraph ends, direction marks, zero-width characters ([Unicode] ch. 23).
constexpr std::array invisible = {
    Range{0x00, 0x1F},     Range{0x7F, 0x9F},      Range{0xAD, 0xAD},     Range{0x61C, 0x61C},
    Range{0x200B, 0x200F}, Range{0x2028, 0x202E},  Range{0x2060, 0x206F}, Range{0xFEFF, 0xFEFF},
    Range{0xFFF0, 0xFFFB}, Range{0xE0000, 0xE0FFF}};

std::string visible(std::string_view character) {
    const unsigned code = code_point(character);
    for (const Range range : invisible) {
        if (code >= range.first && code <= range.last) {
            return code < 0x100 ? fmt::format("\\x{:02x}", code) : fmt::format("\\u{{{:x}}}", code);
        }
    }
    return std::string(character);
}

}  // namespace

int utf8_length(std::string_view text) {
    if (text.empty()) {
        return 0;
    }
    const auto first = static_cast<unsigned char>(text.front());
    const int length = first < 0x80   ? 1
                       : first < 0xC2 ? 0
                       : first < 0xE0 ? 2
                       : first < 0xF0 ? 3
                       : first < 0xF5 ? 4
                                      : 0;
    for (int at = 1; at < length; ++at) {
        if (!continues(text, static_cast<std::size_t>(at))) {
            return 0;
        }
    }
    if (length > 2) {
        // Overlong forms, surrogates and what lies past U+10FFFF are not UTF-8 ([RFC 3629] 4).
        const unsigned code = code_point(text.substr(0, static_cast<std::size_t>(length)));
        const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
        if (code < (length == 3 ? 0x800U : 0x10000U) || code > 0x10FFFF || surrogate) {
            return 0;
        }
    }
    return length;
}

std::string quote(std::string_view text, int longest) {
    std::string shown;
    for (int characters = 0; !text.empty(); ++characters) {
        if (characters == longest) {
            return shown + "…";
        }
        const int length = utf8_length(text);
        if (length == 0) {
            shown += fmt::format("\\x{:02x}", static_cast<unsigned char>(text.front()));
            text.remove_prefix(1);
        } else {
            shown += visible(text.substr(0, static_cast<std::size_t>(length)));
            text.remove_prefix(static_cast<std::size_t>(length));
        }
    }
    return shown;
}

}  // namespace units
