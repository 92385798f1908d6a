#include "questions/storage.hpp"

namespace questions {

units::Result<StorageFound> find(const scenario::ReadScenario& read, const StorageAsked& asked,
                                 const How&) {
    auto stored = handling::storage(read.scenario, asked.on);
    if (!stored) return units::fail(std::move(stored.error()));
    return StorageFound{read.scenario, std::move(*stored)};
}

}  // namespace questions
