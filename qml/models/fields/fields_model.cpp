#include "models/fields/fields_model.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "models/words/typed_amount.hpp"
#include "scenario/file/document.hpp"

namespace touch {

namespace {

QString word_for(Field::Kind kind) {
    static constexpr std::array words{"number", "choice", "count",  "words",
                                      "hours",  "moment", "several"};
    return QLatin1String(words[static_cast<std::size_t>(kind)]);
}

QVariantList options_of(const Field& field) {
    QVariantList options;
    for (const FieldOption& option : field.options) {
        options << QVariantMap{
            {"value", option.value},
            {"label", option.label},
            {"detail", option.detail},
            {"asks", option.asks_for},
            {"chosen", field.kind == Field::Kind::several ? field.spans.contains(option.value)
                                                          : option.value == field.value}};
    }
    return options;
}

QStringList keys_of(const QList<Field>& fields) {
    QStringList keys;
    for (const Field& field : fields)
        keys << field.key;
    return keys;
}

}  // namespace

FieldsModel::FieldsModel(QObject* parent) : QAbstractListModel(parent) {}

bool FieldsModel::put(const QString& key, const QString& value) {
    if (!document_) return false;
    const QString trouble = document_->change(
        [&key, &value](const std::string& text) { return with_field(text, key, value); });
    if (trouble.isEmpty()) {
        errors_.remove(key);
    } else {
        errors_[key] = trouble;
    }
    read();
    return trouble.isEmpty();
}

void FieldsModel::step(const QString& key, int by) {
    const Field* stepped = field(key);
    if (!stepped) return;
    const int value = std::clamp(stepped->value.toInt() + by, stepped->least, stepped->most);
    put(key, QString::number(value));
}

void FieldsModel::addHours(const QString& key, const QString& span) {
    const Field* found = field(key);
    if (found) put(key, hours_value(found->spans + QStringList{span}));
}

void FieldsModel::removeHours(const QString& key, int number) {
    const Field* found = field(key);
    if (!found || number < 0 || number >= found->spans.size()) return;
    QStringList spans = found->spans;
    spans.removeAt(number);
    put(key, hours_value(spans));
}

void FieldsModel::moveHours(const QString& key, int number, bool its_end, int minutes) {
    const Field* found = field(key);
    if (!found || number < 0 || number >= found->spans.size()) return;
    QStringList spans = found->spans;
    spans[number] = with_end_moved(spans[number], its_end, minutes);
    put(key, hours_value(spans));
}

void FieldsModel::moveMoment(const QString& key, int months, int days, int minutes) {
    const Field* found = field(key);
    if (found) put(key, with_moment_moved(found->value, months, days, minutes));
}

void FieldsModel::turn(const QString& key, const QString& value) {
    const Field* found = field(key);
    if (!found) return;
    QStringList picked = found->spans;
    if (!picked.removeOne(value)) picked << value;
    put(key, list_value(picked));
}

QVariantMap FieldsModel::asked(const QString& key) const {
    const Field* found = field(key);
    if (!found) return {};
    return {{"key", found->key},          {"label", found->label},
            {"value", found->value},      {"example", found->example},
            {"units", found->units},      {"dimension", static_cast<int>(found->dimension)},
            {"optional", found->optional}};
}

void FieldsModel::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &FieldsModel::read);
    asked_anew();
}

void FieldsModel::set_table(const QString& table) {
    if (std::exchange(table_, table) != table) asked_anew();
}

void FieldsModel::set_number(int number) {
    if (std::exchange(number_, number) != number) asked_anew();
}

void FieldsModel::set_only(const QStringList& only) {
    if (std::exchange(only_, only) != only) asked_anew();
}

void FieldsModel::asked_anew() {
    errors_.clear();
    emit askedChanged();
    read();
}

void FieldsModel::read() {
    if (!document_ || table_.isEmpty()) return;
    const auto document = scenario::read_document(document_->text().toStdString(), std::string());
    if (!document) return;  // the fields stay as they were until the text can be read again
    all_ = fields_of(*document, table_, number_);
    QList<Field> shown;
    for (const Field& one : all_) {
        const QString key = one.key.mid(one.key.indexOf(QLatin1Char('.')) + 1);
        if (!one.hidden && (only_.isEmpty() || only_.contains(key))) shown.append(one);
    }
    // The same fields with other values keep their places, so that a finger finds them again.
    if (keys_of(shown) == keys_of(shown_)) {
        shown_ = std::move(shown);
        if (count() > 0) emit dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    shown_ = std::move(shown);
    endResetModel();
    emit fieldsChanged();
}

const Field* FieldsModel::field(const QString& key) const {
    const auto found = std::ranges::find(all_, key, &Field::key);
    return found == all_.end() ? nullptr : &*found;
}

int FieldsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant FieldsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Field& field = shown_[index.row()];
    switch (role) {
        case KeyRole:
            return field.key;
        case KindRole:
            return word_for(field.kind);
        case Qt::DisplayRole:
        case LabelRole:
            return field.label;
        case ShownRole:
            if (field.value.isEmpty()) return field.silent;
            return field.kind == Field::Kind::number ? amount_in_field(field.value, field.dimension)
                                                     : field.value;
        case GivenRole:
            return !field.value.isEmpty();
        case OptionalRole:
            return field.optional;
        case OptionsRole:
            return options_of(field);
        case SpansRole:
            return field.spans;
        case CanLessRole:
            return field.value.toInt() > field.least;
        case CanMoreRole:
            return field.value.toInt() < field.most;
        case LeastRole:
            return field.least;
        case MostRole:
            return field.most;
        case ErrorRole:
            return errors_.value(field.key);
        default:
            return {};
    }
}

QHash<int, QByteArray> FieldsModel::roleNames() const {
    return {{KeyRole, "key"},         {KindRole, "kind"},   {LabelRole, "label"},
            {ShownRole, "shown"},     {GivenRole, "given"}, {OptionalRole, "optional"},
            {OptionsRole, "options"}, {SpansRole, "spans"}, {CanLessRole, "canLess"},
            {CanMoreRole, "canMore"}, {LeastRole, "least"}, {MostRole, "most"},
            {ErrorRole, "error"}};
}

}  // namespace touch
