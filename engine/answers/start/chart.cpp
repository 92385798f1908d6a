#include "answers/start/chart.hpp"

#include <fmt/format.h>

#include "answers/start/words.hpp"

namespace answers {

std::string in_percent(const units::Range<starting::Utilised>& used) {
    const auto percent = [](starting::Utilised share) {
        return share.value() > 9.99 ? std::string("> 999")
                                    : fmt::format("{:.0f}", 100.0 * share.value());
    };
    const auto low = percent(used.low());
    const auto high = percent(used.high());
    return low == high ? high + " %" : low + " to " + high + " %";
}

StartChart start_chart(const starting::LoadStart& start) {
    StartChart chart{.name = start.name,
                     .verdict = std::string(starting::name_of(start.judged.verdict)),
                     .words = std::string(plain(start.judged.verdict))};
    chart.comes_up = start.run_up.likely.comes_up;
    for (const auto& use : start.judged.used)
        chart.bars.push_back({.constraint = std::string(starting::name_of(use.constraint)),
                              .label = std::string(starting::in_words(use.constraint)),
                              .low = use.used.low().value(),
                              .likely = use.used.likely().value(),
                              .high = use.used.high().value(),
                              .comfortable = starting::comfortable(use.constraint).value(),
                              .binding = use.constraint == start.judged.binding,
                              .shown = in_percent(use.used)});
    for (const auto& instant : start.course) {
        chart.time.push_back(instant.motor.time / units::second);
        chart.speed.push_back(instant.motor.speed.value());
        chart.current.push_back(instant.motor.current / units::ampere);
        chart.voltage.push_back(instant.motor.voltage / units::volt);
        chart.direct_voltage.push_back(instant.direct_voltage / units::volt);
    }
    return chart;
}

}  // namespace answers
