// How long the packs of a bank have rested since they were drawn, and what has come back.
// battery/method.md (70)
#pragma once

#include <limits>

#include "battery/rest.hpp"
#include "outage/unit.hpp"

namespace outage {

class Resting {
  public:
    // As an outage finds them: rested.
    explicit Resting(const Bank& bank)
        : most_(bank.rated / battery::rests_over), comes_back_(bank.setup.at_rest != nullptr) {}

    // Whether they show anything at rest that they are not drawn by.
    [[nodiscard]] bool comes_back() const { return comes_back_; }

    // Time has passed; what was charged comes from above, and a trickle rests like a light draw.
    //   out   of one pack in that time; negative where it was charged
    void pass(units::Charge out, units::Duration time) {
        if (out > most_ * time)
            rested_for_ = units::Duration{};
        else if (out < -most_ * time)
            rested_for_ = without_end;
        else
            rested_for_ += time;
    }

    // At this current out of one pack.
    [[nodiscard]] bool still_rises(units::Current out) const {
        return comes_back_ && rests_at(out) && rested_for_ < battery::come_back_after;
    }

    // Above the level by which a pack is drawn, with this current out of it.
    [[nodiscard]] units::Voltage back_by(const Bank& bank, const battery::Wells& wells,
                                         units::Current out) const {
        if (!comes_back_ || !rests_at(out)) return {};
        const auto& setup = bank.setup;
        const auto fill = battery::available_fill(setup.kinetics, wells);
        return battery::voltage_after_rest(*setup.open_circuit, *setup.at_rest, fill, rested_for_) -
               setup.open_circuit->voltage(fill);
    }

  private:
    static constexpr units::Duration without_end =
        std::numeric_limits<double>::infinity() * units::second;

    units::Current most_{};
    units::Duration rested_for_ = without_end;
    bool comes_back_ = false;

    [[nodiscard]] bool rests_at(units::Current out) const {
        return out >= units::Current{} && out <= most_;
    }
};

}  // namespace outage
