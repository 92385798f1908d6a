#include "questions/now.hpp"

#include <memory>

#include "outage/ready.hpp"
#include "scenario/file/file.hpp"

namespace questions {

units::Result<NowFound> find(const scenario::ReadScenario& read, const NowAsked& asked,
                             const How& how) {
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    auto outlook = estimate::outlook_of(
        read.scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)),
        {.now = asked.at, .seed = how.seed, .threads = how.threads, .fan = asked.fan});
    if (!outlook) return units::fail(std::move(outlook.error()));
    return NowFound{read.scenario, asked.at, std::move(*outlook)};
}

}  // namespace questions
