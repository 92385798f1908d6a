// Scenarios read in tests, and what is said of them.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace told {

inline scenario::ReadScenario read(std::string_view text) {
    const units::Result<scenario::ReadScenario> result = scenario::read_scenario(text, "plan.toml");
    if (!result) {
        for (const units::Error& error : result.error()) {
            ADD_FAILURE() << units::print(error);
        }
        return {};
    }
    return *result;
}

inline units::Errors errors_of(std::string_view text, const scenario::Overrides& overrides = {}) {
    const units::Result<scenario::ReadScenario> result =
        scenario::read_scenario(text, "plan.toml", overrides);
    return result ? units::Errors{} : result.error();
}

// The error at a key, or an empty one.
inline units::Error error_at(const units::Errors& errors, std::string_view where) {
    const auto found = std::ranges::find(errors, where, &units::Error::where);
    return found == errors.end() ? units::Error{} : *found;
}

// The first remedy of a text.
inline std::string hint(const std::string& text) {
    const units::Errors all = errors_of(text);
    return all.empty() ? "it was taken" : std::string(all.front().remedy);
}

// A plan of one pack, an inverter and a load "a", with these lines in them.
inline std::string with(const std::string& load, const std::string& pack = "",
                        const std::string& inverter = "") {
    return "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"3 d\"\n[[pack]]\n"
           "name = \"main\"\nvoltage = \"12 V\"\ncapacity = \"100 Ah\"\n" +
           (pack.empty() ? "chemistry = \"agm\"\n" : pack) +
           "\n[inverter]\ncontinuous = \"2000 W\"\n" + inverter + "\n[[load]]\nname = \"a\"\n" +
           load;
}

}  // namespace told
