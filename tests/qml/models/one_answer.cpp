// The command and the touch program give one and the same answer to one question.
#include <QDir>
#include <gtest/gtest.h>

#include "command_line/arguments.hpp"
#include "command_line/questions.hpp"
#include "faces/json.hpp"
#include "models/answer_view.hpp"
#include "models/ask_question.hpp"
#include "questions/found.hpp"

namespace {

struct Pair {
    std::vector<std::string> typed;  // the question, then its options; FILE goes behind the first
    touch::Asks touched;
};

std::string text_of_file(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll().toStdString();
}

// All of it but the cautions of reading, which the command prints beside the answer.
std::string by_command(const std::string& text, const std::string& file, const Pair& pair) {
    auto arguments = pair.typed;
    arguments.insert(arguments.begin() + 1, "-");
    const auto request = std::get<command_line::Request>(command_line::read_arguments(arguments));
    const auto read = scenario::read_scenario(text, file);
    if (!read) return "not read";
    const auto answer = command_line::answer_to(*read, request);
    return answer ? faces::in_json(*answer, {}) : faces::in_json("", answer.error());
}

std::string by_screen(const std::string& text, const std::string& file, const Pair& pair) {
    const auto view = touch::ask_question(QString::fromStdString(pair.typed.front()),
                                          QString::fromStdString(text), pair.touched,
                                          QString::fromStdString(file));
    if (view.answer) return faces::in_json(*view.answer, {});
    const auto asked = touch::asked_of(QString::fromStdString(pair.typed.front()), pair.touched);
    const auto read = scenario::read_scenario(text, file);
    const auto found = questions::find(*read, *asked, questions::How{});
    return found ? "the screen refused" : faces::in_json("", found.error());
}

TEST(one_answer, of_the_command_and_the_screen_for_every_scenario_and_question) {
    const std::vector<Pair> pairs{{{"outage", "--members", "64"}, {.members = 64}},
                                  {{"packs", "--members", "64"}, {.members = 64}},
                                  {{"sun", "--members", "64"}, {.members = 64}},
                                  {{"join"}, {}},
                                  {{"gauge", "--reads", "12.9 V", "--rested", "8 h"},
                                   {.reads = "12.9 V", .rested_hours = 8.0}},
                                  {{"storage"}, {}},
                                  {{"start"}, {}},
                                  {{"wiring"}, {}},
                                  {{"read"}, {}}};
    const QDir scenarios(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios"));
    const QStringList files = scenarios.entryList({"*.toml"}, QDir::Files);
    ASSERT_GE(files.size(), 5);
    for (const QString& name : files) {
        const auto path = scenarios.filePath(name);
        const auto text = text_of_file(path);
        for (const Pair& pair : pairs)
            EXPECT_EQ(by_screen(text, path.toStdString(), pair),
                      by_command(text, path.toStdString(), pair))
                << name.toStdString() << " " << pair.typed.front();
    }
}

}  // namespace
