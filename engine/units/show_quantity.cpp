#include "units/text.hpp"
#include "words/language.hpp"

namespace units {

std::string show_si(Dimension dimension, double value, int significant) {
    return words::in(words::english(),
                     words::Amount{.dimension = dimension, .si = value, .digits = significant});
}

}  // namespace units
