#include "models/ask_question.hpp"

#include <optional>

#include <QMap>

#include "answers/answer_of.hpp"
#include "models/weather_choices.hpp"
#include "questions/found.hpp"
#include "scenario/set_aside.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

using questions::Asked;
using AskedOrWhyNot = units::Result<Asked>;

std::optional<int> whole(const QVariantMap& with, const QString& name) {
    return with.contains(name) ? std::optional(with.value(name).toInt()) : std::nullopt;
}

AskedOrWhyNot join_of(const QVariantMap& with) {
    questions::JoinAsked asked;
    if (const QString pack = with.value("pack").toString(); !pack.isEmpty())
        asked.pack = pack.toStdString();
    return asked;
}

AskedOrWhyNot gauge_of(const QVariantMap& with) {
    auto reads = scenario::read_voltage_shown(with.value("reads").toString().toStdString());
    if (!reads) return units::fail(reads.error());
    questions::GaugeAsked asked{.reads = *reads};
    const QString rested = with.value("rested").toString();
    if (rested.isEmpty()) return asked;
    const auto time = units::read<units::Duration>(rested.toStdString());
    if (!time) return units::fail(time.error());
    asked.rested = *time;
    return asked;
}

AskedOrWhyNot compare_of(const QVariantMap& with) {
    auto other = scenario::read_scenario_file(with.value("file").toString().toStdString());
    if (!other) return units::fail(other.error());
    scenario::set_aside(other->scenario);
    return questions::CompareAsked{.with = std::move(*other)};
}

const QMap<QString, AskedOrWhyNot (*)(const QVariantMap&)>& askers() {
    using With = const QVariantMap&;
    static const QMap<QString, AskedOrWhyNot (*)(With)> all{
        {"outage",
         [](With with) -> AskedOrWhyNot {
             return questions::OutageAsked{.members = whole(with, "members")};
         }},
        {"packs",
         [](With with) -> AskedOrWhyNot {
             return questions::PacksAsked{.members = whole(with, "members")};
         }},
        {"sun",
         [](With with) -> AskedOrWhyNot {
             return questions::SunAsked{.members = whole(with, "members")};
         }},
        {"join", join_of},
        {"gauge", gauge_of},
        {"storage", [](With) -> AskedOrWhyNot { return questions::StorageAsked{}; }},
        {"start", [](With) -> AskedOrWhyNot { return questions::StartAsked{}; }},
        {"wiring", [](With) -> AskedOrWhyNot { return questions::WiringAsked{}; }},
        {"compare", compare_of},
        {"read", [](With) -> AskedOrWhyNot { return questions::ReadAsked{}; }}};
    return all;
}

}  // namespace

bool is_question(const QString& name) {
    return askers().contains(name);
}

units::Result<Asked> asked_of(const QString& question, const QVariantMap& with) {
    return askers().value(question)(with);
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

AnswerView ask_question(const QString& question, const QString& text, const QVariantMap& with,
                        const QString& file, Watch* watch) {
    const auto asked = asked_of(question, with);
    return asked ? ask_question(*asked, text, file, watch) : no_answer(asked.error());
}

}  // namespace touch
