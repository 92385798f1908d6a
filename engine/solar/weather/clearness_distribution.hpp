// How the clearness of single days scatters about a month's mean.
#pragma once

#include "solar/irradiation.hpp"
#include "units/quantities.hpp"

namespace solar {

// Exponential between two bounds; method.md (36) to (39), [Bendt 1981].
//   accuracy  against 1440 station-months the spread is within 9 %, the low end within 4 points of
//             the mean: method.md, section 5
class ClearnessDistribution {
  public:
    // What the darkest days of a month have, fitted to 1440 station-months; method.md (37).
    static constexpr Clearness darkest_days{0.13};

    // For any mean above 0 and any elevation from -500 m to 9000 m.
    ClearnessDistribution(Clearness mean, units::Length elevation,
                          Clearness darkest = darkest_days);

    [[nodiscard]] Clearness lowest() const { return Clearness(lowest_); }
    [[nodiscard]] Clearness highest() const { return Clearness(lowest_ + width_); }
    [[nodiscard]] double steepness() const { return scaled_ / width_; }  // 0 is uniform
    [[nodiscard]] Clearness mean() const;

    // The clearness below which a share `below` of days lies; 0 gives lowest, 1 highest.
    [[nodiscard]] Clearness quantile(units::Probability below) const;
    [[nodiscard]] units::Probability below(Clearness clearness) const;

  private:
    double lowest_ = 0.0;
    double width_ = 0.0;
    double scaled_ = 0.0;  // steepness times width
};

}  // namespace solar
