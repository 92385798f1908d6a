// The parts of the card in the lid, each from its answer.
#pragma once

#include "answers/card/lid_card.hpp"

namespace answers {

[[nodiscard]] CardPart ration_part(const scenario::Scenario& scenario,
                                   const questions::CardFound& found);
[[nodiscard]] CardPart voltmeter_part(const questions::CardFound& found);
[[nodiscard]] CardPart fuses_part(const questions::CardFound& found);
[[nodiscard]] CardPart plug_in_part(const scenario::Scenario& scenario,
                                    const questions::CardFound& found);
[[nodiscard]] CardPart cold_part(const scenario::Scenario& scenario);
[[nodiscard]] CardPart storage_part(const scenario::Scenario& scenario,
                                    const questions::CardFound& found);
[[nodiscard]] CardPart cautions_part(const questions::CardFound& found);

// "38 h", "3.5 days"; "all 38 h" where the outage is lasted through.
[[nodiscard]] words::Said lasting(units::Duration lasts, bool survives);

// "The sun gives back 550 Wh a day (200 Wh to 970 Wh)."; empty without panels.
[[nodiscard]] words::Said given_back(const questions::OutageFound& outage);

// The first error as a sentence.
[[nodiscard]] words::Said reason_in(const units::Errors& errors);

}  // namespace answers
