// Every key of the format at its limits, one beyond and at values of no sense, through every
// question: an answer or a refusal in words, never a fault of the program.
#include <algorithm>
#include <cstdlib>
#include <random>

#include "asked.hpp"
#include <gtest/gtest.h>

namespace {

using namespace key_trials;

std::string told(const Base& base, const std::vector<Trial>& values, const Asked& asked) {
    std::string text = std::string(base.name) + ", " + asked.question;
    for (const Trial& trial : values) {
        text += ", " + trial.key + " = " + trial.value.substr(0, 120);
    }
    return text + ": " + std::to_string(asked.status) + ": " + asked.errors.substr(0, 600);
}

// "pack.main.capacity" gives "capacity".
std::string last_name(const std::string& key) {
    return key.substr(key.rfind('.') + 1);
}

bool says(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

// "pack.main.capacity" gives "pack".
std::string table_name(const std::string& key) {
    return key.substr(0, key.find('.'));
}

// A value that its key allows may still not suit another key; then that one is named.
bool names_another_key(const std::string& errors, const Trial& trial) {
    static const std::vector<std::string> names = [] {
        std::vector<std::string> all;
        for (const Trial& one : all_trials()) {
            all.push_back(last_name(one.key));
        }
        std::ranges::sort(all);
        all.erase(std::ranges::unique(all).begin(), all.end());
        return all;
    }();
    return std::ranges::any_of(names, [&](const std::string& name) {
        return name != last_name(trial.key) && says(errors, name);
    });
}

// Questions that take a second or more are asked in turn, each at every so many-th value; all of
// them at all values where CANDLEMARK_EVERY_QUESTION is set.
int in_turn(const std::string& question) {
    static const bool all = std::getenv("CANDLEMARK_EVERY_QUESTION") != nullptr;
    if (all) return 1;
    if (question == "wiring") return 16;
    if (question == "outage" || question == "now") return 2;
    return question == "packs" || question == "sun" || question == "compare" ? 8 : 1;
}

//   number   of the value, so that questions take turns
void ask_all(const Base& base, const std::vector<Trial>& values, int number = 0) {
    int turn = number;
    for (const auto& question : questions(Options::few)) {
        if (turn++ % in_turn(question.front()) != 0) continue;
        const Asked asked = ask(question, base, values);
        EXPECT_LT(asked.status, 3) << told(base, values, asked);
        // Options of the question itself are not the key's.
        if (asked.status == 2 && values.size() == 1 && !asked.errors.starts_with("--")) {
            EXPECT_TRUE(names_another_key(asked.errors, values.front()) &&
                        says(asked.errors, table_name(values.front().key)) &&
                        says(asked.errors, ";"))
                << "refused within its limits: " << told(base, values, asked);
        }
    }
}

void try_within(const Base& base, int share, int shares) {
    int number = 0;
    for (const Trial& trial : all_trials()) {
        const bool within = trial.kind == Kind::within || trial.kind == Kind::crowded;
        if (!within || number++ % shares != share) {
            continue;
        }
        const std::string refused = refusal_of(base, {trial});
        if (refused.empty()) {
            ask_all(base, {trial}, number);
        } else if (trial.kind == Kind::within) {
            EXPECT_TRUE(names_another_key(refused, trial) && says(refused, ";"))
                << "refused within its limits: " << trial.key << " = " << trial.value << ": "
                << refused;
        }
    }
}

TEST(KeyLimits, every_table_of_the_format_is_tried) {
    EXPECT_EQ(tables_not_walked(), std::vector<std::string>{});
    EXPECT_GT(all_trials().size(), 1000U);
}

TEST(KeyLimits, the_bases_themselves_are_answered) {
    for (const Base& base : bases()) {
        EXPECT_EQ(refusal_of(base, {}), "");
        for (const auto& question : questions(Options::few)) {
            const Asked asked = ask(question, base, {});
            EXPECT_LT(asked.status, 2) << told(base, {}, asked);
        }
    }
}

// In shares, so that they can run side by side.
constexpr int shares = 16;
class EveryKey : public testing::TestWithParam<int> {};
INSTANTIATE_TEST_SUITE_P(Share, EveryKey, testing::Range(0, shares));

TEST_P(EveryKey, answers_for_a_lithium_unit_at_its_limits) {
    try_within(bases()[0], GetParam(), shares);
}

// Packs that differ take several times as long, so an eighth of the trials stands for all.
TEST_P(EveryKey, answers_for_a_lead_unit_at_its_limits) {
    try_within(bases()[1], GetParam(), 8 * shares);
}

TEST(KeyLimits, one_beyond_is_refused_with_key_limit_and_remedy) {
    for (const Trial& trial : all_trials()) {
        if (trial.kind != Kind::beyond) {
            continue;
        }
        const std::string refused = refusal_of(bases().front(), {trial});
        EXPECT_TRUE(says(refused, last_name(trial.key)) && says(refused, ";"))
            << trial.key << " = " << trial.value.substr(0, 120) << ": " << refused;
    }
}

TEST(KeyLimits, what_makes_no_sense_is_refused_in_words_or_taken) {
    for (const Trial& trial : all_trials()) {
        if (trial.kind != Kind::odd) {
            continue;
        }
        const std::string refused = refusal_of(bases().front(), {trial});
        if (!refused.empty()) {
            EXPECT_TRUE(says(refused, last_name(trial.key)) && says(refused, ";"))
                << trial.key << " = " << trial.value << ": " << refused;
            continue;
        }
        // What is taken is a value within the limits; the others try those.
        const Asked asked = ask(questions(Options::few).front(), bases().front(), {trial});
        EXPECT_LT(asked.status, 3) << told(bases().front(), {trial}, asked);
    }
}

// Two and three keys at once, drawn the same way each time.
TEST(KeyLimits, several_keys_at_their_limits_are_answered_or_refused) {
    std::vector<Trial> within = all_trials();
    std::erase_if(within, [](const Trial& trial) { return trial.kind != Kind::within; });
    std::mt19937 random(20261128);
    for (int drawn = 0; drawn < 40; ++drawn) {
        const Base& base = bases()[static_cast<std::size_t>(drawn) % bases().size()];
        std::vector<Trial> values;
        for (int i = 0; i < 2 + drawn % 3; ++i) {
            const Trial& trial = within[random() % within.size()];
            const bool again =
                std::ranges::any_of(values, [&](const Trial& one) { return one.key == trial.key; });
            if (!again) {
                values.push_back(trial);
            }
        }
        if (refusal_of(base, values).empty()) {
            ask_all(base, values, drawn);
        }
    }
}

}  // namespace
