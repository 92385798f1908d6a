// Least squares for the three loss constants, all as shares of the rating; method.md (3) and (4).
#pragma once

#include <array>
#include <optional>
#include <vector>

namespace inverter {

// k0, k1 and k2: loss over rating is k0 + k1 p + k2 p^2 at the share p of the rating.
using LossShares = std::array<double, 3>;

// One stated efficiency.
struct CurvePoint {
    double share = 0.0;       // above 0
    double efficiency = 0.0;  // above 0, below 1
};

[[nodiscard]] double loss_share_at(const LossShares& shares, double share);
[[nodiscard]] double stated_loss_share(const CurvePoint& point);

// The largest distance between a stated and the fitted efficiency.
[[nodiscard]] double worst_miss(const LossShares& shares, const std::vector<CurvePoint>& points);

// At every load above nought the loss is above nought, the efficiency below 1, and a larger load
// takes more from the battery.
[[nodiscard]] bool is_sound(const LossShares& shares);

// The constants nearest to the points, unhindered; absent where the points do not decide them.
[[nodiscard]] std::optional<LossShares> nearest(const std::vector<CurvePoint>& points,
                                                std::optional<double> idle_share);

// The constants nearest to the points with none below nought.
[[nodiscard]] LossShares nearest_not_negative(const std::vector<CurvePoint>& points,
                                              std::optional<double> idle_share);

}  // namespace inverter
