#include "answers/start/chart.hpp"

#include "answers/start/words.hpp"

namespace answers {

StartChart start_chart(const starting::LoadStart& start) {
    StartChart chart{.name = start.name,
                     .verdict = std::string(starting::name_of(start.judged.verdict)),
                     .words = plain(start.judged.verdict)};
    chart.comes_up = start.run_up.likely.comes_up;
    for (const auto& use : start.judged.used)
        chart.bars.push_back({.constraint = std::string(starting::name_of(use.constraint)),
                              .label = starting::in_words(use.constraint),
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
