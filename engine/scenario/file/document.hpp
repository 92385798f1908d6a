// The scenario file as a tree that knows where in the text each value stands. The one place that
// knows the TOML library.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "units/result.hpp"
#include "units/time.hpp"

namespace scenario {

inline constexpr std::size_t largest_file = 4'000'000;  // bytes; a real file has a few thousand

struct Entry;

// One value. Places are byte offsets into the text, lines are numbered from 1.
struct Node {
    enum class Kind { text, whole, real, truth, time, clock, table, list };
    // How a table is written: [header], {inside a line}, by a dotted key, or the file itself.
    enum class Form { file, header, inside, dotted };

    Kind kind = Kind::table;
    Form form = Form::inside;  // of tables; of lists, header means [[name]] entries
    std::string text;          // of text, what stands between the quotes; else as written
    double number = 0.0;       // of whole and real; may be infinite or not a number
    std::int64_t whole = 0;
    bool truth = false;
    units::LocalTime time;             // of time: a date, or a date and a time of day
    bool has_offset = false;           // the time was written with an offset from UTC
    units::Duration since_midnight{};  // of clock: a time of day
    std::size_t begin = 0;             // of a header table, where its header begins
    std::size_t end = 0;               // one past the last byte; of a table, of all it holds
    int line = 0;
    std::vector<Entry> entries;  // of tables, in the order of the file
    std::vector<Node> items;     // of lists

    [[nodiscard]] const Entry* entry(std::string_view key) const;  // null when there is none
    [[nodiscard]] const Node* find(std::string_view key) const;
};

struct Entry {
    std::string key;
    std::size_t begin = 0;  // where the key begins
    int line = 0;
    Node value;
};

// The whole file as a table of Form::file.
//   fails   when the text is too large, not UTF-8, holds NUL bytes or is not TOML; every line
//           that is wrong on its own is told, with its number
[[nodiscard]] units::Result<Node> read_document(std::string_view text, std::string_view file_name);

// As much of a broken text as can be understood once its wrong lines are left out, so that what
// is wrong in the rest can be told as well.
struct Salvage {
    units::Errors errors;  // empty when the whole text was understood
    Node document;
    bool whole = true;                   // false: the text could not be split into lines of meaning
    std::vector<std::string> lost_keys;  // keys on lines that were left out
};
[[nodiscard]] Salvage salvage_document(std::string_view text, std::string_view file_name);

}  // namespace scenario
