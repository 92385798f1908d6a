// Names and places for files that a person has not named yet.
#pragma once

#include <QString>

namespace touch {

// Of a title, a name without its ending that any folder can hold: "Ice storm, four nights" is
// "ice_storm_four_nights"; of one without letters, "plan".
[[nodiscard]] QString file_name_of(const QString& title);

// Where people keep papers, if they have such a folder; else their home.
[[nodiscard]] QString folder_of_papers();

}  // namespace touch
