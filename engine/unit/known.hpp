// A value of the built unit and where it comes from: the one rule by which every such value is
// found.
#pragma once

#include <optional>

namespace unit {

// Who says it, the best first.
enum class Origin { circuit, key, first_pack, chemistry, practice };

template <class T>
struct Known {
    T value{};
    Origin origin = Origin::practice;

    // Nobody who built the unit said it.
    [[nodiscard]] bool assumed() const {
        return origin == Origin::chemistry || origin == Origin::practice;
    }
    friend bool operator==(const Known&, const Known&) = default;
};

// What each of them says of one value; absent where it is silent.
template <class T>
struct Sayings {
    std::optional<T> circuit = {};
    std::optional<T> key = {};
    std::optional<T> first_pack = {};
    std::optional<T> chemistry = {};
    std::optional<T> practice = {};
};

// What the circuit says, else the key, else the first pack's, else the chemistry's, else practice.
template <class T>
[[nodiscard]] std::optional<Known<T>> known(const Sayings<T>& said) {
    if (said.circuit) return Known<T>{*said.circuit, Origin::circuit};
    if (said.key) return Known<T>{*said.key, Origin::key};
    if (said.first_pack) return Known<T>{*said.first_pack, Origin::first_pack};
    if (said.chemistry) return Known<T>{*said.chemistry, Origin::chemistry};
    if (said.practice) return Known<T>{*said.practice, Origin::practice};
    return std::nullopt;
}

// The key of a later pack that says what the first one says: the file lends the first one's value
// to those that are silent.
template <class T>
[[nodiscard]] Sayings<T> of_key(const std::optional<T>& own, const std::optional<T>& first,
                                bool is_first) {
    if (!own) return {};
    if (!is_first && first && *own == *first) return {.first_pack = own};
    return {.key = own};
}

}  // namespace unit
