// What the questions take where a file no longer gives a value: found by asking them of the file
// before and after, since each part knows its own figure and tells it with its source.
#pragma once

#include <QString>

namespace touch {

//   key   the one that `before` gives and `after` does not, as the listing of keys names it
//   file  beside which lie the files that the scenario names
//   gives "taken as 100 A ([LFP 100 sheet], 100 A for 100 Ah)"; empty where no answer tells
[[nodiscard]] QString held_instead(const QString& key, const QString& before, const QString& after,
                                   const QString& file);

}  // namespace touch
