#include "models/ask_question.hpp"

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "command_line/arguments.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "models/weather_choices.hpp"
#include "scenario/read.hpp"

namespace touch {

namespace {

AnswerView answer_to(const command_line::Request& request, const QString& text, const QString& file,
                     const Watch* watch) {
    auto overrides = command_line::overrides_of(request.set);
    if (!overrides) return no_answer(overrides.error());
    const auto read = read_shown(text, file, std::move(*overrides));
    if (!read) return no_answer(read.error());
    auto answer = request.question->ask(*read, request);
    if (!answer) {
        auto view = no_answer(answer.error());
        view.stopped = watch && watch->stop;
        return view;
    }
    return answer_view_of(std::move(*answer), read->warnings);
}

}  // namespace

bool is_question(const QString& name) {
    return std::ranges::any_of(command_line::questions(), [&name](const auto& question) {
        return name == QLatin1String(question.name);
    });
}

AnswerView ask_question(const QString& question, const QString& text, const QStringList& options,
                        const QString& file, Watch* watch) {
    // The file is the text on the screen: "-" only stands in its place.
    std::vector<std::string> arguments{question.toStdString(), "-"};
    for (const QString& option : options)
        arguments.push_back(option.toStdString());
    const auto asked = command_line::read_arguments(arguments);
    if (const auto* notice = std::get_if<command_line::Notice>(&asked)) {
        return no_answer({{.where = question.toStdString(), .found = notice->text, .remedy = ""}});
    }
    auto request = std::get<command_line::Request>(asked);
    if (watch)
        request.progress = [watch](double share) {
            watch->done = share;
            return !watch->stop;
        };
    return answer_to(request, text, file, watch);
}

}  // namespace touch
