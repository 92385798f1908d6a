#include "models/fields/field_makers.hpp"

#include <algorithm>

#include <QLocale>
#include <QObject>
#include <QRegularExpression>

#include "models/words/finding_text.hpp"
#include "models/words/told.hpp"
#include "scenario/keys/reference.hpp"

namespace touch::making {

using scenario::Node;
using scenario::Shape;
using scenario::ToldKey;
using Kind = Field::Kind;

const Node* node_at(const Node* node, const QString& path) {
    for (const QString& part : path.split(QLatin1Char('.'))) {
        if (!node) return nullptr;
        node = node->find(part.toStdString());
    }
    return node;
}

bool Table::has(const QString& key) const {
    return node_at(node, key) != nullptr;
}

QString Table::text(const QString& key) const {
    const Node* found = node_at(node, key);
    return found ? words_of(found->text) : QString();
}

QString Table::key(const QString& key) const {
    return QStringLiteral("%1.%2").arg(path, key);
}

QString Table::described() const {
    static const QRegularExpression number(QStringLiteral("\\[\\d+\\]"));
    return QString(path).remove(number);
}

QString Table::kind() const {
    if (described() != u"circuit.links") return {};
    for (const char* part : {"fuse", "switch", "wire", "connector", "outlet"}) {
        if (has(QLatin1String(part))) return QLatin1String(part);
    }
    return {};
}

namespace {

QStringList texts_in(const Table& table, const QString& key) {
    QStringList texts;
    const Node* list = node_at(table.node, key);
    if (!list) return texts;
    for (const Node& item : list->items)
        texts << words_of(item.text);
    if (list->kind == Node::Kind::text) texts << words_of(list->text);
    return texts;
}

// Without the quotes in which it would stand in the file.
QString bare(const std::string& value) {
    QString text = words_of(value);
    return text.startsWith(QLatin1Char('"')) ? text.mid(1, text.size() - 2) : text;
}

QList<FieldOption> options_of(const ToldKey& told) {
    QList<FieldOption> options;
    const auto add = [&options](const scenario::Pick& pick) {
        const QString value = words_of(pick.value);
        options.append(
            {.value = value, .label = pick.label.empty() ? value : touch::told(pick.label)});
    };
    if (told.shape.kind == Shape::Kind::truth) {
        options = {{.value = QStringLiteral("false"), .label = touch::told(words::said<"no">())},
                   {.value = QStringLiteral("true"), .label = touch::told(words::said<"yes">())}};
    }
    std::ranges::for_each(told.shape.choices, add);
    std::ranges::for_each(told.on_screen.picks, add);
    return options;
}

// What the file says and no option does is an option of its own; where it may be silent and that is
// none of the options, so is silence.
Field as_choice(Field field, const ToldKey& told) {
    field.kind = Kind::choice;
    field.options = options_of(told);
    const QString silent = words_of(std::string(told.on_screen.silent));
    const auto of_value = [&field](const QString& value) {
        return std::ranges::find_if(field.options, [&value](const FieldOption& option) {
            return option.value.compare(value, Qt::CaseInsensitive) == 0;
        });
    };
    if (!silent.isEmpty() && of_value(silent) == field.options.end()) {
        field.options.prepend({.value = QString(), .label = touch::told(told.on_screen.silent)});
    } else if (field.value.isEmpty()) {
        field.value = silent;
    }
    if (const auto same = of_value(field.value); same != field.options.end()) {
        field.value = same->value;
    } else if (!field.value.isEmpty()) {
        field.options.append({.value = field.value, .label = field.value});
    }
    field.silent.clear();
    field.optional = false;
    return field;
}

Field as_count(Field field, const ToldKey& told) {
    field.kind = Kind::count;
    field.least = told.shape.least;
    field.most = told.shape.most;
    if (field.value.isEmpty()) field.value = words_of(std::string(told.on_screen.silent));
    field.silent.clear();
    field.optional = false;
    return field;
}

Field as_hours(Field field, const QStringList& spans) {
    field.kind = Kind::hours;
    field.spans = spans;
    field.value = spans.join(QStringLiteral(", "));
    return field;
}

Field as_number(Field field, const ToldKey& told) {
    field.kind = Kind::number;
    field.dimension = told.shape.dimension;
    for (const std::string_view unit : told.on_screen.units)
        field.units << words_of(unit);
    return field;
}

const ToldKey* told_of(const Table& table, const QString& key) {
    return scenario::told_key(QStringLiteral("%1.%2").arg(table.described(), key).toStdString(),
                              table.kind().toStdString());
}

// What every field has, whatever its form.
Field begun(const Table& table, const QString& key, const ToldKey& told) {
    const QString silent = touch::told(told.on_screen.silent);
    return {.key = table.key(key),
            .label = touch::told(told.on_screen.label),
            .value = table.text(key),
            .silent = silent,
            .example = bare(told.example),
            .optional = !silent.isEmpty()};
}

bool is_inside(const Table& table, const QString& key) {
    const qsizetype dot = key.indexOf(QLatin1Char('.'));
    return dot >= 0 && !table.has(key.left(dot));
}

std::optional<Field> in_its_form(Field field, const Table& table, const QString& key,
                                 const ToldKey& told) {
    const Shape& shape = told.shape;
    if (shape.several) {
        return shape.kind == Shape::Kind::span
                   ? std::optional(as_hours(std::move(field), texts_in(table, key)))
                   : std::nullopt;
    }
    if (shape.kind == Shape::Kind::choice || shape.kind == Shape::Kind::truth ||
        !told.on_screen.picks.empty())
        return as_choice(std::move(field), told);
    if (shape.kind == Shape::Kind::whole) return as_count(std::move(field), told);
    if (shape.kind == Shape::Kind::quantity) return as_number(std::move(field), told);
    if (shape.kind == Shape::Kind::moment || shape.kind == Shape::Kind::words) {
        field.kind = shape.kind == Shape::Kind::moment ? Kind::moment : Kind::words;
        return field;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Field> described(const Table& table, const QString& key) {
    const ToldKey* told = told_of(table, key);
    if (told == nullptr || told->on_screen.label.empty()) return std::nullopt;
    std::optional<Field> field = in_its_form(begun(table, key, *told), table, key, *told);
    if (field) field->hidden = is_inside(table, key);
    return field;
}

QList<Field> fields_in(const Table& table, const QStringList& first, const Own& own) {
    QStringList names = first;
    const QString before = table.described() + QLatin1Char('.');
    const std::string of = table.kind().toStdString();
    for (const ToldKey& told : scenario::reference()) {
        const QString key = words_of(told.key);
        const QString name = key.mid(before.size());
        if (key.startsWith(before) && told.of == of && !names.contains(name)) names << name;
    }
    QList<Field> fields;
    for (const QString& name : names) {
        if (own.contains(name)) {
            fields << own[name];
        } else if (std::optional<Field> field = described(table, name)) {
            fields << *std::move(field);
        }
    }
    return fields;
}

QList<Field> months_of(const Table& table, const QString& key) {
    QList<Field> fields;
    const ToldKey* told = told_of(table, key);
    if (told == nullptr) return fields;
    const Node* list = node_at(table.node, key);
    for (int month = 0; month < 12; ++month) {
        const bool there = list && month < static_cast<int>(list->items.size());
        Field field = as_number(begun(table, key, *told), *told);
        field.key = QStringLiteral("%1[%2]").arg(field.key).arg(month);
        field.label =
            QStringLiteral("%1, %2").arg(field.label, QLocale().standaloneMonthName(month + 1));
        field.value =
            there ? words_of(list->items[static_cast<std::size_t>(month)].text) : QString();
        field.optional = false;
        fields.append(field);
    }
    return fields;
}

Field several(const Table& table, const QString& key, const QStringList& names) {
    const QStringList held = texts_in(table, key);
    const ToldKey* told = told_of(table, key);
    Field field = told ? begun(table, key, *told) : Field{.key = table.key(key)};
    field.kind = Kind::several;
    field.value = held.join(QStringLiteral(", "));
    field.optional = true;
    field.spans = held;
    for (const QString& name : names + held) {
        const bool there = std::ranges::any_of(
            field.options, [&name](const FieldOption& option) { return option.value == name; });
        if (!there) field.options.append({.value = name, .label = name});
    }
    return field;
}

}  // namespace touch::making
