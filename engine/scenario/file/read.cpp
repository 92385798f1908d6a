#include "scenario/file/read.hpp"

#include <algorithm>
#include <optional>

#include "scenario/file/document.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/open_end.hpp"
#include "scenario/file/overridden.hpp"
#include "scenario/file/tables.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

using words::said;

// Whether the rest of the file can be read as this version means it.
bool is_known_format(Reading& reading, const Spot& root) {
    const Node* format = root.node->find("format");
    if (format == nullptr) {
        return true;  // its absence is told with the other keys that are demanded
    }
    const Spot spot = root.at(*format, "format");
    const bool number = format->kind == Node::Kind::whole || format->kind == Node::Kind::real;
    if (!number || !(format->number >= 1.0)) {
        reading.refuse(spot, said<"found {value}">(shown(*format)),
                       said<"write format = {version}">(format_version));
        return true;
    }
    if (format->number >= format_version + 1) {
        reading.refuse(
            spot,
            said<"found {value}, which is newer than this program, which reads format {version}">(
                shown(*format), format_version),
            said<"use a newer version of this program; its keys may mean something else there">());
        return false;
    }
    return true;
}

units::Errors empty_file(std::string_view file_name) {
    return {units::Error{
        .where = "",
        .found = said<"the file is empty">(),
        .remedy =
            said<"begin with format = {version}, then [outage] and a [[pack]]">(format_version),
        .file = std::string(file_name)}};
}

// A word misspelt in the file is left out with a warning; on the command line it is an error, since
// the one value asked for would silently not hold.
units::Errors unknown_on_the_command_line(const Reading& reading, const Overridden& overridden) {
    units::Errors errors;
    for (const units::Error& unknown : reading.unknown()) {
        for (std::size_t i = 0; i < overridden.paths.size(); ++i) {
            const std::string& path = overridden.paths[i];
            if (path == unknown.where || path.starts_with(unknown.where + '.')) {
                errors.push_back(unknown);
                errors.back().file = written(overridden.made[i]);
                errors.back().line = 0;
                break;
            }
        }
    }
    return errors;
}

bool is_of(const Overridden& overridden, const units::Error& unknown) {
    return std::ranges::any_of(overridden.paths, [&](const std::string& path) {
        return path == unknown.where || path.starts_with(unknown.where + '.');
    });
}

// Whoever mends a file that is refused sees its misspelt words in the same list.
void append_unknown_of_the_file(const Reading& reading, const Overridden& overridden,
                                units::Errors& errors) {
    for (const units::Error& unknown : reading.unknown()) {
        if (!is_of(overridden, unknown)) {
            errors.push_back(unknown);
        }
    }
}

bool is_blank(std::string_view bytes) {
    return bytes.find_first_not_of(" \t\r\n") == std::string_view::npos || bytes == "\xEF\xBB\xBF";
}

}  // namespace

units::Result<Override> read_override(std::string_view text) {
    bool quoted = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        quoted = text[at] == '"' ? !quoted : quoted;
        if (text[at] == '=' && !quoted && at > 0) {
            return Override{.key = std::string(text.substr(0, at)),
                            .value = std::string(text.substr(at + 1))};
        }
    }
    return units::fail(
        units::Error{.where = "--set",
                     .found = said<"found '{text}', which has no =">(units::quote(text)),
                     .remedy = said<"write KEY=VALUE, such as pack.main.count=2">()});
}

units::Result<ReadScenario> read_scenario(std::string_view bytes, std::string file_name,
                                          Overrides overrides) {
    if (is_blank(bytes) && overrides.empty()) {
        return units::fail(empty_file(file_name));
    }
    Salvage salvage = salvage_document(bytes, file_name);
    Overridden overridden;
    if (salvage.errors.empty() && !overrides.empty()) {
        overridden = override_values(bytes, std::move(salvage.document), overrides);
        salvage.document = std::move(overridden.document);
    }
    if (!salvage.whole) {
        return units::fail(std::move(salvage.errors));
    }
    Reading reading(file_name, std::move(salvage.lost_keys));
    const Spot root = {.node = &salvage.document, .path = ""};
    Scenario scenario;
    if (is_known_format(reading, root)) {
        scenario = read_table<Scenario>(reading, root);
        scenario.outage.lasts = looked_at(scenario.outage);
    }
    units::Errors errors = std::move(salvage.errors);
    std::ranges::move(overridden.errors, std::back_inserter(errors));
    units::Errors warnings = std::move(reading.warnings());
    attribute(overridden, reading.errors());
    attribute(overridden, warnings);
    std::ranges::move(reading.errors(), std::back_inserter(errors));
    std::ranges::move(unknown_on_the_command_line(reading, overridden), std::back_inserter(errors));
    if (!errors.empty()) {
        append_unknown_of_the_file(reading, overridden, errors);
        std::ranges::stable_sort(errors, {}, &units::Error::line);
        return units::fail(std::move(errors));
    }
    std::ranges::stable_sort(warnings, {}, &units::Error::line);
    return ReadScenario{.scenario = std::move(scenario),
                        .warnings = std::move(warnings),
                        .text = std::string(bytes),
                        .file_name = std::move(file_name),
                        .overrides = std::move(overrides)};
}

units::Result<ReadScenario> read_scenario_file(const std::string& path, Overrides overrides) {
    const units::Result<std::string> bytes = bytes_of_file(path);
    if (!bytes) {
        return units::fail(bytes.error());
    }
    return read_scenario(*bytes, path, std::move(overrides));
}

}  // namespace scenario
