// Values of the command line put into the text before it is read, and errors led back to them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/file/document.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace scenario {

struct Overridden {
    // Lines that an override added below a line of the text as it was then.
    struct AddedLines {
        int below = 0;
        int count = 0;
    };

    std::string text;
    Node document;
    std::vector<std::string> paths;  // where each override that could be made stands now
    std::vector<Override> made;      // in step with paths
    std::vector<AddedLines> added;   // in the order of the overrides
    units::Errors errors;            // of overrides that could not be made
};

// The document is that of the text.
[[nodiscard]] Overridden override_values(std::string_view text, Node document,
                                         const Overrides& overrides);

// Names the override in errors about its value, and gives the others their lines in the file.
void attribute(const Overridden& overridden, units::Errors& errors);

[[nodiscard]] std::string written(const Override& override);  // "--set pack.main.count=0"
[[nodiscard]] bool is_override(const units::Error& error);

}  // namespace scenario
