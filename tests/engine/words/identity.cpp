#include "words/identity.hpp"

#include <set>

namespace {

using words::identity_of;
using words::Name;
using words::said;

TEST(identity, is_the_same_for_the_same_alone) {
    const auto two = [](const char* a, const char* b) {
        return said<"{a} and {b}">(Name{a}, Name{b});
    };
    EXPECT_EQ(identity_of(two("x", "y")), identity_of(two("x", "y")));
    std::set<std::string> all;
    for (const auto& one : {two("x", "y"), two("y", "x"), two("xy", ""), two("x|0:1:y", ""),
                            said<"{a} or {b}">(1, 2), said<"{a} or {b}">(1, words::in_words(2)),
                            said<"{a}">(said<"{a} or {b}">(1, 2)), words::Said()})
        all.insert(identity_of(one));
    EXPECT_EQ(all.size(), 8u);
}

}  // namespace
