#include "words/catalogue.hpp"

#include "words/said.hpp"

namespace words {
namespace {

using testing::HasSubstr;

constexpr std::string_view head = R"([language]
code = "xx"
name = "Example"
decimal_mark = ","
plural = "one, other"
)";

TEST(catalogue, gives_the_form_for_the_number) {
    const auto read = Catalogue::read({head, R"(
[[say]]
english = "{n} jar"
many = "{n} jars"
as = ["{n} Glas", "{n} Gläser"]
)"});
    EXPECT_TRUE(read.faults().empty());
    const Said jars = said_of<"{n} jar", "{n} jars">(2);
    EXPECT_EQ(read.text_of(*jars.saying, 1), "{n} Glas");
    EXPECT_EQ(read.text_of(*jars.saying, 2), "{n} Gläser");
}

TEST(catalogue, of_several_files_is_one) {
    const auto read = Catalogue::read(
        {head, "[[say]]\nenglish = \"a\"\nas = \"x\"\n", "[[say]]\nenglish = \"b\"\nas = \"y\"\n"});
    EXPECT_EQ(read.entries().size(), 2u);
    EXPECT_EQ(read.code(), "xx");
    EXPECT_EQ(read.decimal_mark(), ",");
}

TEST(catalogue, tells_each_fault_with_its_line) {
    const auto read = Catalogue::read({head, R"([[say]]
english = "{a} of {b}"
as = "{a} von {c}"
[[say]]
english = "empty"
[[say]]
english = "twice"
as = "zweimal"
[[say]]
english = "twice"
as = "doppelt"
)"});
    ASSERT_EQ(read.faults().size(), 3u);
    EXPECT_THAT(read.faults()[0], HasSubstr("line 1: \"{a} of {b}\": has other parts"));
    EXPECT_THAT(read.faults()[1], HasSubstr("says nothing"));
    EXPECT_THAT(read.faults()[2], HasSubstr("is there twice"));
}

TEST(catalogue, a_file_that_cannot_be_read_is_a_fault) {
    const auto read = Catalogue::read({"[language\n"});
    ASSERT_EQ(read.faults().size(), 1u);
    EXPECT_THAT(read.faults().front(), HasSubstr("line 1"));
}

}  // namespace
}  // namespace words
