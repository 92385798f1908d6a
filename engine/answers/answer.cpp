#include "answers/answer.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace answers {

words::Said closing_line() {
    return words::said<"Arithmetic, not approval. Local codes and licensed practice decide.">();
}

Value quantity_or_reason(Quantity quantity, words::Said reason) {
    if (std::isfinite(quantity.value)) {
        return {std::move(quantity)};
    }
    return {Absent{std::move(reason)}};
}

const Value* value_at(const Members& members, std::string_view path) {
    const auto dot = path.find('.');
    const auto key = path.substr(0, dot);
    const auto found = std::ranges::find(members, key, &Member::key);
    if (found == members.end()) {
        return nullptr;
    }
    if (dot == std::string_view::npos) {
        return &found->value;
    }
    const auto* inner = std::get_if<Members>(&found->value.held);
    return inner == nullptr ? nullptr : value_at(*inner, path.substr(dot + 1));
}

bool holds_a_stop(const Answer& answer) {
    return std::ranges::any_of(answer.findings, [](const PinnedFinding& pinned) {
        return pinned.finding.severity == scenario::Severity::stop;
    });
}

void sort_by_weight(std::vector<PinnedFinding>& findings) {
    std::ranges::stable_sort(findings, {}, [](const PinnedFinding& pinned) {
        return std::tuple(pinned.finding.severity, pinned.at ? pinned.at->value() : -1.0);
    });
}

const words::Said* words_at(const Column& column, std::size_t row) {
    if (const auto* said_ones = std::get_if<std::vector<words::Said>>(&column.points))
        return row < said_ones->size() ? &(*said_ones)[row] : nullptr;
    if (const auto* codes = std::get_if<std::vector<Code>>(&column.points))
        return row < codes->size() ? &(*codes)[row].said : nullptr;
    return nullptr;
}

bool is_for_programs(const Member& member) {
    const auto* code = std::get_if<Code>(&member.value.held);
    return code != nullptr && code->said.empty();
}

std::string_view word_for(scenario::Severity severity) {
    switch (severity) {
        case scenario::Severity::stop:
            return "stop";
        case scenario::Severity::caution:
            return "caution";
        case scenario::Severity::note:
            return "note";
    }
    return "note";
}

}  // namespace answers
