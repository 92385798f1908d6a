// What an item tells that is wrong: its role, name, states, actions or value.
#pragma once

#include <QStringList>

#include "bus/reader.hpp"

namespace bus_tests {

// How many items there are below and with one.
qsizetype count(const Told& tree);

// A line for each thing that is wrong with an item or one below it, with its role and name; empty
// when nothing is.
QStringList wrong_of(const Told& tree);

// The tree as indented lines, to be read by a person.
QString drawn(const Told& tree, int depth = 0);

}  // namespace bus_tests
