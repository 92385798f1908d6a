#include "scenario/file/document.hpp"

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"

namespace {

using scenario::Node;
using scenario::read_document;
using testing::HasSubstr;
using testing::SizeIs;

units::Error only_error(std::string_view text) {
    const auto document = read_document(text, "plan.toml");
    EXPECT_FALSE(document.has_value());
    if (document) {
        return {};
    }
    EXPECT_THAT(document.error(), SizeIs(1));
    return document.error().front();
}

std::string_view written(std::string_view text, const Node& node) {
    return text.substr(node.begin, node.end - node.begin);
}

TEST(document, every_value_knows_its_bytes_and_its_line) {
    const auto document = read_document(sample::ice_storm, "");
    ASSERT_TRUE(document);
    const Node& pack = document->find("pack")->items.at(0);
    EXPECT_EQ(written(sample::ice_storm, *pack.find("capacity")), "\"100 Ah\"");
    EXPECT_EQ(pack.find("capacity")->line, 17);
    EXPECT_EQ(written(sample::ice_storm, *pack.find("count")), "1");
    EXPECT_EQ(written(sample::ice_storm, *document->find("outage")->find("starts")),
              "2026-01-14T18:00:00");
    const Node& load = document->find("load")->items.at(0);
    EXPECT_EQ(written(sample::ice_storm, *load.find("metered")),
              "{energy = \"1.9 kWh\", over = \"31 h\"}");
    EXPECT_EQ(written(sample::ice_storm, *load.find("metered")->find("over")), "\"31 h\"");
    const Node& efficiency = *document->find("inverter")->find("efficiency");
    EXPECT_EQ(
        written(sample::ice_storm, efficiency),
        "[{at=\"10 %\", is=\"0.86\"}, {at=\"50 %\", is=\"0.91\"}, {at=\"100 %\", is=\"0.88\"}]");
    EXPECT_EQ(written(sample::ice_storm, efficiency.items.at(1)), "{at=\"50 %\", is=\"0.91\"}");
}

TEST(document, places_hold_with_letters_of_several_bytes_a_byte_order_mark_and_carriage_returns) {
    const std::string text =
        "\xEF\xBB\xBF"
        "a = \"é°Ω€𝄞\"\r\nb = [ '''é\r\n''', 4 ] # …\r\n\"ключ\" = { ü\xC3\xBC = 1 }";
    // A bare key may not hold ü, so this text must be refused; quoted it may.
    EXPECT_FALSE(read_document(text, ""));
    const std::string good =
        "\xEF\xBB\xBF"
        "a = \"é°Ω€𝄞\"\r\nb = [ '''é\r\n''', 4 ] # …\r\n\"ключ\" = { \"ü\" = 1 }";
    const auto document = read_document(good, "");
    ASSERT_TRUE(document);
    EXPECT_EQ(written(good, *document->find("a")), "\"é°Ω€𝄞\"");
    EXPECT_EQ(written(good, *document->find("b")), "[ '''é\r\n''', 4 ]");
    EXPECT_EQ(written(good, document->find("b")->items.at(1)), "4");
    EXPECT_EQ(written(good, *document->find("ключ")->find("ü")), "1");
    EXPECT_EQ(document->find("ключ")->line, 4);
}

TEST(document, forms_of_tables_are_told_apart) {
    const auto document =
        read_document("a.b = 1\nc = {d = 2}\n[e]\nf = 3\n[[g]]\nh = [{i = 4}]\n[j.k]\nl = 5\n", "");
    ASSERT_TRUE(document);
    EXPECT_EQ(document->form, Node::Form::file);
    EXPECT_EQ(document->find("a")->form, Node::Form::dotted);
    EXPECT_EQ(document->find("c")->form, Node::Form::inside);
    EXPECT_EQ(document->find("e")->form, Node::Form::header);
    EXPECT_EQ(document->find("g")->form, Node::Form::header);
    EXPECT_EQ(document->find("g")->items.at(0).form, Node::Form::header);
    EXPECT_EQ(document->find("g")->items.at(0).find("h")->form, Node::Form::inside);
}

TEST(document, entries_are_in_the_order_of_the_file) {
    const auto document = read_document("z = 1\na = 2\n[m]\ny = 3\nb = 4\n", "");
    ASSERT_TRUE(document);
    ASSERT_THAT(document->entries, SizeIs(3));
    EXPECT_EQ(document->entries[0].key, "z");
    EXPECT_EQ(document->entries[1].key, "a");
    EXPECT_EQ(document->entries[2].value.entries.at(0).key, "y");
}

TEST(document, a_value_without_quotes_is_told_with_the_line_as_it_should_be) {
    const units::Error error = only_error("[outage]\nlasts = 4 d  # four nights\n");
    EXPECT_EQ(error.line, 2);
    EXPECT_EQ(error.where, "lasts");
    EXPECT_THAT(error.remedy, HasSubstr("lasts = \"4 d\""));
}

TEST(document, every_line_that_is_wrong_alone_is_told) {
    const auto document =
        read_document("a = 4 d\nb = \"fine\"\nc = 100 Ah\nd = \"open\ne = 2\n", "");
    ASSERT_FALSE(document);
    ASSERT_THAT(document.error(), SizeIs(3));
    EXPECT_EQ(document.error()[0].line, 1);
    EXPECT_EQ(document.error()[1].line, 3);
    EXPECT_EQ(document.error()[2].line, 4);
}

TEST(document, unreadable_text_is_refused_in_words) {
    EXPECT_THAT(only_error("a = 1\na = 2\n").found, HasSubstr("already given"));
    EXPECT_THAT(only_error("a = \n").found, HasSubstr("no value"));
    EXPECT_THAT(only_error("a = \"open\n").found, HasSubstr("not closed"));
    EXPECT_THAT(only_error("[[load\n").remedy, HasSubstr("[[table]]"));
    EXPECT_THAT(only_error("a = [1, 2\n").remedy, HasSubstr("closed"));
    EXPECT_THAT(only_error(std::string("a = 1\0", 6)).found, HasSubstr("zero"));
    EXPECT_THAT(only_error("\xFF\xFE"
                           "a\0")
                    .found,
                HasSubstr("UTF-16"));
    EXPECT_THAT(only_error("a = 1\n# caf\xE9\nb = \"caf\xE9\"\n").found, HasSubstr("UTF-8"));
    EXPECT_THAT(only_error(std::string(scenario::largest_file + 1, 'x')).found, HasSubstr("bytes"));
}

TEST(document, a_comma_too_many_is_told_with_its_line) {
    const units::Error error = only_error("a = 1\nb = 2\nc = [1,,2]\nd = 3\n");
    EXPECT_EQ(error.line, 3);
    EXPECT_THAT(error.found, HasSubstr("[1,,2]"));
    EXPECT_EQ(only_error("c = [,]\n").line, 1);
}

TEST(document, letters_where_white_space_may_stand_are_a_mistake_like_any_other) {
    for (const char* letter :
         {"\u00A1", "\u00B0", "\u0101", "\u0499", "\u2C5F", "\u3042", "\uFB30"}) {
        const std::string odd = letter;
        for (const std::string& line :
             {odd, odd + " = 1", "a " + odd + " = 1", "a = 1 " + odd, "a = 1" + odd,
              "a = [1, " + odd + "]", "[t]" + odd, "[" + odd + "]", "a = 2026-01-15" + odd,
              "a = \"\"\"\\" + odd + "\"\"\""})
            EXPECT_EQ(only_error("b = 1\n" + line + "\n").line, 2) << line;
    }
}

TEST(document, deep_nesting_is_refused_in_words) {
    EXPECT_THAT(only_error("a = " + std::string(100'000, '[') + "\n").found, HasSubstr("deep"));
    std::string braces = "a = ";
    for (int i = 0; i < 10'000; ++i) {
        braces += "{a = ";
    }
    EXPECT_THAT(only_error(braces + "\n").found, HasSubstr("deep"));
    std::string dots = "a";
    for (int i = 0; i < 100'000; ++i) {
        dots += ".a";
    }
    EXPECT_THAT(only_error(dots + " = 1\n").found, HasSubstr("full stops"));
    EXPECT_THAT(only_error("[" + dots + "]\n").found, HasSubstr("full stops"));
}

TEST(document, a_line_of_many_values_takes_no_longer_than_they_are_many) {
    std::string text = "é = [";  // a letter of two bytes, so that columns are not bytes
    text = "\"é\" = [";
    for (int i = 0; i < 200'000; ++i) {
        text += "\"é\",";
    }
    const auto document = read_document(text + "]\n", "");
    ASSERT_TRUE(document);
    EXPECT_EQ(document->entries.at(0).value.items.at(199'999).text, "é");
}

}  // namespace
