#include "models/fields/loads_model.hpp"

#include <algorithm>

#include "models/fields/new_load.hpp"
#include "models/words/shown_amount.hpp"
#include "motor/appliances/appliances.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"

namespace touch {

namespace {

QString draw_of(const scenario::Load& load) {
    if (!load.draw) return load.like ? QObject::tr("as %1").arg(words_of(*load.like)) : QString();
    if (const auto* power = std::get_if<scenario::StatedPower>(&*load.draw))
        return shown(power->power);
    if (const auto* metered = std::get_if<scenario::MeteredUse>(&*load.draw)) {
        return QObject::tr("%1 in %2").arg(shown(metered->energy), shown(metered->over));
    }
    if (const auto* label = std::get_if<scenario::YearlyLabel>(&*load.draw))
        return QObject::tr("%1 on average").arg(shown(label->average));
    const auto& plate = std::get<scenario::Nameplate>(*load.draw);
    return QObject::tr("%1, %2").arg(shown(plate.voltage), shown(plate.current));
}

QString evidence_of(const scenario::Load& load) {
    const bool metered = load.draw && std::holds_alternative<scenario::MeteredUse>(*load.draw);
    const bool label = load.draw && (std::holds_alternative<scenario::YearlyLabel>(*load.draw) ||
                                     std::holds_alternative<scenario::Nameplate>(*load.draw));
    const scenario::Evidence holds = load.evidence.value_or(metered ? scenario::Evidence::metered
                                                            : label ? scenario::Evidence::label
                                                                    : scenario::Evidence::guess);
    switch (holds) {
        case scenario::Evidence::metered:
            return told(words::said<"metered">());
        case scenario::Evidence::label:
            return told(words::said<"from a label">());
        case scenario::Evidence::guess:
            break;
    }
    return told(words::said<"a guess">());
}

}  // namespace

LoadText load_text(const scenario::Load& load) {
    QStringList parts{draw_of(load)};
    if (load.count > 1) parts[0] = QObject::tr("%1 of %2").arg(load.count).arg(parts[0]);
    if (load.runs) {
        parts << QObject::tr("%1 of every %2").arg(shown(load.runs->on), shown(load.runs->every));
    }
    for (const units::DailySpan& span : load.hours)
        parts << words_of(units::print(span));
    parts.removeAll(QString());
    return {.name = words_of(load.name),
            .draw = parts.join(QStringLiteral(", ")),
            .evidence = evidence_of(load)};
}

bool LoadsModel::remove(int number) {
    if (!document_) return false;
    const std::string entry = "load[" + std::to_string(number) + "]";
    return document_
        ->change([&entry](const std::string& text) { return scenario::without_table(text, entry); })
        .isEmpty();
}

int LoadsModel::addLike(const QString& appliance) {
    const auto found = motor::find_appliance(appliance.toStdString());
    if (!found) return -1;
    scenario::Load load = load_like(*found);
    load.name = told(motor::name_in_words(*found)).toStdString();
    return add(std::move(load));
}

int LoadsModel::addOwn() {
    return add({.name = tr("something else").toStdString(),
                .draw = scenario::StatedPower{.power = 60.0 * units::watt},
                .evidence = scenario::Evidence::guess});
}

int LoadsModel::add(scenario::Load load) {
    if (!document_) return -1;
    load.name = unused_name(words_of(load.name)).toStdString();
    const QString trouble =
        document_->change([&load](const std::string& text) { return with_load(text, load); });
    return trouble.isEmpty() ? count() - 1 : -1;
}

QString LoadsModel::unused_name(const QString& wanted) const {
    const auto taken = [this](const QString& name) {
        return std::ranges::any_of(loads_,
                                   [&name](const LoadText& load) { return load.name == name; });
    };
    QString name = wanted;
    for (int number = 2; taken(name); ++number)
        name = QStringLiteral("%1 %2").arg(wanted).arg(number);
    return name;
}

void LoadsModel::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &LoadsModel::read);
    emit askedChanged();
    read();
}

void LoadsModel::set_plan(PlanRunner* plan) {
    if (plan_ == plan) return;
    if (plan_) plan_->disconnect(this);
    plan_ = plan;
    if (plan_) connect(plan_, &PlanRunner::planned, this, &LoadsModel::refresh);
    emit askedChanged();
    refresh();
}

void LoadsModel::read() {
    if (!document_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // the rows stay as they were until the text can be read again
    QList<LoadText> loads;
    for (const scenario::Load& load : read->scenario.loads)
        loads.append(load_text(load));
    if (loads.size() == loads_.size()) {
        loads_ = std::move(loads);
        refresh();
        return;
    }
    beginResetModel();
    loads_ = std::move(loads);
    endResetModel();
    emit countChanged();
}

void LoadsModel::refresh() {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1));
}

const LoadUseText* LoadsModel::use_of(int row) const {
    if (!plan_) return nullptr;
    const auto& uses = plan_->uses();
    const auto found = std::ranges::find(uses, loads_[row].name, &LoadUseText::name);
    return found == uses.end() ? nullptr : &*found;
}

int LoadsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant LoadsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const LoadText& load = loads_[index.row()];
    const LoadUseText* use = use_of(index.row());
    switch (role) {
        case Qt::DisplayRole:
        case NameRole:
            return load.name;
        case DrawRole:
            return load.draw;
        case EvidenceRole:
            return load.evidence;
        case PerDayRole:
            return use ? use->per_day : QString();
        case ShareRole:
            return use ? use->share : 0.0;
        case SpokenRole: {
            QStringList words{load.name, load.draw, load.evidence, use ? use->per_day : QString()};
            words.removeAll(QString());
            return words.join(QStringLiteral(", "));
        }
        default:
            return {};
    }
}

QHash<int, QByteArray> LoadsModel::roleNames() const {
    return {{NameRole, "name"},     {DrawRole, "draw"},   {EvidenceRole, "evidence"},
            {PerDayRole, "perDay"}, {ShareRole, "share"}, {SpokenRole, "spoken"}};
}

}  // namespace touch
