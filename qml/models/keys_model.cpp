#include "models/keys_model.hpp"

#include <algorithm>
#include <utility>

#include "models/finding_text.hpp"

#include "scenario/listing.hpp"
#include "scenario/read.hpp"
#include "scenario/save.hpp"

namespace touch {

namespace {

KeyText key_text(const scenario::ListedKey& key) {
    const QString origin =
        key.line > 0 ? QObject::tr("line %1").arg(key.line) : words_of(key.origin);
    QString value = words_of(key.value);
    if (value.size() > 1 && value.startsWith(QLatin1Char('"')) &&
        value.indexOf(QLatin1Char('"'), 1) == value.size() - 1)
        value = value.mid(1, value.size() - 2);
    return {.key = words_of(key.key), .value = value, .origin = origin, .given = key.given};
}

bool same_keys(const QList<KeyText>& one, const QList<KeyText>& other) {
    return std::ranges::equal(one, other, {}, &KeyText::key, &KeyText::key);
}

}  // namespace

bool KeysModel::put(const QString& key, const QString& value) {
    if (!document_) return false;
    const QString trouble = document_->change([&](const std::string& text) {
        return value.isEmpty() ? scenario::without_value(text, key.toStdString())
                               : scenario::with_value(text, key.toStdString(), value.toStdString());
    });
    if (std::exchange(trouble_, trouble) != trouble) emit troubleChanged();
    return trouble.isEmpty();
}

void KeysModel::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &KeysModel::read);
    emit askedChanged();
    read();
}

void KeysModel::set_wanted(const QString& wanted) {
    if (std::exchange(wanted_, wanted) == wanted) return;
    emit askedChanged();
    pick();
}

void KeysModel::set_given_only(bool given_only) {
    if (std::exchange(given_only_, given_only) == given_only) return;
    emit askedChanged();
    pick();
}

void KeysModel::read() {
    if (!document_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // the rows stay as they were until the text can be read again
    all_.clear();
    for (const scenario::ListedKey& key : scenario::listing(*read))
        all_.append(key_text(key));
    pick();
}

void KeysModel::pick() {
    QList<KeyText> shown;
    for (const KeyText& key : all_) {
        const bool is_wanted = key.key.contains(wanted_.trimmed(), Qt::CaseInsensitive);
        if (is_wanted && (key.given || !given_only_)) shown.append(key);
    }
    if (same_keys(shown, shown_)) {
        shown_ = std::move(shown);
        if (count() > 0) emit dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    shown_ = std::move(shown);
    endResetModel();
    emit countChanged();
}

int KeysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant KeysModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const KeyText& key = shown_[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case KeyRole:
            return key.key;
        case ValueRole:
            return key.value;
        case OriginRole:
            return key.origin;
        case GivenRole:
            return key.given;
        case SpokenRole:
            return QStringLiteral("%1, %2, %3").arg(key.key, key.value, key.origin);
        default:
            return {};
    }
}

QHash<int, QByteArray> KeysModel::roleNames() const {
    return {{KeyRole, "key"},
            {ValueRole, "value"},
            {OriginRole, "origin"},
            {GivenRole, "given"},
            {SpokenRole, "spoken"}};
}

}  // namespace touch
