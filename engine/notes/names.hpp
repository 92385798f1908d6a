// The names of packs and loads in a person's line.
#pragma once

#include <optional>
#include <string>

#include "notes/words.hpp"
#include "scenario/scenario.hpp"

namespace notes {

struct Named {
    std::optional<std::string> pack;
    std::optional<std::string> load;
};

// Takes the name of a pack and that of a load, whole and whatever their capitals; else a word that
// stands in one name of the file alone, such as "freezer" for "chest freezer".
[[nodiscard]] Named take_names(Words& words, const scenario::Scenario& scenario);

}  // namespace notes
