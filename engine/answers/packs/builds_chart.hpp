// The builds a person chooses among, as points of a plot.
#pragma once

#include <optional>

#include "answers/packs/answer.hpp"

namespace answers {

// The frontier, the build that the answer names and the one the file has; absent where every build
// is sure to fail.
[[nodiscard]] std::optional<BuildsChart> builds_chart(const questions::PacksFound& found);

// The numbers of one view, a row a build.
[[nodiscard]] Series builds_table(const BuildsChart& chart, const BuildsView& view);

}  // namespace answers
