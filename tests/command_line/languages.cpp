// Every language says all that the program can say, and nothing else.
#include <gmock/gmock.h>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "process.hpp"
#include <gtest/gtest.h>

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

struct Sayings {
    int all = 0;
    std::vector<std::string> missing;  // their English, in quotes
    std::vector<std::string> wrong;    // orphans and faults
};

Sayings sayings_of(const std::string& text) {
    Sayings found;
    std::istringstream lines(text);
    std::string english;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("english = ")) {
            ++found.all;
            english = line.substr(10);
        }
        if (line == R"(as = "")" || line == R"(as = ["", ""])") found.missing.push_back(english);
        if (line.starts_with("# ")) found.wrong.push_back(line);
    }
    return found;
}

class EachLanguage : public testing::TestWithParam<const char*> {};

TEST_P(EachLanguage, SaysNothingThatNobodySaysAndNothingFaulty) {
    const auto ended = process::candlemark({"sayings", "--language", GetParam()});
    ASSERT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(sayings_of(ended.output).wrong, IsEmpty());
}

TEST_P(EachLanguage, SaysAllThatTheProgramSays) {
    const auto said = sayings_of(process::candlemark({"sayings", "--language", GetParam()}).output);
    EXPECT_GT(said.all, 3000);
    EXPECT_THAT(said.missing, IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(Languages, EachLanguage, testing::Values("de", "es"));

TEST(Languages, AnEmptyCatalogueHasEverySayingToFillIn) {
    const auto empty = sayings_of(process::candlemark({"sayings"}).output);
    EXPECT_GT(empty.all, 0);
    EXPECT_EQ(static_cast<int>(empty.missing.size()), empty.all);
}

TEST(Languages, AnUnknownCodeIsRefusedWithThoseThereAre) {
    const auto ended = process::candlemark({"read", "-", "--language", "xx"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("en, de"));
}

// A folder that is not there is refused before the file is read, in words of the catalogue.
TEST(Languages, TheOptionGoesBeforeTheLocaleAndThatBeforeEnglish) {
    const auto errors = [](std::vector<std::string> words,
                           const std::map<std::string, std::string>& environment) {
        words.insert(words.begin(), {"read", "-", "--weather-from", "/no/such/folder"});
        return process::candlemark(words, "", environment).errors;
    };
    const auto by_option = errors({"--language", "de"}, {});
    const auto by_locale = errors({}, {{"LANG", "de_AT.UTF-8"}});
    const auto over_locale = errors({"--language", "en"}, {{"LC_ALL", "de_DE.UTF-8"}});
    const auto unknown_locale = errors({}, {{"LANG", "xx_XX.UTF-8"}});
    EXPECT_EQ(by_option, by_locale);
    EXPECT_THAT(by_option, HasSubstr("es gibt keinen Ordner"));
    EXPECT_THAT(over_locale, HasSubstr("there is no folder"));
    EXPECT_EQ(over_locale, unknown_locale);
    EXPECT_EQ(over_locale, errors({}, {}));
}

}  // namespace
