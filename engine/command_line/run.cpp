#include "command_line/run.hpp"

#include <exception>

#include "command_line/arguments.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "outage/weathers.hpp"
#include "report/csv.hpp"
#include "report/json.hpp"
#include "report/outage_answer.hpp"
#include "report/read_answer.hpp"
#include "report/text.hpp"
#include "scenario/read.hpp"

namespace command_line {

namespace {

using report::Answer;
using scenario::ReadScenario;
using units::Result;

// So many more packs are tried when the outage is not lasted through.
Outcome unusable(const units::Errors& errors) {
    Outcome outcome{.status = Status::unusable};
    for (const auto& error : errors) {
        outcome.errors += units::print(error) + "\n";
    }
    return outcome;
}

Result<scenario::Overrides> overrides_of(const std::vector<std::string>& set) {
    scenario::Overrides overrides;
    units::Errors errors;
    for (const auto& text : set) {
        if (auto override = scenario::read_override(text)) {
            overrides.push_back(std::move(*override));
        } else {
            errors.insert(errors.end(), override.error().begin(), override.error().end());
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return overrides;
}

Result<ReadScenario> scenario_of(const Request& request, const Surroundings& around) {
    auto overrides = overrides_of(request.set);
    if (!overrides) {
        return units::fail(std::move(overrides.error()));
    }
    if (request.file == "-") {
        auto bytes = around.standard_input();
        if (!bytes) {
            return units::fail(std::move(bytes.error()));
        }
        return scenario::read_scenario(*bytes, "standard input", std::move(*overrides));
    }
    return scenario::read_scenario_file(request.file, std::move(*overrides));
}

// Where an error has no file of its own, it is about the file that was asked of.
units::Errors with_file(units::Errors errors, const std::string& file) {
    for (auto& error : errors) {
        if (error.file.empty()) {
            error.file = file;
        }
    }
    return errors;
}

// Enough for a chance within 7 points, where they take no longer than a reader notices.
int usual_weathers(const outage::Ready& ready) {
    return ready.sky && ready.outage.lasts <= 10.0 * units::day ? 200 : 0;
}

Result<Answer> answer_outage(const ReadScenario& read, const Request& request) {
    const auto ready = outage::make_ready(read.scenario);
    if (!ready) {
        return units::fail(with_file(ready.error(), read.file_name));
    }
    const auto plan = outage::plan_outage(*ready);
    std::optional<report::Chances> chances;
    const int weathers = request.weathers.value_or(usual_weathers(*ready));
    if (weathers > 0) {
        chances = report::chances_of(outage::endings_in_weathers(*ready, weathers, request.seed));
    }
    return report::outage_answer(read.scenario, plan, plan.more_packs, chances);
}

Result<Answer> answer_read(const ReadScenario& read) {
    const auto plan = outage::plan_outage(read.scenario);
    return report::read_answer(read, plan ? plan->loads : std::vector<outage::LoadUse>{});
}

std::string in_face(const Answer& answer, const Request& request, const Surroundings& around) {
    switch (request.face) {
        case Face::json:
            return report::in_json(answer);
        case Face::csv:
            return report::in_csv(answer);
        case Face::text:
            break;
    }
    return report::in_text(answer, {.width = around.columns,
                                    .ascii = request.ascii || !around.utf8,
                                    .colour = around.colour,
                                    .full = request.full});
}

// Warnings are findings of `read`; elsewhere they must not be lost either.
std::string warnings_of(const ReadScenario& read) {
    std::string text;
    for (const auto& warning : read.warnings) {
        text += "warning: " + units::print(warning) + "\n";
    }
    return text;
}

Outcome answer(const Request& request, const Surroundings& around) {
    const auto read = scenario_of(request, around);
    if (!read) {
        return unusable(read.error());
    }
    const bool asks_what_was_read = request.question == Question::read;
    const auto answer = asks_what_was_read ? answer_read(*read) : answer_outage(*read, request);
    if (!answer) {
        return unusable(answer.error());
    }
    Outcome outcome{.status = report::holds_a_stop(*answer) ? Status::stop : Status::answered,
                    .output = in_face(*answer, request, around),
                    .errors = asks_what_was_read ? "" : warnings_of(*read)};
    if (answer->defect) {
        outcome.status = Status::defect;
        outcome.errors += "candlemark: " + *answer->defect + ".\n";
    }
    return outcome;
}

}  // namespace

Outcome run(const std::vector<std::string>& arguments, const Surroundings& around) {
    try {
        const auto asked = read_arguments(arguments);
        if (const auto* notice = std::get_if<Notice>(&asked)) {
            return notice->is_error ? Outcome{.status = Status::unusable, .errors = notice->text}
                                    : Outcome{.output = notice->text};
        }
        return answer(std::get<Request>(asked), around);
    } catch (const std::exception& exception) {
        return {.status = Status::defect,
                .errors = std::string("candlemark: a fault of this program: ") + exception.what() +
                          ". Please report it with the scenario.\n"};
    }
}

}  // namespace command_line
