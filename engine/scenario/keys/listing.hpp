// What was understood of a file: every key there could be, with what the file says or what holds
// where it is silent.
#pragma once

#include <string>
#include <vector>

#include "scenario/file/read.hpp"

namespace scenario {

struct ListedKey {
    std::string key;        // "load.refrigerator.metered.energy", as an override takes it
    std::string value;      // as it stands after the =; empty where nothing holds
    bool given = false;     // by the file or an override
    words::Said origin;     // "given", "given by --set …", or "silent: …" with what holds then
    int line = 0;           // in the file; 0 where the file is silent or an override speaks
    words::Said said = {};  // the value in words; as written where it has none
    words::Said limits = {};     // what values the key takes; empty for tables
    std::string described = {};  // "load.metered.energy", as the reference names it

    friend bool operator==(const ListedKey&, const ListedKey&) = default;
};

// In the order of the format, not of the file; tables that are absent give one row.
[[nodiscard]] std::vector<ListedKey> listing(const ReadScenario& read);

}  // namespace scenario
