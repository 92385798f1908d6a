// Asks everything that the card in the lid tells.
#pragma once

#include <cstdint>

#include "answers/card/lid_card.hpp"
#include "scenario/read.hpp"

namespace command_line {

inline constexpr int readings_on_a_card = 7;

//   seed   of the chance weathers
[[nodiscard]] answers::CardAnswers card_answers(const scenario::ReadScenario& read,
                                                std::uint64_t seed = 1);

// "Candlemark 0.1.0"
[[nodiscard]] std::string name_and_version();

}  // namespace command_line
