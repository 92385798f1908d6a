// Any bytes: reading gives values or errors; what is read prints and reads back; saving keeps the
// file readable.
#include <string_view>

#include "fuzz/changes.hpp"
#include "fuzz/target.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/print.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"
#include "scenario/keys/listing.hpp"

namespace fuzz {

Came run(std::string_view text) {
    const auto changed = scenario::with_value(text, "pack.main.count", "2");
    if (changed)
        must(scenario::read_document(*changed, "changed.toml").has_value(),
             "a changed value makes the file unreadable");
    const auto read = scenario::read_scenario(text, "fuzz.toml", {});
    count(read ? "read" : "refused");
    if (!read) {
        must(!read.error().empty(), "refused without a word");
        std::string words;
        for (const auto& error : read.error()) {
            must(!error.found.empty() && !error.remedy.empty(), "a refusal without its remedy");
            words += std::string(error.remedy);
        }
        return {.mark = mark_of(words)};
    }
    std::string words;
    for (const auto& key : scenario::listing(*read))
        if (key.given) words += key.key;
    must(scenario::read_scenario(scenario::print(read->scenario), "printed.toml").has_value(),
         "what was printed does not read back");
    return {.mark = mark_of(words)};
}

std::string mutated(std::string_view input, std::string_view other, Random& random) {
    return with_scenario_changed(input, other, random);
}

std::vector<std::string> made_seeds() {
    return {};
}

}  // namespace fuzz
