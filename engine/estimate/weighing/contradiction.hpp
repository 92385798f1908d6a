// Readings that cannot be true together. method.md (8)
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "estimate/weighing/batch.hpp"

namespace estimate {

// Readings that cannot be true together with the others.
//   odd       places in the log of each whose absence lets the others be true; all of them where
//             none does
struct Contradiction {
    std::vector<std::size_t> odd;
    bool one_of_them = false;  // leaving out one of these is enough
};

//   plan      members of the plan
//   forms     of what members show, each of where it was fitted; if there are none, one is fitted
//             to the plan
[[nodiscard]] std::optional<Contradiction> contradiction_in(const Batch& plan,
                                                            std::vector<Linear> forms,
                                                            const Unknowns& unknowns,
                                                            const Runner& runner,
                                                            const Story& story);

}  // namespace estimate
