#include "answers/exhibits.hpp"

namespace answers {

std::vector<Exhibit> exhibits_of(const Answer& answer) {
    std::vector<Exhibit> exhibits;
    const auto add_all = [&exhibits](const auto& ones) {
        for (const auto& one : ones)
            exhibits.emplace_back(&one);
    };
    if (answer.days) exhibits.emplace_back(&*answer.days);
    if (answer.builds) add_all(answer.builds->views);
    add_all(answer.bars);
    if (answer.curves) exhibits.emplace_back(&*answer.curves);
    add_all(answer.starts);
    if (answer.wiring) exhibits.emplace_back(&*answer.wiring);
    if (answer.account) exhibits.emplace_back(&*answer.account);
    add_all(answer.series);
    return exhibits;
}

}  // namespace answers
