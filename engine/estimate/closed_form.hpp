// What one reading, or a few in the linear form, make of what is not known. Everything here is in
// logarithms of factors, or in whatever units the caller keeps. method.md (1) to (4)
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace estimate {

// Of one unknown: where it mostly is, and its standard deviation, at least 0.
struct Normal {
    double mean = 0.0;
    double deviation = 0.0;
};

// surprise   how far the reading lies from what was expected, in standard deviations of both
struct Updated {
    Normal after;
    double surprise = 0.0;
};

// A reading of the unknown itself.
//   error   standard deviation, above 0; infinite changes nothing
[[nodiscard]] Updated updated(const Normal& before, double read, double error);

// Several unknowns, by their means and covariances.
struct Joint {
    std::vector<double> mean;
    std::vector<std::vector<double>> covariance;
};
struct JointUpdated {
    Joint after;
    double surprise = 0.0;
};

// A reading of a weighted sum of them.
//   weights   one an unknown
[[nodiscard]] JointUpdated updated(const Joint& before, std::span<const double> weights,
                                   double read, double error);

// Standard deviation that would be left of a figure once something is read beside it.
//   variance        of the figure
//   covariance      of the figure with what would be read
//   read_variance   of what would be read, as it stands now
[[nodiscard]] double deviation_after(double variance, double covariance, double read_variance,
                                     double error);

// Of the mean of `readings` by one meter, whose own error stays the same.
[[nodiscard]] double deviation_of_mean(double own_error, double of_one, int readings);

// Whether readings fit together, by the sum of the squares of their surprises.
//   beyond   share of the cases in which chance alone gives more
[[nodiscard]] bool fit_together(std::span<const double> surprises, double beyond = 0.05);
[[nodiscard]] double largest_sum_of_squares(int readings, double beyond);

// Charge that a counter may be off by: a share of what went through it, and a current that it
// misses for all the time. In ampere-hours or whatever `through` is in.
[[nodiscard]] double counter_error(double through, double share, double missed_current,
                                   double time);

}  // namespace estimate
