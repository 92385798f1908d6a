// The tables of the packs question.
#pragma once

#include <vector>

#include "answers/packs/answer.hpp"

namespace answers {

//   grid        chance by packs (rows) and panels (columns)
//   lasts       how long half of the outages last, alike
//   frontier    builds that no other beats in price, weight and chance
//   influences  what moves the end of the outage most
//   ladder      what each load costs, in the order in which they would be switched off
[[nodiscard]] std::vector<Series> packs_series(const questions::PacksFound& found);

}  // namespace answers
