// What an outage taught: values that the file could have instead. method.md (21)
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace estimate {

// A value as it may stand in the file.
struct InFile {
    double number = 0.0;  // three digits
    std::string unit;     // "Wh"

    [[nodiscard]] std::string text() const;  // what stands behind the =, without quotes: "1200 Wh"
};

// A value offered for a key of the file.
//   low, high   as four times in five
//   factor      of the file's value
struct LearntValue {
    std::string key;
    std::string of;  // the load, pack or "inverter" that it is about
    InFile in_file;
    InFile low;
    InFile likely;
    InFile high;
    double factor = 1.0;
};

//   until     the last entry that counts
//   planned   by the loads up to then, as the file has them; with nothing switched off
//   actual    the same as it most likely was
struct Learnt {
    units::LocalTime until;
    int readings = 0;
    std::vector<LearntValue> values;
    units::Energy planned{};
    units::Energy actual{};
    bool contradicted = false;
};

//   fails   where the outage cannot be planned, or the log is empty
[[nodiscard]] units::Result<Learnt> learnt_of(const scenario::Scenario& scenario,
                                              const std::string& folder,
                                              std::shared_ptr<const outage::Ready> ready,
                                              std::uint64_t seed, unsigned threads = 0);

}  // namespace estimate
