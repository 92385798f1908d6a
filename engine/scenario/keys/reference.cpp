#include "scenario/keys/reference.hpp"

#include <algorithm>

#include "scenario/file/tables.hpp"

namespace scenario {
namespace {

ToldKeys all_keys() {
    ToldKeys all = told_keys<Scenario>();
    words::Said group;
    for (ToldKey& one : all) {
        if (one.key.find('.') == std::string::npos) {
            group = one.shape.kind == Shape::Kind::table ? one.on_screen.label : words::Said();
        }
        one.group = group;
    }
    return all;
}

}  // namespace

const ToldKeys& reference() {
    static const ToldKeys all = all_keys();
    return all;
}

const ToldKey* told_key(std::string_view key, std::string_view of) {
    const auto found = std::ranges::find_if(
        reference(), [&](const ToldKey& one) { return one.key == key && one.of == of; });
    return found == reference().end() ? nullptr : &*found;
}

}  // namespace scenario
