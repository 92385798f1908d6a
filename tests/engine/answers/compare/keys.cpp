// Every key of the format, changed alone: compare names it and the swap table fires, or it is
// listed here with the reason why it does not matter.
#include <algorithm>
#include <cctype>
#include <iostream>
#include <map>
#include <set>

#include "engine/scenario/sample.hpp"
#include "fitting/swap.hpp"
#include "questions/shared/draws.hpp"
#include "scenario/file/read.hpp"
#include "scenario/keys/listing.hpp"

namespace {

using scenario::ReadScenario;

// Keys that no build differs by.
const std::map<std::string, std::string> of_no_weight{
    {"format", "says how the file is written, not what the unit is"},
    {"title", "a name for people"},
};

// Another value of the same kind, as it stands after the =: candidates, the likeliest first.
std::vector<std::string> others_than(const std::string& value) {
    std::vector<std::string> others;
    // A number somewhere in it, a little more or less.
    const auto first = value.find_first_of("0123456789");
    if (first != std::string::npos) {
        auto last = first;
        while (last < value.size() &&
               (std::isdigit(static_cast<unsigned char>(value[last])) != 0 || value[last] == '.')) {
            ++last;
        }
        const std::string digits = value.substr(first, last - first);
        const bool whole = digits.find('.') == std::string::npos;
        const double number = std::stod(digits);
        for (const double changed :
             {number + 1.0, number - 1.0, 0.9 * number, 1.1 * number, 0.5 * number, 2.0 * number}) {
            const bool fits = changed >= 0.0 && (!whole || changed == static_cast<int>(changed));
            if (fits) {
                others.push_back(
                    value.substr(0, first) +
                    (whole ? std::to_string(static_cast<int>(changed)) : std::to_string(changed)) +
                    value.substr(last));
            }
        }
    }
    for (const char* word :
         {"true",           "false",         "\"storm\"",         "\"clear\"",
          "\"lifepo4\"",    "\"gel\"",       "\"agm\"",           "\"fresh\"",
          "\"sine\"",       "\"trips\"",     "\"split_phase\"",   "\"L\"",
          "\"fixed\"",      "\"mppt\"",      "\"wall\"",          "\"12V\"",
          "\"ac\"",         "\"guess\"",     "\"both\"",          "\"building\"",
          "\"nec\"",        "\"ul\"",        "\"floating\"",      "\"steel\"",
          "\"closed\"",     "\"blade\"",     "\"two-pole 50\"",   "\"inverter\"",
          "\"Chicago IL\"", "\"IP67\"",      "\"by hand\"",       "\"refrigerator\"",
          "\"another\"",    "[\"another\"]", "[\"06:00-07:00\"]", "[3]",
          "\"other.epw\""}) {
        others.emplace_back(word);
    }
    return others;
}

ReadScenario read(scenario::Overrides overrides = {}) {
    auto read = scenario::read_scenario(sample::every_key, "every_key.toml", std::move(overrides));
    EXPECT_TRUE(read);
    return std::move(*read);
}

std::optional<ReadScenario> changed(const scenario::ListedKey& key) {
    for (const std::string& other : others_than(key.value)) {
        if (other == key.value) {
            continue;
        }
        auto then =
            scenario::read_scenario(sample::every_key, "every_key.toml", {{key.key, other}});
        if (!then) {
            continue;
        }
        const auto keys = scenario::listing(*then);
        const bool another = std::ranges::any_of(keys, [&key](const scenario::ListedKey& now) {
            return now.key == key.key && now.value != key.value;
        });
        // A changed name is listed under the new one.
        const bool gone = std::ranges::none_of(
            keys, [&key](const scenario::ListedKey& now) { return now.key == key.key; });
        if (another || gone) {
            return std::move(*then);
        }
    }
    return std::nullopt;
}

TEST(compare_keys, every_key_changed_alone_is_named_and_fires_its_row) {
    const ReadScenario before = read();
    int given = 0;
    int named = 0;
    std::set<std::string> unnamed;
    for (const auto& key : scenario::listing(before)) {
        if (!key.given || of_no_weight.contains(key.key)) {
            continue;
        }
        ++given;
        const auto after = changed(key);
        if (!after) {
            ADD_FAILURE() << "no other value of " << key.key << " = " << key.value
                          << " was found to try";
            continue;
        }
        const auto changes = fitting::changes_between(before.scenario, after->scenario);
        bool fires = !changes.empty();
        for (const auto& change : changes) {
            fires = fires && (!fitting::dirtied_by(change).empty() ||
                              !fitting::questions_of(change).empty());
            EXPECT_FALSE(change.words.empty()) << key.key;
        }
        if (fires) {
            ++named;
        } else {
            unnamed.insert(key.key);
        }
    }
    EXPECT_GE(given, 150);
    EXPECT_EQ(named, given);
    EXPECT_TRUE(unnamed.empty()) << *unnamed.begin();
    RecordProperty("keys", given);
    RecordProperty("named", named);
    std::cout << "keys changed alone: " << given << ", named: " << named << "\n";
}

// Where `name = value` stands in the line of links, with the value's place in the text.
struct LinkKey {
    std::string name;
    std::string value;
    std::size_t at = 0;
};

std::vector<LinkKey> link_keys(const std::string& text) {
    std::vector<LinkKey> keys;
    const std::size_t line = text.find("links = [{");
    const std::size_t end = text.find('\n', line);
    for (std::size_t at = text.find(" = ", line + 9); at < end; at = text.find(" = ", at + 3)) {
        std::size_t begin = at;
        while (std::isalnum(static_cast<unsigned char>(text[begin - 1])) != 0 ||
               text[begin - 1] == '_') {
            --begin;
        }
        const std::size_t value = at + 3;
        const std::size_t after =
            text[value] == '"' ? text.find('"', value + 1) + 1 : text.find_first_of(",}", value);
        if (text[value] != '[') {  // the keys within a list come by themselves
            keys.push_back(
                {text.substr(begin, at - begin), text.substr(value, after - value), value});
        }
    }
    return keys;
}

// The links of a circuit are one key to the listing: each key of each part, changed alone.
TEST(compare_keys, every_key_of_every_part_changed_alone_is_named_and_fires_its_row) {
    const std::string text(sample::every_key);
    const ReadScenario before = read();
    const auto keys = link_keys(text);
    int named = 0;
    for (const LinkKey& key : keys) {
        bool tried = false;
        for (const std::string& other : others_than(key.value)) {
            const auto after = scenario::read_scenario(
                text.substr(0, key.at) + other + text.substr(key.at + key.value.size()),
                "changed.toml");
            if (!after || other == key.value) {
                continue;
            }
            const auto changes = fitting::changes_between(before.scenario, after->scenario);
            const bool same_value =
                std::ranges::equal(scenario::listing(before), scenario::listing(*after),
                                   [](const auto& x, const auto& y) { return x.value == y.value; });
            if (same_value) {
                continue;
            }
            tried = true;
            ASSERT_EQ(changes.size(), 1U) << key.name << " = " << other;
            const bool within_opens =
                key.name == "current" || key.name == "least" || key.name == "most";
            EXPECT_NE(in_english(changes[0].words).find(within_opens ? "opens" : key.name), std::string::npos)
                << key.name << ": " << changes[0].words;
            EXPECT_FALSE(fitting::dirtied_by(changes[0]).empty()) << key.name;
            ++named;
            break;
        }
        EXPECT_TRUE(tried) << "no other value of " << key.name << " = " << key.value;
    }
    EXPECT_GE(named, 44);
    EXPECT_EQ(named, static_cast<int>(keys.size()));
    std::cout << "keys of parts changed alone: " << keys.size() << ", named: " << named << "\n";
}

// A verdict that moves lies among the checks that the table names.
TEST(compare_keys, a_verdict_moves_only_where_the_table_says) {
    auto base = read().scenario;
    base.place.weather_file.reset();
    const auto draws_of = [](const scenario::Scenario& scenario) {
        return questions::draws_of(scenario);
    };
    const auto old_draws = draws_of(base);
    ASSERT_TRUE(old_draws);
    const auto old_fit = fitting::quick_fit(base, *old_draws);
    ASSERT_TRUE(old_fit);
    int moved_anything = 0;
    for (const auto& key : scenario::listing(read())) {
        if (!key.given || of_no_weight.contains(key.key)) {
            continue;
        }
        auto after = changed(key);
        if (!after) {
            continue;
        }
        after->scenario.place.weather_file.reset();
        const auto draws = draws_of(after->scenario);
        const auto fit = draws ? fitting::quick_fit(after->scenario, *draws)
                               : units::Result<fitting::Fit>(tl::unexpected(draws.error()));
        if (!fit) {
            continue;  // a value that no unit can have beside the others
        }
        std::set<std::string> dirtied;
        for (const auto& change : fitting::changes_between(base, after->scenario)) {
            for (const auto& dirty : fitting::dirtied_by(change)) {
                dirtied.insert(dirty.check);
            }
        }
        for (const auto& moved : fitting::moved_verdicts(*old_fit, *fit)) {
            ++moved_anything;
            EXPECT_TRUE(dirtied.contains(moved.check) || !moved.after)
                << key.key << " moved " << moved.check << " of " << moved.circuit << ": "
                << moved.text;
        }
    }
    EXPECT_GT(moved_anything, 0);
}

}  // namespace
