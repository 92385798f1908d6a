#include "models/fields/packs_model.hpp"

#include <algorithm>

#include "models/words/shown_amount.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"

namespace touch {

namespace {

QString kind_of(scenario::Chemistry chemistry) {
    switch (chemistry) {
        case scenario::Chemistry::flooded:
            return told(words::said<"lead, wet">());
        case scenario::Chemistry::agm:
            return told(words::said<"lead, sealed (AGM)">());
        case scenario::Chemistry::gel:
            return told(words::said<"lead, gel">());
        case scenario::Chemistry::lifepo4:
            break;
    }
    return told(words::said<"lithium iron phosphate">());
}

QString age_of(const scenario::Pack& pack) {
    if (pack.tested_capacity) return QObject::tr("tested: %1").arg(shown(*pack.tested_capacity));
    switch (pack.age.value_or(scenario::Age::fresh)) {
        case scenario::Age::mid_life:
            return told(words::said<"half its life">());
        case scenario::Age::end_of_life:
            return told(words::said<"old">());
        case scenario::Age::fresh:
            break;
    }
    return told(words::said<"new">());
}

}  // namespace

PackText pack_text(const scenario::Pack& pack) {
    QStringList held{QObject::tr("%1 of %2").arg(pack.count).arg(shown(pack.capacity))};
    if (pack.voltage) held << shown(*pack.voltage);
    held << kind_of(pack.chemistry);
    const double charge = pack.charge ? pack.charge->value() : 1.0;
    QStringList state{pack.charge && charge < 1.0 ? QObject::tr("%1 full").arg(shown(*pack.charge))
                                                  : QObject::tr("full"),
                      age_of(pack)};
    if (pack.lead_resistance) state << QObject::tr("lead %1").arg(shown(*pack.lead_resistance));
    return {.name = words_of(pack.name),
            .held = held.join(QStringLiteral(", ")),
            .state = state.join(QStringLiteral(", ")),
            .charge = charge};
}

int PacksModel::add() {
    if (!document_) return -1;
    const auto taken = [this](const QString& name) {
        return std::ranges::any_of(packs_,
                                   [&name](const PackText& pack) { return pack.name == name; });
    };
    QString name = tr("another");
    for (int number = 2; taken(name); ++number)
        name = tr("another %1").arg(number);
    const QString trouble = document_->change([&name](const std::string& text) {
        return scenario::with_table(text, "pack", {{"name", name.toStdString()}, {"count", "1"}});
    });
    return trouble.isEmpty() ? count() - 1 : -1;
}

bool PacksModel::remove(int number) {
    if (!document_ || count() < 2) return false;
    const std::string entry = "pack[" + std::to_string(number) + "]";
    return document_
        ->change([&entry](const std::string& text) { return scenario::without_table(text, entry); })
        .isEmpty();
}

void PacksModel::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &PacksModel::read);
    emit askedChanged();
    read();
}

void PacksModel::read() {
    if (!document_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // the rows stay as they were until the text can be read again
    QList<PackText> packs;
    for (const scenario::Pack& pack : read->scenario.packs)
        packs.append(pack_text(pack));
    if (packs.size() == packs_.size()) {
        packs_ = std::move(packs);
        if (count() > 0) emit dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    packs_ = std::move(packs);
    endResetModel();
    emit countChanged();
}

int PacksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant PacksModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const PackText& pack = packs_[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case NameRole:
            return pack.name;
        case HeldRole:
            return pack.held;
        case StateRole:
            return pack.state;
        case ChargeRole:
            return pack.charge;
        case SpokenRole:
            return QStringLiteral("%1, %2, %3").arg(pack.name, pack.held, pack.state);
        default:
            return {};
    }
}

QHash<int, QByteArray> PacksModel::roleNames() const {
    return {{NameRole, "name"},
            {HeldRole, "held"},
            {StateRole, "state"},
            {ChargeRole, "charge"},
            {SpokenRole, "spoken"}};
}

}  // namespace touch
