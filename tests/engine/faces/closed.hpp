// Whether a page or a drawing is well formed.
#pragma once

#include <string>
#include <vector>

namespace page_of {

// The elements of a page in their order close each what was opened last; empty where they do.
inline std::string what_is_not_closed(const std::string& page) {
    std::vector<std::string> open;
    for (auto at = page.find('<'); at != std::string::npos; at = page.find('<', at + 1)) {
        const auto end = page.find('>', at);
        if (end == std::string::npos) return page.substr(at, 40);
        const auto tag = page.substr(at + 1, end - at - 1);
        if (tag.starts_with('!') || tag.ends_with('/')) continue;
        const bool closes = tag.starts_with('/');
        const auto name = tag.substr(closes ? 1 : 0, tag.find(' ') - (closes ? 1 : 0));
        if (!closes) {
            open.push_back(name);
        } else if (open.empty() || open.back() != name) {
            return tag;
        } else {
            open.pop_back();
        }
    }
    return open.empty() ? "" : open.back();
}

}  // namespace page_of
