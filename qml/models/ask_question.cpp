#include "models/ask_question.hpp"

#include <optional>

#include <QMap>

#include "answers/answer_of.hpp"
#include "models/fields/weather_choices.hpp"
#include "questions/found.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/clock.hpp"

namespace touch {

namespace {

using questions::Asked;
using AskedOrWhyNot = units::Result<Asked>;

std::optional<int> members_of(const Asks& asks) {
    return asks.members > 0 ? std::optional(asks.members) : std::nullopt;
}

AskedOrWhyNot join_of(const Asks& asks) {
    questions::JoinAsked asked;
    if (!asks.pack.isEmpty()) asked.pack = asks.pack.toStdString();
    return asked;
}

AskedOrWhyNot gauge_of(const Asks& asks) {
    auto reads = scenario::read_voltage_shown(asks.reads.toStdString());
    if (!reads) return units::fail(reads.error());
    questions::GaugeAsked asked{.reads = *reads};
    if (asks.rested_hours > 0.0) asked.rested = asks.rested_hours * units::hour;
    return asked;
}

AskedOrWhyNot now_of(const Asks& asks) {
    const auto at = units::read_local_time(asks.at.toStdString());
    if (!at) return units::fail(at.error());
    return questions::NowAsked{.at = *at};
}

AskedOrWhyNot compare_of(const Asks& asks) {
    auto other = scenario::read_scenario_file(asks.other_file.toStdString());
    if (!other) return units::fail(other.error());
    scenario::set_aside(other->scenario);
    return questions::CompareAsked{.with = std::move(*other)};
}

const QMap<QString, AskedOrWhyNot (*)(const Asks&)>& askers() {
    static const QMap<QString, AskedOrWhyNot (*)(const Asks&)> all{
        {"outage",
         [](const Asks& asks) -> AskedOrWhyNot {
             return questions::OutageAsked{.members = members_of(asks)};
         }},
        {"packs",
         [](const Asks& asks) -> AskedOrWhyNot {
             return questions::PacksAsked{.members = members_of(asks)};
         }},
        {"sun",
         [](const Asks& asks) -> AskedOrWhyNot {
             return questions::SunAsked{.members = members_of(asks)};
         }},
        {"join", join_of},
        {"gauge", gauge_of},
        {"now", now_of},
        {"storage", [](const Asks&) -> AskedOrWhyNot { return questions::StorageAsked{}; }},
        {"start", [](const Asks&) -> AskedOrWhyNot { return questions::StartAsked{}; }},
        {"wiring", [](const Asks&) -> AskedOrWhyNot { return questions::WiringAsked{}; }},
        {"compare", compare_of},
        {"read", [](const Asks&) -> AskedOrWhyNot { return questions::ReadAsked{}; }}};
    return all;
}

}  // namespace

bool is_question(const QString& name) {
    return askers().contains(name);
}

units::Result<Asked> asked_of(const QString& question, const Asks& asks) {
    return askers().value(question)(asks);
}

AnswerView ask_question(const Asked& asked, const QString& text, const QString& file,
                        Watch* watch) {
    const auto read = read_shown(text, file);
    if (!read) return no_answer(read.error());
    questions::How how;
    if (watch)
        how.progress = [watch](double share) {
            watch->done = share;
            return !watch->stop;
        };
    const auto found = questions::find(*read, asked, how);
    if (found) return answer_view_of(answers::answer_of(*found), read->warnings);
    auto view = no_answer(found.error());
    view.stopped = watch && watch->stop;
    return view;
}

AnswerView ask_question(const QString& question, const QString& text, const Asks& asks,
                        const QString& file, Watch* watch) {
    const auto asked = asked_of(question, asks);
    return asked ? ask_question(*asked, text, file, watch) : no_answer(asked.error());
}

}  // namespace touch
