#include "support/hand_made_plan.hpp"

#include <algorithm>

#include "models/days/days_view_of.hpp"
#include "models/words/scenario_text.hpp"

namespace touch_tests {

namespace {

constexpr double outage = 48.0;
constexpr double full = 4000.0;  // Wh

double stored(double at, double lasts) {
    const double from_sun =
        400.0 * std::clamp(at - 14.0, 0.0, 4.0) / 4.0 * (at < lasts ? 1.0 : 0.0);
    return std::max(0.0, full * (1.0 - at / lasts)) + from_sun;
}

}  // namespace

answers::Answer hand_made_answer(double lasts) {
    answers::Answer answer;
    answer.question = "outage";
    answer.title = "By hand";
    const bool survives = lasts >= outage;
    answer.sentences = {survives ? "Lasts the whole outage." : "Lasts until some hour.",
                        "One more pack carries you further."};
    answer.values = {{"lasts", "", {answers::Quantity{std::min(lasts, outage), "h", ""}}}};

    answers::DaysChart chart;
    chart.starts = units::local_time(std::chrono::year(2026) / 1 / 14, 18.0 * units::hour);
    chart.lasts = outage;
    chart.top = full;
    chart.usable = full;
    const double ends = std::min(lasts, outage);
    chart.burns = {.nine_in_ten = ends, .half = ends, .one_in_ten = ends};
    for (int quarter = 0; quarter <= 4 * static_cast<int>(outage); ++quarter) {
        const double at = quarter / 4.0;
        chart.at.push_back(at);
        chart.nine_in_ten.push_back(stored(at, 0.8 * lasts));
        chart.likely.push_back(stored(at, lasts));
        chart.one_in_ten.push_back(std::max(chart.likely.back(), stored(at, 1.2 * lasts)));
    }
    for (int begins = 0; begins < static_cast<int>(outage); ++begins) {
        const double before = stored(begins, lasts);
        const double after = stored(begins + 1, lasts);
        const double served = begins + 1 <= lasts ? 120.0 : 0.0;
        const double sun = begins >= 14 && begins < 18 ? 250.0 : 0.0;
        chart.hours.push_back({.from = double(begins),
                               .to = begins + 1.0,
                               .stored_before = before,
                               .sun_offered = sun,
                               .sun_taken = sun,
                               .wanted = 120.0,
                               .served = served,
                               .lost = before + sun - served - after,
                               .stored = after,
                               .nine_in_ten = stored(begins + 1, 0.8 * lasts),
                               .one_in_ten = std::max(after, stored(begins + 1, 1.2 * lasts))});
    }
    chart.nights = {{0.0, 13.5}, {23.0, 37.5}, {47.0, 48.0}};
    answer.days = chart;

    if (!survives) {
        answer.findings.push_back({.finding = {.severity = scenario::Severity::stop,
                                               .where = "inverter",
                                               .text = "The inverter switches off at 10.5 V.",
                                               .mend = "One more pack.",
                                               .source = "by hand"},
                                   .at = lasts * units::hour,
                                   .when = "some hour"});
    }
    answer.findings.push_back({.finding = {.severity = scenario::Severity::note,
                                           .where = "load refrigerator",
                                           .text = "Its power is a guess.",
                                           .mend = "",
                                           .source = "by hand"}});
    return answer;
}

touch::DaysView hand_made_view(const QString& text, const QString&) {
    const touch::Counts counts = touch::counts_in(text);
    const int packs = counts.packs ? counts.packs->above : 1;  // one more: the pack in the case
    return touch::days_view_of(hand_made_answer(10.0 * packs));
}

}  // namespace touch_tests
