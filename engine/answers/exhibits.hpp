// Everything of an answer that is shown and not said. Each face has one overload a kind and visits
// them: a kind that a face does not know does not compile.
#pragma once

#include <variant>
#include <vector>

#include "answers/answer.hpp"

namespace answers {

using Exhibit =
    std::variant<const DaysChart*, const BuildsView*, const BarChart*, const DayCurves*,
                 const StartChart*, const WiringDiagram*, const Account*, const Series*>;

// In the order they are to be seen, pictures first; of the answer, which must outlive them.
[[nodiscard]] std::vector<Exhibit> exhibits_of(const Answer& answer);

}  // namespace answers
