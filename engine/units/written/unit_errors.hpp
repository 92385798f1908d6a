// What is said of a text that is no quantity of the wanted kind. `where` stays empty.
#pragma once

#include <string>
#include <string_view>

#include "units/result.hpp"
#include "units/written/unit_table.hpp"

namespace units {

[[nodiscard]] tl::unexpected<Errors> refuse(words::Said found, words::Said remedy);

// A number alone, where a unit is wanted.
[[nodiscard]] tl::unexpected<Errors> no_unit(Dimension wanted, std::string_view text);

// A unit that is not in the table: what it may have meant, or why nobody can tell.
[[nodiscard]] tl::unexpected<Errors> unknown_unit(Dimension wanted, std::string_view text,
                                                  std::string_view unit);

// A unit of another kind of quantity than the wanted one.
[[nodiscard]] tl::unexpected<Errors> wrong_kind(Dimension wanted, std::string_view text,
                                                const NamedUnit& unit);

}  // namespace units
