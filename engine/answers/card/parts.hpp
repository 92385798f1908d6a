// The parts of the card in the lid, each from its answer.
#pragma once

#include <string>

#include "answers/card/lid_card.hpp"

namespace answers {

[[nodiscard]] CardPart ration_part(const scenario::Scenario& scenario, const CardAnswers& answers);
[[nodiscard]] CardPart voltmeter_part(const CardAnswers& answers);
[[nodiscard]] CardPart fuses_part(const CardAnswers& answers);
[[nodiscard]] CardPart plug_in_part(const scenario::Scenario& scenario, const CardAnswers& answers);
[[nodiscard]] CardPart cold_part(const scenario::Scenario& scenario);
[[nodiscard]] CardPart storage_part(const scenario::Scenario& scenario, const CardAnswers& answers);
[[nodiscard]] CardPart cautions_part(const CardAnswers& answers);

// "38 h", "3.5 days"; "all of it" where the outage is lasted through.
[[nodiscard]] std::string lasting(units::Duration lasts, bool survives);

// "The sun gives back 550 Wh a day (200 Wh to 970 Wh)."; empty without panels.
[[nodiscard]] std::string given_back(const Answer& outage);

// The first error as a sentence.
[[nodiscard]] std::string reason_in(const units::Errors& errors);

}  // namespace answers
