#include "command_line/reference/keys_manual.hpp"

#include <string_view>

#include <fmt/format.h>

#include "command_line/reference/told_words.hpp"
#include "command_line/version.hpp"
#include "scenario/keys/reference.hpp"

namespace command_line {

namespace {

using scenario::Shape;
using scenario::ToldKey;

// As the page's language wants it: no sign that would be taken for an instruction or another sign.
std::string plain(std::string_view words) {
    std::string text;
    for (const char c : words) {
        if (c == '\\') {
            text += "\\e";
        } else if (c == '-') {
            text += "\\-";
        } else if ((c == '.' || c == '\'') && text.empty()) {
            text += std::string("\\&") + c;
        } else {
            text += c;
        }
    }
    return text;
}

constexpr std::string_view before_the_keys = R"(.SH NAME
candlemark\-scenario \- the file in which a unit, its loads and an outage are described
.SH DESCRIPTION
A scenario is a text file in TOML, its name ending in .toml. Every quantity is written with its
unit, in quotes, so that a wrong one is found: capacity = "100 Ah". Times are local standard time
at the place. Keys that are absent are filled by what is said here; the answers give each figure
they assumed, with its source. Keys that are not known are left out with a warning, and stay in the
file when it is saved.
.PP
Below a list such as [[pack]], several may stand; a pack after the first takes what it does not
give from the first, where they are alike enough.
.SH EXAMPLE
.nf
format = 1
[outage]
starts = 2026\-01\-14T18:00:00
lasts = "2 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamps"
from = "12V"
power = "9 W"
hours = ["16:30\-22:30"]
.fi
)";

constexpr std::string_view behind_the_keys = R"(.SH "SEE ALSO"
.BR candlemark (1),
.BR candlemark\-touch (1)
.PP
.B candlemark keys NAME
tells the same of one key;
.B candlemark keys \-\-as schema
writes the format as a JSON schema for editors.
)";

void add_table(std::string& page, const ToldKey& told) {
    const bool is_list = told.shape.several;
    page += fmt::format(".SH \"KEYS OF {}{}{}\"\n", is_list ? "[[" : "[", plain(told.key),
                        is_list ? "]]" : "]");
    page += plain(std::string(told.means)) + (told.required ? "; it is required.\n" : ".\n");
    if (is_list) page += fmt::format("There may be {}.\n", plain(std::string(told.limits)));
}

void add_key(std::string& page, const ToldKey& told) {
    page += fmt::format(".TP\n.B {}\n", plain(std::string(name_of(told))));
    page += plain(std::string(told.means)) + ".\n";
    if (told.shape.kind != Shape::Kind::table) {
        page += fmt::format("Takes {}. ", plain(std::string(told.limits)));
        page += fmt::format("Such as {} = {}.\n", plain(last_word(told.key)), plain(told.example));
    }
    if (const std::string absent(when_absent(told)); !absent.empty())
        page += told.required && !told.lent ? std::string("It is required.\n")
                                            : fmt::format("Absent: {}.\n", plain(absent));
}

bool is_at_top(const ToldKey& told) {
    return told.key.find('.') == std::string::npos;
}

}  // namespace

std::string keys_manual() {
    std::string page = fmt::format(
        ".\\\" Made of the descriptions of the keys; see \"candlemark keys\".\n"
        ".TH CANDLEMARK\\-SCENARIO 5 \"\" \"Candlemark {}\" \"File Formats\"\n",
        version);
    page += before_the_keys;
    page += ".SH \"KEYS AT THE TOP\"\n";
    for (const auto& told : scenario::reference())
        if (is_at_top(told) && told.shape.kind != Shape::Kind::table) add_key(page, told);
    for (const auto& told : scenario::reference()) {
        if (!is_at_top(told)) add_key(page, told);
        if (is_at_top(told) && told.shape.kind == Shape::Kind::table) add_table(page, told);
    }
    page += behind_the_keys;
    return page;
}

}  // namespace command_line
