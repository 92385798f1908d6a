// What holds for every scenario file, read, printed and changed in place.
#include <algorithm>
#include <random>

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/print.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"
#include "scenario/keys/listing.hpp"

namespace {

// Where single values stand in the file, by their keys.
void collect(const scenario::Node& node, const std::string& path,
             std::vector<std::pair<std::string, scenario::Node>>& values) {
    using Kind = scenario::Node::Kind;
    for (const scenario::Entry& entry : node.entries) {
        collect(entry.value, path.empty() ? entry.key : path + '.' + entry.key, values);
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        collect(node.items[i], path + '[' + std::to_string(i) + ']', values);
    }
    if (node.kind != Kind::table && node.kind != Kind::list) {
        values.emplace_back(path, node);
    }
}

std::vector<std::pair<std::string, scenario::Node>> values_of(std::string_view text) {
    std::vector<std::pair<std::string, scenario::Node>> values;
    const auto document = scenario::read_document(text, "");
    RC_ASSERT(document.has_value());
    collect(*document, "", values);
    return values;
}

std::string_view any_sample() {
    return *rc::gen::element(sample::ice_storm, sample::every_key);
}

TEST(scenario_text, saving_a_value_keeps_every_other_byte) {
    EXPECT_TRUE(rc::check([] {
        const std::string_view text = any_sample();
        const auto values = values_of(text);
        const auto& [key, node] = values[*rc::gen::inRange<std::size_t>(0, values.size())];
        const std::string value =
            *rc::gen::container<std::string>(rc::gen::inRange<char>(' ', '~'));
        RC_PRE(value.find_first_not_of(' ') != std::string::npos);
        const auto saved = scenario::with_value(text, key, value);
        RC_ASSERT(saved.has_value());
        const std::string_view before = text.substr(0, node.begin);
        const std::string_view after = text.substr(node.end);
        RC_ASSERT(std::string_view(*saved).starts_with(before));
        RC_ASSERT(std::string_view(*saved).ends_with(after));
        // And no other value is read differently.
        const auto values_after = values_of(*saved);
        for (const auto& [other_key, other] : values) {
            const auto found = std::ranges::find(values_after, other_key,
                                                 [](const auto& pair) { return pair.first; });
            if (other_key != key) {
                RC_ASSERT(found != values_after.end());
                RC_ASSERT(found->second.text == other.text);
            }
        }
    }));
}

TEST(scenario_text, a_value_put_in_is_the_value_read_back) {
    EXPECT_TRUE(rc::check([] {
        const std::string_view text = any_sample();
        const std::string value =
            *rc::gen::container<std::string>(rc::gen::inRange<char>(' ', '~'));
        RC_PRE(value.find_first_not_of(' ') != std::string::npos);
        RC_PRE(value.front() != '"' && value.front() != '\'' && value.front() != '[' &&
               value.front() != '{' && value.front() != ' ');
        const auto saved = scenario::with_value(text, "title", value);
        RC_ASSERT(saved.has_value());
        RC_ASSERT(scenario::read_document(*saved, "")->find("title")->text == value);
    }));
}

TEST(scenario_text, what_is_added_and_taken_out_again_leaves_the_file_as_it_was) {
    EXPECT_TRUE(rc::check([] {
        const std::string_view text = any_sample();
        const auto key = *rc::gen::element<std::string>("outage.new", "title_new", "pack.main.new",
                                                        "load[1].new", "inverter.new", "goal.new",
                                                        "circuit[0].links[0].new", "load[0].new");
        const auto with =
            scenario::with_value(text, key, std::to_string(*rc::gen::inRange(-1000, 1000)));
        RC_ASSERT(with.has_value());
        const auto without = scenario::without_value(*with, key);
        RC_ASSERT(without.has_value());
        RC_ASSERT(*without == text);
    }));
}

TEST(scenario_text, what_is_printed_reads_back_to_the_same_values) {
    EXPECT_TRUE(rc::check([] {
        // Values of every kind drawn anew, put into a file that uses every key.
        std::string text(sample::every_key);
        const auto put = [&](std::string_view key, double least, double most,
                             std::string_view unit) {
            const double share = *rc::gen::inRange(0, 1'000'000) / 1e6;
            text = *scenario::with_value(
                text, key,
                std::to_string(least + share * (most - least)) + " " + std::string(unit));
        };
        put("outage.lasts", 0.1, 60.0, "d");
        // Such as its two_well and tested_capacity allow.
        put("pack.main.capacity", 80.0, 130.0, "Ah");
        put("pack.main.charge", 0.0, 100.0, "%");
        put("pack.main.resistance", 0.1, 900.0, "mohm");
        put("pack.main.two_well.k", 0.01, 900.0, "1/h");
        put("pack.main.weight", 0.1, 900.0, "lb");
        put("outage.battery_temperature", -40.0, 120.0, "degF");
        put("place.latitude", -90.0, 90.0, "deg");
        put("place.longitude", -180.0, 180.0, "deg");
        put("place.irradiation[3]", 0.0, 15.0, "kWh/m^2/d");
        put("place.sunshine[3]", 0.0, 24.0, "h/d");
        put("place.temperature_range[3]", 0.0, 60.0, "K");
        put("inverter.continuous_apparent", 10.0, 9000.0, "VA");
        put("inverter.cutoff_delay", 0.0, 60.0, "min");
        put("load.deep freezer.label", 1.0, 9000.0, "kWh/yr");
        put("load.pump.motor.horsepower", 0.1, 50.0, "hp");
        put("panel.power_lost_per_kelvin", 0.0, 5.0, "%");
        put("storage.drain", 0.0, 999.0, "mA");
        const auto first = scenario::read_scenario(text, "plan.toml");
        RC_ASSERT(first.has_value());
        const std::string printed = scenario::print(first->scenario);
        const auto second = scenario::read_scenario(printed, "printed.toml");
        RC_ASSERT(second.has_value());
        // Printing is exact, so equal print means equal values.
        RC_ASSERT(scenario::print(second->scenario) == printed);
        RC_ASSERT(second->scenario.outage.lasts == first->scenario.outage.lasts);
        RC_ASSERT(second->scenario.packs[0].capacity == first->scenario.packs[0].capacity);
        RC_ASSERT(second->scenario.packs[0].charge == first->scenario.packs[0].charge);
        RC_ASSERT(second->scenario.packs[0].weight == first->scenario.packs[0].weight);
        RC_ASSERT(second->scenario.packs[0].two_well->rate ==
                  first->scenario.packs[0].two_well->rate);
        RC_ASSERT(second->scenario.outage.battery_temperature ==
                  first->scenario.outage.battery_temperature);
        RC_ASSERT(second->scenario.place.irradiation == first->scenario.place.irradiation);
        RC_ASSERT(second->scenario.place.sunshine == first->scenario.place.sunshine);
        RC_ASSERT(second->scenario.loads[1].motor->horsepower ==
                  first->scenario.loads[1].motor->horsepower);
        RC_ASSERT(second->scenario.panels[0].power_lost_per_kelvin ==
                  first->scenario.panels[0].power_lost_per_kelvin);
    }));
}

// One small change of the kind a hand or a bad disk makes.
std::string mutated(std::string text, std::mt19937& random) {
    const auto below = [&](std::size_t limit) { return limit == 0 ? 0 : random() % limit; };
    const int changes = 1 + static_cast<int>(below(2));
    constexpr std::string_view telling = "\"'[]{}=.,#\n\r\t\\-+_0123456789eE:TZ %é\xFF";
    for (int i = 0; i < changes && !text.empty(); ++i) {
        const std::size_t at = below(text.size());
        const std::size_t length = std::min(below(20), text.size() - at);
        switch (below(5)) {
            case 0:
                text.erase(at, length);
                break;
            case 1:
                text.insert(at, 1, telling[below(telling.size())]);
                break;
            case 2:
                text[at] = static_cast<char>(below(256));
                break;
            case 3:
                text.insert(below(text.size()), text.substr(at, length));
                break;
            default:
                text[at] = telling[below(telling.size())];
                break;
        }
    }
    return text;
}

TEST(scenario_text, ten_thousand_damaged_files_are_read_or_refused_in_words) {
    std::mt19937 random(20260114);
    int read = 0;
    for (int i = 0; i < 10'000; ++i) {
        const std::string text =
            mutated(std::string(i % 2 == 0 ? sample::ice_storm : sample::every_key), random);
        const auto result = scenario::read_scenario(text, "plan.toml");
        if (result) {
            ++read;
            const auto again =
                scenario::read_scenario(scenario::print(result->scenario), "printed.toml");
            ASSERT_TRUE(again.has_value())
                << text << "\nprinted as\n"
                << scenario::print(result->scenario) << testing::PrintToString(again.error());
            ASSERT_FALSE(scenario::listing(*result).empty());
        } else {
            for (const units::Error& error : result.error()) {
                ASSERT_FALSE(error.found.empty());
                ASSERT_FALSE(error.remedy.empty());
                ASSERT_EQ(error.file, "plan.toml");
            }
        }
    }
    // Both happen, or the damage was of the wrong size to show anything.
    EXPECT_GT(read, 500);
    EXPECT_LT(read, 9000);
}

TEST(scenario_text, any_bytes_at_all_are_refused_in_words) {
    EXPECT_TRUE(rc::check([](const std::string& bytes) {
        const auto result = scenario::read_scenario(bytes, "plan.toml");
        RC_ASSERT(!result.has_value());
        RC_ASSERT(!result.error().front().remedy.empty());
    }));
}

TEST(scenario_text, any_key_and_value_are_set_or_refused) {
    EXPECT_TRUE(rc::check([](const std::string& key, const std::string& value) {
        const auto saved = scenario::with_value(sample::ice_storm, key, value);
        RC_ASSERT(!saved.has_value() || scenario::read_document(*saved, "").has_value());
    }));
}

}  // namespace
