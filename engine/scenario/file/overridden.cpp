#include "scenario/file/overridden.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scenario/file/save.hpp"
#include "scenario/keys/place_of_key.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

constexpr std::string_view option = "--set ";

int line_at(std::string_view text, std::size_t offset) {
    return 1 + static_cast<int>(std::ranges::count(text.substr(0, offset), '\n'));
}

// The place itself, or something inside it.
bool is_within(std::string_view where, std::string_view path) {
    if (!where.starts_with(path)) {
        return false;
    }
    return where.size() == path.size() || where[path.size()] == '.' || where[path.size()] == '[';
}

units::Result<Node> apply(Overridden& so_far, const Override& override) {
    const units::Result<Change> change =
        change_of_value(so_far.text, so_far.document, override.key, override.value);
    if (!change) {
        return units::fail(change.error());
    }
    std::string next = changed(so_far.text, *change);
    units::Result<Node> document = read_document(next, "");
    if (!document) {
        return units::fail(units::Error{
            .where = units::quote(override.key, 80),
            .found = words::said<"the file could not be read any more with this value in it">(),
            .remedy = words::said<"check how the value is written">()});
    }
    const auto lines =
        static_cast<int>(std::ranges::count(change->inserted, '\n')) -
        line_at(so_far.text.substr(change->offset, change->removed), change->removed) + 1;
    if (lines != 0) {
        const bool at_line_begin = change->offset == 0 || so_far.text[change->offset - 1] == '\n';
        so_far.added.push_back(
            {.below = line_at(so_far.text, change->offset) - (at_line_begin ? 1 : 0),
             .count = lines});
    }
    so_far.text = std::move(next);
    return document;
}

}  // namespace

Overridden override_values(std::string_view text, Node document, const Overrides& overrides) {
    Overridden result;
    result.text = std::string(text);
    result.document = std::move(document);
    for (const Override& override : overrides) {
        units::Result<Node> next = apply(result, override);
        if (!next) {
            for (units::Error& error : next.error()) {
                error.file = written(override);
                result.errors.push_back(std::move(error));
            }
            continue;
        }
        result.document = std::move(*next);
        if (const auto place = place_of_key(result.document, override.key)) {
            result.paths.push_back(place->path);
            result.made.push_back(override);
        }
    }
    return result;
}

void attribute(const Overridden& overridden, units::Errors& errors) {
    for (units::Error& error : errors) {
        for (std::size_t i = 0; i < overridden.paths.size(); ++i) {
            if (is_within(error.where, overridden.paths[i])) {
                error.file = written(overridden.made[i]);
                error.line = 0;
            }
        }
        for (auto added = overridden.added.rbegin(); added != overridden.added.rend(); ++added) {
            if (error.line > added->below) {
                error.line = std::max(added->below, error.line - added->count);
            }
        }
    }
}

std::string written(const Override& override) {
    return fmt::format("{}{}={}", option, override.key, override.value);
}

bool is_override(const units::Error& error) {
    return error.file.starts_with(option);
}

}  // namespace scenario
