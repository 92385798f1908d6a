#include "scenario/file/print.hpp"

#include "scenario/file/tables.hpp"

namespace scenario {

std::string print(const Scenario& scenario) {
    std::string lines;
    std::string blocks;
    for (const AKey<Scenario>& key : describe<Scenario>().keys) {
        if (const std::optional<std::string> block = key->print_block(scenario)) {
            blocks += *block;
        } else if (const std::optional<std::string> value = key->print(scenario)) {
            lines += std::string(key->words.name) + " = " + *value + '\n';
        }
    }
    return lines + blocks;
}

}  // namespace scenario
