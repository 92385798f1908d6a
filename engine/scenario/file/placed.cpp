#include "scenario/file/placed.hpp"

#include "scenario/file/overridden.hpp"
#include "scenario/keys/place_of_key.hpp"

namespace scenario {
namespace {

// Of the value; of the innermost table on the way to it where it is absent. 0: unknown.
int line_of(const PlaceOfKey& place) {
    if (place.value != nullptr) {
        return place.value->line;
    }
    const Node& table = *place.passed.back().node;
    return table.form == Node::Form::file ? 0 : table.line;
}

bool is_option(const units::Error& error) {
    return error.where.starts_with("--");
}

}  // namespace

units::Errors placed(units::Errors errors, const ReadScenario& read) {
    units::Result<Node> document = read_document(read.text, read.file_name);
    if (!document) {
        return errors;  // what was read once reads again
    }
    const Overridden overridden = override_values(read.text, std::move(*document), read.overrides);
    for (units::Error& error : errors) {
        if (!error.file.empty() || is_option(error)) {
            continue;
        }
        // As the document has it: "pack.count" is that of the only pack, "pack[0].count".
        const auto place = place_of_key(overridden.document, error.where);
        units::Errors told = {error};
        told.front().file = read.file_name;
        if (place) {
            told.front().where = place->path;
            told.front().line = error.line == 0 ? line_of(*place) : error.line;
        }
        attribute(overridden, told);
        error.file = std::move(told.front().file);
        error.line = told.front().line;
    }
    return errors;
}

}  // namespace scenario
