// What any number of panels offers under each weather.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "outage/ready.hpp"
#include "solar/weather/typical_sky.hpp"
#include "units/quantities.hpp"

namespace sizing {

// One weather, and what one panel makes of it before the controller: W a step; empty where panels
// that stand differently share one controller.
struct Weather {
    solar::Sky sky;
    std::vector<double> one_panel;
};

class Skies {
  public:
    // Without panels: no steps at all, and every number of panels offers nothing.
    Skies() = default;
    //   ready  with a site and panels; fewer panels are taken from the last entry first, more are
    //          like the first: outage::with_panels
    Skies(std::shared_ptr<const outage::Ready> ready, int most_panels);

    // When each step begins, after the outage starts.
    [[nodiscard]] const std::vector<units::Duration>& from() const { return from_; }

    // As `outage` draws it.
    [[nodiscard]] Weather weather(std::uint64_t seed, int number) const;

    // W at the bus, a value a step; none at all without panels.
    //   panels  0 to the most
    void offered(const Weather& weather, int panels, std::vector<double>& into) const;

  private:
    std::shared_ptr<const outage::Ready> ready_;
    std::vector<units::Duration> from_;
    std::shared_ptr<const outage::SkyModels> one_;                     // where panels scale
    std::vector<std::shared_ptr<const outage::SkyModels>> by_panels_;  // where they do not
};

}  // namespace sizing
