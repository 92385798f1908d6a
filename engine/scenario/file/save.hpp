// Changing a scenario file in place: only the bytes of the value change; comments, order, unknown
// keys and line ends stay as the person wrote them.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "scenario/file/document.hpp"
#include "units/result.hpp"

namespace scenario {

// So many bytes of a text at an offset give way to others.
struct Change {
    std::size_t offset = 0;
    std::size_t removed = 0;
    std::string inserted;
};

[[nodiscard]] std::string changed(std::string_view text, const Change& change);

// The change that gives a key its value; see with_value. The document is that of the text.
[[nodiscard]] units::Result<Change> change_of_value(std::string_view text, const Node& document,
                                                    std::string_view key, std::string_view value);

using KeyValue = std::pair<std::string, std::string>;

// The text with one value changed, or put into its table where it was absent.
//   key     "pack.expansion.count", "pack[1].count", "outage.lasts",
//   "load.refrigerator.metered.energy" value   as after the = in the file; quotes are added where
//   the value needs them: 100 Ah fails   when the text is not a document, the key leads nowhere, or
//   the value is not one value
[[nodiscard]] units::Result<std::string> with_value(std::string_view text, std::string_view key,
                                                    std::string_view value);
// Several, one after the other; fails with the errors of all.
[[nodiscard]] units::Result<std::string> with_values(std::string_view text,
                                                     const std::vector<KeyValue>& values);

// The text without a key that is there; the table then is silent on it.
[[nodiscard]] units::Result<std::string> without_value(std::string_view text, std::string_view key);

// The text with another [[name]] after the last one of its kind, or at the end.
//   values   keys of the new table in order, with values as with_value takes them
[[nodiscard]] units::Result<std::string> with_table(std::string_view text, std::string_view name,
                                                    const std::vector<KeyValue>& values);

// The text without one [[entry]], such as "load.refrigerator" or "pack[1]". Comments above its
// header and below its last key stay.
[[nodiscard]] units::Result<std::string> without_table(std::string_view text,
                                                       std::string_view entry);

}  // namespace scenario
