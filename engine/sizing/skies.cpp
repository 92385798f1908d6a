#include "sizing/skies.hpp"

#include <cassert>

#include "outage/panel_counts.hpp"
#include "outage/ready_sun.hpp"
#include "outage/weathers.hpp"
#include "solar/panel.hpp"

namespace sizing {

namespace {

using namespace units;

// Hands on what the panels give, untouched.
solar::ControllerModel without_limits(const solar::ControllerModel& controller) {
    return {.kind = controller.kind,
            .efficiency = Efficiency(1.0),
            .battery_voltage = controller.battery_voltage};
}

}  // namespace

Skies::Skies(std::shared_ptr<const outage::Ready> ready, int most_panels)
    : ready_(std::move(ready)) {
    assert(ready_->sky);
    const auto& groups = ready_->sky->groups;
    if (groups.size() == 1)
        one_ = outage::with_panels(*ready_, 1).sky;
    else
        for (int panels = 0; panels <= most_panels; ++panels)
            by_panels_.push_back(outage::with_panels(*ready_, panels).sky);
    for (const auto& step : ready_->sky->track.steps())
        from_.push_back(step.start - ready_->outage.starts);
}

Weather Skies::weather(std::uint64_t seed, int number) const {
    if (!ready_) return {};
    Weather weather{.sky = outage::sky_of(*ready_, seed, number)};
    if (!one_) return weather;
    weather.one_panel.reserve(from_.size());
    for (const auto& step : one_->track.under(weather.sky, without_limits(one_->controller)))
        weather.one_panel.push_back(step.offered / watt);
    return weather;
}

void Skies::offered(const Weather& weather, int panels, std::vector<double>& into) const {
    into.clear();
    if (!ready_ || panels == 0) return;
    if (one_) {
        const auto& controller = one_->controller;
        for (const double alone : weather.one_panel) {
            const Power power = static_cast<double>(panels) * (alone * watt);
            into.push_back(
                solar::through_controller(
                    controller, {.power = power, .current = power / controller.battery_voltage})
                    .power /
                watt);
        }
        return;
    }
    const auto& sky = *by_panels_[static_cast<std::size_t>(panels)];
    for (const auto& step : sky.track.under(weather.sky, sky.controller))
        into.push_back(step.offered / watt);
}

}  // namespace sizing
