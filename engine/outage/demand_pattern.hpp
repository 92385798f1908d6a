// The steps of one demand for other draws of its loads. When each runs stays as it is, so that all
// that hangs on the hours is worked out once.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "outage/ready.hpp"

namespace outage {

class DemandPattern {
  public:
    //   ready, demand, end   as steps_of takes them
    DemandPattern(const Ready& ready, const demand::Demand& demand, End end);

    // As steps_of gives them to the last bit, were the loads to draw so much; nothing where that
    // does more than change the figures of the steps, so that steps_of must be asked.
    //   loads   what one item of each draws, in the order of demand.loads
    [[nodiscard]] std::optional<std::vector<demand::DemandStep>> with(
        std::span<const units::Power> loads) const;

  private:
    // What one strand adds while it is on.
    //   times, reactive   of its load's power, and of what it draws itself
    struct Part {
        std::size_t load = 0;
        bool ac = false;
        double times = 1.0;
        double reactive = 0.0;
        double converter = 1.0;
    };

    // A load on the bus, with the circuits that its current flows through.
    struct Direct {
        std::size_t load = 0;
        units::Voltage lowest{};
        std::vector<std::size_t> ways;
    };

    // What is on together, by their places in parts_; steps with the same share it.
    struct Together {
        bool inverter_on = false;
        std::vector<std::size_t> on;

        friend auto operator<=>(const Together&, const Together&) = default;
    };

    struct Moment {
        units::Duration from{};
        std::size_t together = 0;
    };

    // What each part draws, and its place in the order in which draws are summed.
    struct Drawn;

    std::vector<Part> parts_;
    std::vector<Direct> directs_;
    std::vector<units::Resistance> ways_;
    std::vector<std::vector<bool>> fed_;  // by way, by load
    units::Voltage nominal_{};
    std::vector<ChargerRuns> chargers_;
    std::vector<Together> together_;
    std::vector<Moment> moments_;
    bool usable_ = false;

    void take_loads(const Ready& ready, const demand::Demand& demand, demand::Case which);
    void take_moments(const demand::Demand& demand, demand::Case which);
    [[nodiscard]] Drawn drawn_by(std::span<const units::Power> loads) const;
    [[nodiscard]] demand::DemandStep step_of(const Together& together, const Drawn& drawn) const;
    void add_ways(demand::DemandStep& step, const Together& together, const Drawn& drawn) const;
};

}  // namespace outage
