#include "scenario/keys/listing.hpp"

#include "scenario/file/overridden.hpp"
#include "scenario/file/tables.hpp"
#include "scenario/keys/place_of_key.hpp"

namespace scenario {
namespace {

using words::said;

// The override that set this value last; null when the file did.
const Override* override_of(const Node& node, const Overridden& overridden) {
    const Override* last = nullptr;
    for (std::size_t i = 0; i < overridden.paths.size(); ++i) {
        const auto place = place_of_key(overridden.document, overridden.paths[i]);
        if (place && place->value != nullptr && node.begin >= place->value->begin &&
            node.end <= place->value->end) {
            last = &overridden.made[i];
        }
    }
    return last;
}

ListedKey listed(const Row& row, const Overridden& overridden) {
    ListedKey key = {.key = row.key,
                     .value = row.value.value_or(""),
                     .given = row.node != nullptr,
                     .origin = "",
                     .line = 0,
                     .said = row.said,
                     .limits = row.limits,
                     .described = row.described};
    if (row.node == nullptr) {
        key.origin = said<"silent: {holds}">(row.silent);
    } else if (const Override* override = override_of(*row.node, overridden)) {
        key.origin = said<"given by {option}">(written(*override));
    } else {
        units::Errors place = {
            units::Error{.where = "", .found = "", .remedy = "", .line = row.node->line}};
        attribute(overridden, place);
        key.origin = said<"given">();
        key.line = place.front().line;
    }
    return key;
}

}  // namespace

std::vector<ListedKey> listing(const ReadScenario& read) {
    units::Result<Node> document = read_document(read.text, read.file_name);
    if (!document) {
        return {};  // what was read once reads again; an empty list says that it was not read here
    }
    const Overridden overridden = override_values(read.text, std::move(*document), read.overrides);
    Rows rows;
    list_table(rows, {.path = "", .node = &overridden.document, .silent = ""}, read.scenario);
    std::vector<ListedKey> keys;
    for (const Row& row : rows) {
        keys.push_back(listed(row, overridden));
    }
    return keys;
}

}  // namespace scenario
