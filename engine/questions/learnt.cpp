#include "questions/learnt.hpp"

#include <memory>

#include "outage/ready.hpp"
#include "scenario/file/file.hpp"

namespace questions {

units::Result<LearntFound> find(const scenario::ReadScenario& read, const LearntAsked&,
                                const How& how) {
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    auto learnt = estimate::learnt_of(read.scenario, folder,
                                      std::make_shared<const outage::Ready>(std::move(*ready)),
                                      how.seed, how.threads);
    if (!learnt) return units::fail(std::move(learnt.error()));
    return LearntFound{read.scenario, std::move(*learnt)};
}

}  // namespace questions
