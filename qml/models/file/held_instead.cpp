#include "models/file/held_instead.hpp"

#include <algorithm>
#include <vector>

#include <QObject>
#include <QStringList>

#include "models/ask_question.hpp"
#include "models/words/told.hpp"

namespace touch {

namespace {

// As short as they can be asked: what they assume does not depend on how many members are run.
const std::vector<questions::Asked>& askings() {
    static const std::vector<questions::Asked> all{
        questions::OutageAsked{.members = 1},
        questions::StartAsked{},
        questions::StorageAsked{},
        questions::WiringAsked{},
        questions::JoinAsked{},
        questions::PacksAsked{.members = 4, .most_packs = 1, .most_panels = 0}};
    return all;
}

QString last_of(const QString& key) {
    return key.section(QLatin1Char('.'), -1);
}

// What is assumed after and was not before; of these those of the key itself, where there are any.
QString assumed(const QString& key, const answers::Answer& before, const answers::Answer& after) {
    QStringList of_key;
    QStringList of_others;
    for (const scenario::Assumption& assumption : after.assumptions) {
        if (std::ranges::find(before.assumptions, assumption) != before.assumptions.end()) continue;
        QString words = told(assumption.text);
        if (!assumption.source.empty())
            words += QStringLiteral(" (%1)").arg(told(assumption.source));
        const bool own = last_of(QString::fromStdString(assumption.where)) == last_of(key);
        QStringList& list = own ? of_key : of_others;
        if (!list.contains(words)) list << words;
    }
    return (of_key.isEmpty() ? of_others : of_key).join(QStringLiteral("; "));
}

// The first step of the working that rests on the key and comes out otherwise.
QString worked_out(const QString& key, const answers::Answer& before,
                   const answers::Answer& after) {
    for (const answers::WorkingRow& row : after.working) {
        if (row.source != words::Said(key.toStdString())) continue;
        const auto was =
            std::ranges::find_if(before.working, [&](const answers::WorkingRow& other) {
                return other.section == row.section && other.quantity == row.quantity;
            });
        if (was != before.working.end() && was->value.shown != row.value.shown)
            return QObject::tr("%1: %2 (worked out from the rest of the file)")
                .arg(told(row.quantity), told(row.value.shown));
    }
    return {};
}

}  // namespace

QString held_instead(const QString& key, const QString& before, const QString& after,
                     const QString& file) {
    QString worked;
    for (const questions::Asked& asked : askings()) {
        const auto was = ask_question(asked, before, file).answer;
        const auto is = ask_question(asked, after, file).answer;
        if (!was || !is) continue;
        const QString words = assumed(key, *was, *is);
        if (!words.isEmpty()) return words;
        if (worked.isEmpty()) worked = worked_out(key, *was, *is);
    }
    return worked;
}

}  // namespace touch
