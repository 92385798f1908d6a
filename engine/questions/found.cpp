#include "questions/found.hpp"

#include "scenario/file/set_aside.hpp"

namespace questions {

namespace {

// As the file stands, for every load of it or for those alone that the packs feed.
scenario::ReadScenario looked_at(const scenario::ReadScenario& read, const Asked& asked) {
    scenario::ReadScenario fed = read;
    if (!std::holds_alternative<ReadAsked>(asked)) scenario::set_aside(fed.scenario);
    return fed;
}

}  // namespace

units::Result<Found> find(const scenario::ReadScenario& written, const Asked& asked,
                          const How& how) {
    const auto read = looked_at(written, asked);
    return std::visit(
        [&](const auto& one) -> units::Result<Found> {
            auto found = find(read, one, how);
            if (!found) return units::fail(std::move(found.error()));
            return Found{std::move(*found)};
        },
        asked);
}

}  // namespace questions
