#include "scenario/reference.hpp"

#include "scenario/tables.hpp"

namespace scenario {

const ToldKeys& reference() {
    static const ToldKeys all = told_keys<Scenario>();
    return all;
}

}  // namespace scenario
