#include "models/fields/count_step.hpp"

#include <utility>

namespace touch {

CountStep::CountStep(Put put, QObject* parent) : QObject(parent), put_(std::move(put)) {}

void CountStep::set_state(State state) {
    state_ = std::move(state);
    emit changed();
}

void CountStep::less() {
    if (can_less()) put_(state_.below);
}

void CountStep::more() {
    if (can_more()) put_(state_.above);
}

}  // namespace touch
