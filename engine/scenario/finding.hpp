// Something a person should know before relying on the answer.
#pragma once

#include <string>
#include <vector>

#include "words/said.hpp"

namespace scenario {

enum class Severity {
    stop,     // the plan does not work as described, or somebody could be hurt
    caution,  // it works, but only just or only if
    note,     // worth knowing
};

struct Finding {
    Severity severity = Severity::note;
    words::Said where;   // the part or load, such as "pack main" or "load refrigerator"
    words::Said text;    // what was found, with the numbers
    words::Said mend;    // what would put it right; empty where nothing needs to
    words::Said source;  // where the rule comes from

    friend bool operator==(const Finding&, const Finding&) = default;
};

using Findings = std::vector<Finding>;

}  // namespace scenario
