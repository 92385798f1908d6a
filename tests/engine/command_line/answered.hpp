// What holds for every answer in JSON, whatever was asked.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace typed {

// Every number is finite, every quantity has its unit, and what is null says why.
inline void expect_sound(const nlohmann::json& answer) {
    for (const auto& [key, value] : answer.items()) {
        if (value.is_number()) {
            EXPECT_TRUE(std::isfinite(value.get<double>())) << key;
        }
        if (value.is_object() && value.contains("value")) {
            ASSERT_TRUE(value["value"].is_number()) << key;
            EXPECT_TRUE(std::isfinite(value["value"].get<double>())) << key;
            EXPECT_FALSE(value["unit"].get<std::string>().empty()) << key;
        }
        if (value.is_null()) {
            ASSERT_TRUE(answer.contains("why_null")) << key;
            EXPECT_FALSE(answer["why_null"].value(key, "").empty()) << key;
        }
    }
}

inline void expect_keys(const nlohmann::json& answer, const std::vector<std::string>& keys) {
    for (const auto& key : keys)
        EXPECT_TRUE(answer.contains(key)) << key;
}

// What comes beside every answer: what was found, worked with and assumed, and cautions.
inline void expect_whole(const nlohmann::json& document, const std::string& question) {
    EXPECT_EQ(document["candlemark"], 1);
    EXPECT_EQ(document["question"], question);
    expect_keys(document, {"answer", "findings", "working", "assumptions", "cautions", "series"});
    for (const auto& finding : document["findings"])
        expect_keys(finding, {"severity", "where", "text", "mend", "source"});
    EXPECT_FALSE(document["working"].empty());
    EXPECT_FALSE(document["cautions"].empty());
    expect_sound(document["answer"]);
}

}  // namespace typed
