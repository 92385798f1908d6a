// What members show at the readings, as a linear form of the scores of what is not known: fitted to
// members that were run, or by changing one unknown after the other. method.md (6) and (7)
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "estimate/weighing/matrix.hpp"

namespace estimate {

// What some members would have shown.
//   scores   by member, by unknown
//   off      by member, by reading: how far above what was read, over the error of that
struct Cloud {
    Matrix scores;
    Matrix off;
};

// An unknown on whose side of a step the readings put it: snow lies or it does not.
//   at, deviation   of its score, that it is held to
struct Held {
    std::size_t unknown = 0;
    double at = 0.0;
    double deviation = 1.0;
};

// `off` as a linear form of the scores of those unknowns that the readings see.
//   unknowns    their places, in rising order
//   at_nought   of each reading, with all of their scores 0
//   per_score   by reading, by unknown
//   rest        covariance of the readings' own errors and of what the form leaves
//   held        some of the unknowns
struct Linear {
    std::vector<std::size_t> unknowns;
    std::vector<double> at_nought;
    Matrix per_score;
    Matrix rest;
    std::vector<Held> held;
};

// Lines through what members show, by those unknowns that go with a reading more than chance makes
// them.
//   earlier   a form of which only what it leaves is fitted
[[nodiscard]] Linear linear_of(const Cloud& cloud, const Linear& earlier = {});

// By member what it shows, over any scores of all unknowns.
using Shown = std::function<Matrix(const Matrix& scores)>;

// About the likeliest scores that are found from here on: a few steps of Gauss and Newton, each
// with the slopes of its own place.
//   start   scores of all unknowns
[[nodiscard]] Linear about_likeliest(std::vector<double> start, const Shown& shown);

}  // namespace estimate
