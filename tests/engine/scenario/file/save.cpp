#include "scenario/file/save.hpp"

#include <filesystem>
#include <fstream>
#include <sys/stat.h>
#include <unistd.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"

namespace {

using scenario::with_value;
using testing::HasSubstr;
using testing::Not;

std::string replaced(std::string text, std::string_view old, std::string_view with) {
    const std::size_t at = text.find(old);
    EXPECT_NE(at, std::string::npos) << old;
    return text.replace(at, old.size(), with);
}

void expect_text(const units::Result<std::string>& result, const std::string& expected) {
    ASSERT_TRUE(result.has_value()) << testing::PrintToString(result.error());
    EXPECT_EQ(*result, expected);
}

TEST(save, only_the_bytes_of_the_value_change) {
    const std::string text(sample::ice_storm);
    expect_text(with_value(text, "outage.lasts", "5 d"), replaced(text, "\"4 d\"", "\"5 d\""));
    expect_text(with_value(text, "pack.expansion.count", "4"),
                replaced(text, "count = 3\n\n[inv", "count = 4\n\n[inv"));
    expect_text(with_value(text, "pack[1].count", "4"),
                replaced(text, "count = 3\n\n[inv", "count = 4\n\n[inv"));
    expect_text(with_value(text, "outage.starts", "2027-01-01T00:00:00"),
                replaced(text, "2026-01-14T18:00:00", "2027-01-01T00:00:00"));
    expect_text(with_value(text, "load.refrigerator.metered.energy", "2 kWh"),
                replaced(text, "1.9 kWh", "2 kWh"));
    expect_text(with_value(text, "load.cabin lights.power", "9 W"),
                replaced(text, "\"12 W\"", "\"9 W\""));
    expect_text(with_value(text, "inverter.efficiency[1].is", "0.92"),
                replaced(text, "\"0.91\"", "\"0.92\""));
    expect_text(with_value(text, "circuit.cabin lights.links[0].fuse", "5 A"),
                replaced(text, "7.5 A", "5 A"));
    expect_text(with_value(text, "load.cabin lights.hours", "[\"06:00-08:00\"]"),
                replaced(text, "[\"06:00-07:00\", \"17:30-22:00\"]", "[\"06:00-08:00\"]"));
    expect_text(with_value(text, "panel.count", "6"),
                replaced(text, "[[panel]]\ncount = 3", "[[panel]]\ncount = 6"));
}

TEST(save, quotes_are_added_and_escaped_where_the_value_needs_them) {
    const std::string text = "title = \"old\"\nprice = 4\n[[load]]\nname = \"a\"\n";
    expect_text(with_value(text, "title", "he said \"no\" \\ yes"),
                replaced(text, "\"old\"", R"("he said \"no\" \\ yes")"));
    expect_text(with_value(text, "title", "2026"), replaced(text, "\"old\"", "\"2026\""));
    expect_text(with_value(text, "title", "\"as written\""),
                replaced(text, "\"old\"", "\"as written\""));
    expect_text(with_value(text, "price", "5"), replaced(text, "= 4", "= 5"));
    expect_text(with_value(text, "price", "5 EUR"), replaced(text, "= 4", "= \"5 EUR\""));
    expect_text(with_value(text, "load.a.name", "true"), replaced(text, "\"a\"", "\"true\""));
    expect_text(with_value(text, "title", "x\ny = 1"),
                replaced(text, "\"old\"", "\"x\\u000Ay = 1\""));
    expect_text(with_value(text, "title", "x # y"), replaced(text, "\"old\"", "\"x # y\""));
    expect_text(with_value(text, "price", "5 # five"), replaced(text, "= 4", "= \"5 # five\""));
}

TEST(save, a_whole_number_and_a_truth_lose_the_quotes_they_stand_in) {
    const std::string text = "[[pack]]\nname = \"a\"\ncount = \"3\"\n";
    const auto mended = replaced(text, "\"3\"", "2");
    expect_text(with_value(text, "pack.count", "2"), mended);
    expect_text(with_value(text, "pack.count", "\"2\""), mended);
    expect_text(with_value(text, "pack.name", "2"), replaced(text, "\"a\"", "\"2\""));
    // What is no number stays as it was typed, and is refused in words by whoever reads it.
    expect_text(with_value(text, "pack.count", "two"), replaced(text, "\"3\"", "\"two\""));
    const std::string load = "[[load]]\nname = \"a\"\n";
    expect_text(with_value(load, "load.medical", "\"true\""), load + "medical = true\n");
}

TEST(save, an_absent_key_is_put_into_its_table) {
    const std::string text(sample::ice_storm);
    expect_text(with_value(text, "pack.main.weight", "12 kg"),
                replaced(text, "charge = \"100 %\"\n", "charge = \"100 %\"\nweight = \"12 kg\"\n"));
    expect_text(with_value(text, "pack.expansion.charge", "60 %"),
                replaced(text, "count = 3\n\n[inv", "count = 3\ncharge = \"60 %\"\n\n[inv"));
    expect_text(
        with_value(text, "load.refrigerator.runs.starts_at", "5 min"),
        replaced(text, "every = \"45 min\"}", "every = \"45 min\", starts_at = \"5 min\"}"));
    expect_text(
        with_value(text, "load.cabin lights.motor.kind", "universal"),
        replaced(text, "\"17:30-22:00\"]\n", "\"17:30-22:00\"]\nmotor = {kind = \"universal\"}\n"));
    expect_text(with_value(sample::smallest(), "title", "mine"),
                replaced(sample::smallest(), "= 1\n", "= 1\ntitle = \"mine\"\n"));
    expect_text(with_value(sample::smallest(), "goal.chance", "95 %"),
                sample::smallest() + "[goal]\nchance = \"95 %\"\n");
    expect_text(with_value("[outage]\nlasts = \"1 d\"\n", "format", "1"),
                "format = 1\n[outage]\nlasts = \"1 d\"\n");
}

TEST(save, insertion_follows_the_manner_of_the_file) {
    expect_text(with_value("[a]\r\n  b = 1 # one\r\n\r\n[c]\r\n", "a.d", "2"),
                "[a]\r\n  b = 1 # one\r\n  d = 2\r\n\r\n[c]\r\n");
    expect_text(with_value("[a]\nb = 1", "a.d", "2"), "[a]\nb = 1\nd = 2");
    expect_text(with_value("[a]", "a.d", "2"), "[a]\nd = 2");
    expect_text(with_value("[a] # why\n\n[b]\n", "a.d", "2"), "[a] # why\nd = 2\n\n[b]\n");
    expect_text(with_value("a = {}\n", "a.d", "2"), "a = {d = 2}\n");
    expect_text(with_value("a = { b = 1 }\n", "a.d", "2"), "a = { b = 1, d = 2 }\n");
    expect_text(with_value("a.b = 1\n[c]\n", "a.d", "2"), "a.b = 1\na.d = 2\n[c]\n");
    expect_text(with_value("[t]\na.b = 1\n[c]\n", "t.a.d", "2"), "[t]\na.b = 1\na.d = 2\n[c]\n");
    expect_text(with_value("a = [\n 1,\n 2, # two\n]\n[b]\n", "c", "3"),
                "a = [\n 1,\n 2, # two\n]\nc = 3\n[b]\n");
    expect_text(with_value("[a]\nb = 1\n[a.c]\nd = 2\n", "a.e", "3"),
                "[a]\nb = 1\ne = 3\n[a.c]\nd = 2\n");
    expect_text(with_value("[[load]]\nname = \"Mr. Coffee\"\n", "load.Mr. Coffee.count", "2"),
                "[[load]]\nname = \"Mr. Coffee\"\ncount = 2\n");
    expect_text(with_value("[[load]]\nname = \"a.b\"\n", "load.\"a.b\".count", "2"),
                "[[load]]\nname = \"a.b\"\ncount = 2\n");
}

TEST(save, a_key_that_leads_nowhere_is_refused_in_words) {
    const auto words = [](std::string_view key, std::string_view value = "1") {
        const auto result = with_value(sample::ice_storm, key, value);
        return result ? std::string("done") : units::print(result.error().front());
    };
    EXPECT_THAT(words("pack.third.count"), HasSubstr("main, expansion"));
    EXPECT_THAT(words("pack[2].count"), HasSubstr("no such entry"));
    EXPECT_THAT(words("pack[x].count"), HasSubstr("no such entry"));
    EXPECT_THAT(words("pack[99999999999999999999].count"), HasSubstr("no such entry"));
    EXPECT_THAT(words("charger.wall.current"), HasSubstr("no [[charger]]"));
    EXPECT_THAT(words("pack"), HasSubstr("whole table"));
    EXPECT_THAT(words("outage"), HasSubstr("whole table"));
    EXPECT_THAT(words("outage.lasts.hours"), HasSubstr("single value"));
    EXPECT_THAT(words(""), HasSubstr("not written like a key"));
    EXPECT_THAT(words("."), HasSubstr("not written like a key"));
    EXPECT_THAT(words("outage."), HasSubstr("not written like a key"));
    EXPECT_THAT(words("\"open"), HasSubstr("not written like a key"));
    EXPECT_THAT(words("outage.lasts", " "), HasSubstr("no value"));
    EXPECT_FALSE(with_value("a = ", "a", "1"));
}

TEST(save, several_values_change_together_or_tell_all_that_is_wrong) {
    const std::string text(sample::ice_storm);
    expect_text(
        scenario::with_values(text, {{"pack.main.count", "2"}, {"goal.chance", "95 %"}}),
        replaced(replaced(text, "count = 1\nchem", "count = 2\nchem"), "\"90 %\"", "\"95 %\""));
    const auto wrong = scenario::with_values(text, {{"pack.a.count", "2"}, {"pack.b.count", "2"}});
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().size(), 2U);
}

TEST(save, a_key_can_be_taken_out) {
    const std::string text(sample::ice_storm);
    expect_text(
        scenario::without_value(text, "outage.cause"),
        replaced(text, "cause  = \"storm\"                  # storm | clear | unknown\n", ""));
    expect_text(scenario::without_value("a = {b = 1, c = 2, d = 3}\n", "a.b"),
                "a = {c = 2, d = 3}\n");
    expect_text(scenario::without_value("a = {b = 1, c = 2, d = 3}\n", "a.c"),
                "a = {b = 1, d = 3}\n");
    expect_text(scenario::without_value("a = {b = 1, c = 2, d = 3}\n", "a.d"),
                "a = {b = 1, c = 2}\n");
    // What was said of this one value goes with it; what stands above or below stays.
    expect_text(scenario::without_value(
                    "# of a\n[a]\n# of b\nb = 1  # the first\n\n# of c\nc = 2\n", "a.b"),
                "# of a\n[a]\n# of b\n\n# of c\nc = 2\n");
    expect_text(scenario::without_value("[a]\r\nb = 1 # one\r\nc = 2\r\n", "a.b"),
                "[a]\r\nc = 2\r\n");
    expect_text(scenario::without_value("[a]\nb = [\n 1, # one\n 2,\n] # both\nc = 2", "a.b"),
                "[a]\nc = 2");
    expect_text(scenario::without_value("[a]\nc = 2\nb = 1 # last, no line end", "a.b"),
                "[a]\nc = 2\n");
    expect_text(scenario::without_value("a = {b = 1} # only one\n", "a.b"), "a = {} # only one\n");
    expect_text(scenario::without_value("a.b = 1\na.c = 2 # two\n", "a.c"), "a.b = 1\n");
    EXPECT_FALSE(scenario::without_value(text, "outage.colour"));
    EXPECT_FALSE(scenario::without_value(text, "outage"));
}

TEST(save, a_table_is_added_after_the_last_of_its_kind) {
    const std::string text(sample::ice_storm);
    expect_text(
        scenario::with_table(text, "load", {{"name", "phone"}, {"power", "5 W"}, {"count", "2"}}),
        replaced(text, "\n[[circuit]]",
                 "\n[[load]]\nname = \"phone\"\npower = \"5 W\"\ncount = 2\n\n[[circuit]]"));
    expect_text(scenario::with_table(text, "charger", {{"name", "wall"}}),
                text + "\n[[charger]]\nname = \"wall\"\n");
    expect_text(scenario::with_table("", "load", {{"name", "a"}}), "[[load]]\nname = \"a\"\n");
    expect_text(scenario::with_table("load = [{name = \"a\"}]\n", "load", {{"name", "b"}}),
                "load = [{name = \"a\"}, {name = \"b\"}]\n");
    EXPECT_FALSE(scenario::with_table(text, "outage", {}));
}

TEST(save, a_table_is_taken_out_with_all_that_belongs_to_it) {
    const std::string text(sample::ice_storm);
    const auto without = scenario::without_table(text, "load.refrigerator");
    ASSERT_TRUE(without);
    EXPECT_THAT(*without, Not(HasSubstr("refrigerator")));
    EXPECT_THAT(*without,
                HasSubstr("input_limit = \"520 W\"\n\n[[load]]\nname = \"cabin lights\""));
    const auto pack = scenario::without_table(text, "pack[1]");
    ASSERT_TRUE(pack);
    EXPECT_THAT(*pack, HasSubstr("# bought in spring\n"));
    EXPECT_THAT(*pack, Not(HasSubstr("expansion")));
    expect_text(
        scenario::without_table(
            "[[load]]\nname = \"a\"\n[load.motor]\nkind = \"universal\"\n\n[b]\n", "load.a"),
        "[b]\n");
    expect_text(scenario::without_table("load = [{name = \"a\"}, {name = \"b\"}]\n", "load.a"),
                "load = [{name = \"b\"}]\n");
    expect_text(scenario::without_table("load = [{name = \"a\"}, {name = \"b\"}]\n", "load.b"),
                "load = [{name = \"a\"}]\n");
    EXPECT_FALSE(scenario::without_table(text, "load.toaster"));
}

}  // namespace
