// Where things stand that belong to places too close for them: beside each other, each as near to
// its own place as the others leave it.
#pragma once

#include <QList>

namespace touch {

// The middles of things that are `apart` wide, in the order of the places they wish for, which
// ascend; within 0 and `width` where so many fit. Least squares.
[[nodiscard]] QList<double> spread(const QList<double>& wished, double width, double apart);

// The numbers of ascending places, those that lie closest together put into one group until there
// are no more than `most` groups, at least one.
[[nodiscard]] QList<QList<int>> grouped(const QList<double>& places, int most);

}  // namespace touch
