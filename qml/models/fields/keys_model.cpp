#include "models/fields/keys_model.hpp"

#include <algorithm>
#include <utility>

#include "models/fields/field_makers.hpp"
#include "models/file/held_instead.hpp"
#include "models/words/finding_text.hpp"
#include "models/words/told.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"
#include "scenario/keys/listing.hpp"
#include "scenario/keys/reference.hpp"

namespace touch {

namespace {

KeyText key_text(const scenario::ListedKey& key) {
    const QString origin =
        touch::told(key.line > 0 ? words::said<"line {number}">(key.line) : key.origin);
    QString value = words_of(key.value);
    if (value.size() > 1 && value.startsWith(QLatin1Char('"')) &&
        value.indexOf(QLatin1Char('"'), 1) == value.size() - 1)
        value = value.mid(1, value.size() - 2);
    KeyText text{.key = words_of(key.key), .value = value, .origin = origin, .given = key.given};
    if (const scenario::ToldKey* told = scenario::told_key(key.described)) {
        if (!told->on_screen.label.empty()) text.label = touch::told(told->on_screen.label);
        if (!told->group.empty()) text.group = touch::told(told->group);
    }
    return text;
}

bool is_about(const KeyText& key, const QString& wanted) {
    return key.key.contains(wanted, Qt::CaseInsensitive) ||
           key.label.contains(wanted, Qt::CaseInsensitive) ||
           key.group.contains(wanted, Qt::CaseInsensitive);
}

QString title_of(const KeyText& key) {
    return key.label.isEmpty() ? key.key : QStringLiteral("%1 (%2)").arg(key.label, key.key);
}

bool same_keys(const QList<KeyText>& one, const QList<KeyText>& other) {
    return std::ranges::equal(one, other, {}, &KeyText::key, &KeyText::key);
}

}  // namespace

KeysModel::KeysModel(QObject* parent)
    : QAbstractListModel(parent),
      asking_(
          [this](const std::shared_ptr<const Held>& held) {
              if (held->key != taken_ || held->words.isEmpty()) return;
              holds_ = held->words;
              tell(trouble_, instead_of(taken_));
          },
          [] {},
          [this](const QString& what) {
              if (document_) document_->tell_fault(what, false);
          }) {}

bool KeysModel::put(const QString& key, const QString& value) {
    if (!document_) return false;
    const QString trouble = document_->change([&](const std::string& text) {
        return value.isEmpty() ? scenario::without_value(text, key.toStdString())
                               : scenario::with_value(text, key.toStdString(), value.toStdString());
    });
    tell(trouble, {});
    return trouble.isEmpty();
}

bool KeysModel::takeOut(const QString& key) {
    if (!document_) return false;
    const QString before = document_->text();
    told_.clear();
    holds_.clear();
    taken_ = key;  // before the rows are read again
    const QString trouble = document_->change(
        [&](const std::string& text) { return scenario::without_value(text, key.toStdString()); });
    const bool taken = trouble.isEmpty();
    tell(taken ? QString()
               : tr("%1 stays: without it the file cannot be used. %2").arg(key, trouble),
         taken ? instead_of(key) : QString());
    if (taken) ask_what_holds(key, before);
    return taken;
}

void KeysModel::ask_what_holds(const QString& key, const QString& before) {
    asking_.request([key, before, after = document_->text(), file = document_->path()]() -> Held {
        return {key, held_instead(key, before, after, file)};
    });
}

bool KeysModel::isGiven(const QString& key) const {
    const auto found = std::ranges::find(all_, key, &KeyText::key);
    return found != all_.end() && found->given;
}

QString KeysModel::instead_of(const QString& key) const {
    if (!holds_.isEmpty()) return tr("%1 was taken out. Now: %2.").arg(key, holds_);
    const auto now = std::ranges::find(all_, key, &KeyText::key);
    if (now == all_.end()) return tr("%1 was taken out; nothing holds in its place.").arg(key);
    return now->value.isEmpty()
               ? tr("%1 was taken out. Now: %2.").arg(key, now->origin)
               : tr("%1 was taken out. Now %2 holds: %3.").arg(key, now->value, now->origin);
}

void KeysModel::tell(const QString& trouble, const QString& told) {
    told_of_ = told.isEmpty() ? QString() : document_->text();
    if (told.isEmpty()) {
        taken_.clear();
        holds_.clear();
    }
    pick();
    if (trouble_ == trouble && told_ == told) return;
    trouble_ = trouble;
    told_ = told;
    emit troubleChanged();
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
    // What is told of one text does not hold of the next.
    const bool another = !told_.isEmpty() && document_->text() != told_of_;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // the rows stay as they were until the text can be read again
    all_.clear();
    for (const scenario::ListedKey& key : scenario::listing(*read))
        all_.append(key_text(key));
    if (another)
        tell(trouble_, {});
    else
        pick();
}

void KeysModel::pick() {
    QList<KeyText> shown;
    for (const KeyText& key : all_) {
        if (!is_about(key, wanted_.trimmed()) || (!key.given && given_only_ && key.key != taken_))
            continue;
        shown.append(key);
        // Its row stays where the person looks.
        if (key.key == taken_)
            shown.last().origin =
                tr("Taken out; now %1").arg(holds_.isEmpty() ? key.origin : holds_);
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
            return QStringLiteral("%1, %2, %3").arg(title_of(key), key.value, key.origin);
        case TitleRole:
            return title_of(key);
        case HeadingRole:
            return index.row() > 0 && shown_[index.row() - 1].group == key.group ? QString()
                                                                                 : key.group;
        default:
            return {};
    }
}

QHash<int, QByteArray> KeysModel::roleNames() const {
    return {{KeyRole, "key"},        {ValueRole, "value"},   {OriginRole, "origin"},
            {GivenRole, "given"},    {SpokenRole, "spoken"}, {TitleRole, "title"},
            {HeadingRole, "heading"}};
}

}  // namespace touch
