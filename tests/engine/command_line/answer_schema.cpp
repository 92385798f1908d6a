// Every answer to every scenario that comes with the program is as its schema says.
#include "command_line/reference/answer_schema.hpp"

#include <filesystem>
#include <gmock/gmock.h>

#include "briefly.hpp"
#include <gtest/gtest.h>

#include "command_line/run.hpp"
#include "support/json_schema.hpp"

namespace {

namespace fs = std::filesystem;
using command_line::run;
using command_line::Status;
using json_schema::Json;

const json_schema::Schema& schema() {
    static const json_schema::Schema one(Json::parse(command_line::answer_schema()));
    return one;
}

std::vector<std::string> shipped() {
    std::vector<std::string> files;
    for (const auto& entry :
         fs::recursive_directory_iterator(fs::path(CANDLEMARK_SOURCE_DIR) / "scenarios"))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    return files;
}

class answers : public testing::TestWithParam<const char*> {};

TEST_P(answers, are_as_their_schema_says) {
    int answered = 0;
    for (const auto& file : shipped()) {
        std::string asked_of = file;
        if (std::string_view(GetParam()) == "note") {  // it writes into its file
            asked_of = fs::path(testing::TempDir()) / "noted.toml";
            fs::copy_file(file, asked_of, fs::copy_options::overwrite_existing);
        }
        std::vector<std::string> words{GetParam(), asked_of, "--as", "json"};
        for (const auto& option : briefly::options_of(GetParam(), shipped().front()))
            words.push_back(option);
        const auto outcome = run(words, {});
        EXPECT_NE(outcome.status, Status::defect) << file << outcome.errors;
        const auto json = Json::parse(outcome.output, nullptr, false);
        ASSERT_FALSE(json.is_discarded()) << file << outcome.output << outcome.errors;
        const bool refused = outcome.status == Status::unusable;
        answered += refused ? 0 : 1;
        EXPECT_THAT(refused ? schema().complaints("refusal", json) : schema().complaints(json),
                    testing::IsEmpty())
            << file;
    }
    EXPECT_GE(answered, 1);
}

INSTANTIATE_TEST_SUITE_P(to_each_question, answers, testing::ValuesIn(briefly::all_questions()),
                         [](const auto& info) { return std::string(info.param); });

TEST(answers, of_many_files_are_lines_of_the_schema) {
    auto files = shipped();
    files.push_back("/there/is/no/such.toml");
    std::vector<std::string> words{"start", "--as", "jsonl", "--quiet"};
    words.insert(words.end(), files.begin(), files.end());
    std::istringstream lines(run(words, {}).output);
    std::size_t seen = 0;
    for (std::string line; std::getline(lines, line); ++seen)
        EXPECT_THAT(schema().complaints("line", Json::parse(line)), testing::IsEmpty());
    EXPECT_EQ(seen, files.size());
}

TEST(answer_schema, complains_of_what_is_no_answer) {
    auto whole = Json::parse(run({"start", shipped().front(), "--as", "json"}, {}).output);
    EXPECT_THAT(schema().complaints(whole), testing::IsEmpty());
    auto without = whole;
    without["answer"].erase("loads");
    EXPECT_THAT(schema().complaints(without), testing::Contains("/answer: lacks loads"));
    auto other = whole;
    other["findings"] = Json::array({{{"severity", "dire"}}});
    EXPECT_THAT(schema().complaints(other), testing::Not(testing::IsEmpty()));
    whole["extra"] = 1;
    EXPECT_THAT(schema().complaints(whole), testing::Contains(": has extra"));
}

}  // namespace
