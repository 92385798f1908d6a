// Changes of texts that the targets share.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "fuzz/target.hpp"

namespace fuzz {

// 0 to count - 1; count is at least 1.
[[nodiscard]] std::size_t below(std::size_t count, Random& random);

template <class Things>
[[nodiscard]] const auto& one_of(const Things& things, Random& random) {
    return things[below(things.size(), random)];
}

[[nodiscard]] std::vector<std::string> parts_of(std::string_view text, char between);
[[nodiscard]] std::string joined(const std::vector<std::string>& parts, char between);

// A bit turned, a byte put in, taken out or doubled, a stretch moved.
[[nodiscard]] std::string with_bytes_changed(std::string text, Random& random);

// One of the text's figures, scaled or replaced by an odd one; the text itself where it has none.
[[nodiscard]] std::string with_figure_changed(const std::string& text, Random& random);

// A scenario with a line, a value, a unit or a whole table changed, taken out, doubled or put in.
// Lines put in are those that the descriptions of the tables give as examples.
[[nodiscard]] std::string with_scenario_changed(std::string_view text, std::string_view other,
                                                Random& random);

// "load.pump.power=\"5 W\"": an example of a key, as --set takes it.
[[nodiscard]] std::string any_override(Random& random);

}  // namespace fuzz
