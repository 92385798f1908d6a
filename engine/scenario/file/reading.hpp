// What the reading of one file gathers on the way: everything that is wrong, and everything odd.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/file/document.hpp"
#include "units/result.hpp"

namespace scenario {

// A value of the file and how a person would point at it.
struct Spot {
    const Node* node = nullptr;
    std::string path;        // "pack[1].capacity"
    std::string owner = {};  // "pack \"expansion\""; empty where nothing has a name

    [[nodiscard]] Spot at(const Node& value, std::string_view key) const;  // of a table
    [[nodiscard]] Spot at(const Node& item, std::size_t index) const;      // of a list
};

class Reading {
  public:
    explicit Reading(std::string file_name, std::vector<std::string> lost_keys = {})
        : file_name_(std::move(file_name)), lost_keys_(std::move(lost_keys)) {}

    void refuse(const Spot& spot, words::Said found, words::Said remedy);
    void warn(const Spot& spot, words::Said found, words::Said remedy);
    // A key that no table of this format has: left out with a warning.
    void warn_of_unknown(const Spot& spot, words::Said remedy, words::Said known);
    // Nothing is demanded that stood on a line which could not be read.
    void demand(const Spot& table, std::string_view key, const words::Said& example);

    [[nodiscard]] units::Errors& errors() { return errors_; }
    [[nodiscard]] units::Errors& warnings() { return warnings_; }
    // The unknown keys, each with what would be known in its place as the remedy.
    [[nodiscard]] const units::Errors& unknown() const { return unknown_; }

  private:
    [[nodiscard]] units::Error told(const Spot& spot, words::Said found, words::Said remedy) const;

    std::string file_name_;
    std::vector<std::string> lost_keys_;
    units::Errors errors_;
    units::Errors warnings_;
    units::Errors unknown_;
};

// The value as a sentence may show it: `"100 Wh"`, `100`, `a list of 3`, `a table`.
[[nodiscard]] words::Said shown(const Node& node);
// That of a value which is no list and no table: `"100 Wh"`, `100`.
[[nodiscard]] std::string text_of(const Node& node);

// Names, keys or words of the file in one sentence.
[[nodiscard]] words::Said one_after_the_other(const std::vector<std::string_view>& names,
                                              words::List::Joint joint = words::List::Joint::comma);

// The known word nearest to what was written; empty when none is near.
[[nodiscard]] std::string_view nearest_word(std::string_view written,
                                            const std::vector<std::string_view>& known);

}  // namespace scenario
