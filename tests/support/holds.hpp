// A property held against a stated number of generated cases.
#pragma once

#include <rapidcheck.h>

namespace tested {

// True when the property held in every case; otherwise the smallest counterexample is printed.
template <class Property>
[[nodiscard]] bool holds_for(int cases, Property&& property) {
    auto params = rc::detail::configuration().testParams;
    params.maxSuccess = cases;
    const auto result = rc::detail::checkTestable(std::forward<Property>(property),
                                                  rc::detail::TestMetadata{}, params);
    rc::detail::printResultMessage(result, std::cerr);
    std::cerr << '\n';
    return result.template is<rc::detail::SuccessResult>();
}

}  // namespace tested
