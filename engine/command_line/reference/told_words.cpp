#include "command_line/reference/told_words.hpp"

#include <algorithm>
#include <vector>

#include "units/written/unit_table.hpp"

namespace command_line {

namespace {

using units::NamedUnit;
using words::Said;
using words::said;

bool is_same_size(const NamedUnit& one, const NamedUnit& other) {
    return one.numerator * other.denominator == other.numerator * one.denominator &&
           one.offset == other.offset && one.shift == other.shift;
}

// Of several spellings of one unit the first.
void add_units(std::vector<const NamedUnit*>& all, units::Dimension dimension) {
    const auto kind = units::written_as(dimension);
    const auto add = [&](const NamedUnit& unit) {
        const bool there = std::ranges::any_of(all, [&](const NamedUnit* one) {
            return one->dimension == unit.dimension && is_same_size(*one, unit);
        });
        if (unit.dimension == kind && !unit.spelling.empty() && !there) all.push_back(&unit);
    };
    for (const auto spelling : units::text_of(dimension).customary)
        if (const auto* unit = units::find_unit(dimension, spelling)) add(*unit);
    if (kind == dimension) std::ranges::for_each(units::unit_table(), add);
}

}  // namespace

std::string_view last_word(std::string_view key) {
    const auto dot = key.rfind('.');
    return dot == std::string_view::npos ? key : key.substr(dot + 1);
}

Said name_of(const scenario::ToldKey& told) {
    return told.of.empty() || last_word(told.key) == told.of
               ? Said(told.key)
               : said<"{key}, beside {part}">(told.key, told.of);
}

Said units_of(const scenario::Shape& shape) {
    if (shape.kind != scenario::Shape::Kind::quantity) return {};
    std::vector<const NamedUnit*> all;
    add_units(all, shape.dimension);
    if (shape.or_of) add_units(all, *shape.or_of);
    std::vector<Said> spellings;
    for (const auto* unit : all)
        spellings.emplace_back(unit->spelling);
    const Said units = words::joined(std::move(spellings), words::List::Joint::comma);
    return units.empty() || shape.per.empty()
               ? units
               : said<"{units}, each before {per}">(units, shape.per);
}

Said when_absent(const scenario::ToldKey& told) {
    if (!told.required) return told.silent;
    return told.lent ? said<"as in the first, of which it is required">()
                     : said<"refused: it is required">();
}

}  // namespace command_line
