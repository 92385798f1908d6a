// An answer for programs: one JSON object in UTF-8, the keys in the order of the answer.
//   {"candlemark":1,"made_by":{…},"question":…,"answer":{…},"findings":[…],"working":[…],
//    "assumptions":[…],"cautions":[…],"series":[…]}
// A quantity is {"value":26.8,"unit":"h"} with a UCUM unit, to ten significant digits.
// Beside the English text of sentences, findings, assumptions and cautions is what was said, for a
// program that says it in another language: "said": {"saying": the English template, "parts": {its
// names}}. An amount is {"value","unit"}, a range {"low","high"} of two, a moment a text as
// 2026-01-15T03:00:00, a count or number a number, a name a text, a saying the same again, a list
// an array of sayings.
// A key without a value is null, and "why_null" beside it holds the reason under the same key.
#pragma once

#include <optional>
#include <string>

#include "answers/answer.hpp"
#include "answers/made_by.hpp"
#include "units/result.hpp"

namespace faces {

// "made_by" is {"program":"candlemark","version":…,"arguments":[…],"seed":…,
// "files":[{"file":…,"sha256":…}]}, and left out where nothing is known of it.
[[nodiscard]] std::string in_json(const answers::Answer& answer,
                                  const std::optional<answers::MadeBy>& made_by = {});

// One of many files, whatever became of it.
struct Line {
    std::string file;
    std::string question;
    std::optional<answers::MadeBy> made_by = {};
    units::Errors warnings = {};
    units::Errors errors = {};  // why there is no answer
};
// The line of it: {"file":…,"candlemark":1,"made_by":{…},"question":…,"answer":{…} or null,
// "findings":[…],"warnings":[…],"errors":[…]}; of a warning and an error {"where":…,"found":…,
// "remedy":…,"line":…}.
[[nodiscard]] std::string in_json_line(const Line& line, const answers::Answer* answer);

// The same of one file that cannot be used, with line breaks.
[[nodiscard]] std::string in_json(const std::string& file, const units::Errors& errors);

}  // namespace faces
