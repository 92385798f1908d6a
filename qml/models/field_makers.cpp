#include "models/field_makers.hpp"

#include <algorithm>

#include <QObject>

#include "models/finding_text.hpp"

namespace touch::making {

using scenario::Node;
using units::Dimension;
using Kind = Field::Kind;

const Node* node_at(const Node* node, const QString& path) {
    for (const QString& part : path.split(QLatin1Char('.'))) {
        if (!node) return nullptr;
        node = node->find(part.toStdString());
    }
    return node;
}

bool Table::has(const char* key) const {
    return node_at(node, QLatin1String(key)) != nullptr;
}

QString Table::text(const char* key) const {
    const Node* found = node_at(node, QLatin1String(key));
    return found ? words_of(found->text) : QString();
}

QString Table::key(const char* key) const {
    return QStringLiteral("%1.%2").arg(path, QLatin1String(key));
}

Field number(const Table& table, const char* key, const QString& label, Dimension dimension,
             const QStringList& units, const QString& example, const QString& silent) {
    return {.key = table.key(key),
            .kind = Kind::number,
            .label = label,
            .value = table.text(key),
            .silent = silent,
            .example = example,
            .dimension = dimension,
            .units = units,
            .optional = !silent.isEmpty()};
}

Field words(const Table& table, const char* key, const QString& label, const QString& example,
            const QString& silent) {
    return {.key = table.key(key),
            .kind = Kind::words,
            .label = label,
            .value = table.text(key),
            .silent = silent,
            .example = example,
            .optional = !silent.isEmpty()};
}

Field name_of(const Table& table) {
    return words(table, "name", QObject::tr("Name"), {}, {});
}

Field count(const Table& table, const char* key, const QString& label, int least, int most,
            int silent) {
    const QString given = table.text(key);
    return {.key = table.key(key),
            .kind = Kind::count,
            .label = label,
            .value = given.isEmpty() ? QString::number(silent) : given,
            .silent = {},
            .example = {},
            .least = least,
            .most = most};
}

Field choice(const Table& table, const char* key, const QString& label, const QString& silent,
             QList<FieldOption> options) {
    QString value = table.text(key);
    if (value.isEmpty()) value = silent;
    const auto same = std::ranges::find_if(options, [&value](const FieldOption& option) {
        return option.value.compare(value, Qt::CaseInsensitive) == 0;
    });
    if (same != options.end()) {
        value = same->value;
    } else if (!value.isEmpty()) {
        options.append({.value = value, .label = value});
    }
    return {.key = table.key(key),
            .kind = Kind::choice,
            .label = label,
            .value = value,
            .silent = {},
            .example = {},
            .options = std::move(options)};
}

Field truth(const Table& table, const char* key, const QString& label) {
    return choice(table, key, label, QStringLiteral("false"),
                  {{.value = QStringLiteral("false"), .label = QObject::tr("no")},
                   {.value = QStringLiteral("true"), .label = QObject::tr("yes")}});
}

namespace {

QStringList texts_in(const Table& table, const char* key) {
    QStringList texts;
    const Node* list = node_at(table.node, QLatin1String(key));
    if (!list) return texts;
    for (const Node& item : list->items)
        texts << words_of(item.text);
    if (list->kind == Node::Kind::text) texts << words_of(list->text);
    return texts;
}

}  // namespace

Field hours(const Table& table, const char* key, const QString& label, const QString& silent) {
    const QStringList spans = texts_in(table, key);
    return {.key = table.key(key),
            .kind = Kind::hours,
            .label = label,
            .value = spans.join(QStringLiteral(", ")),
            .silent = silent,
            .example = {},
            .optional = true,
            .spans = spans};
}

Field moment(const Table& table, const char* key, const QString& label) {
    return {.key = table.key(key),
            .kind = Kind::moment,
            .label = label,
            .value = table.text(key),
            .silent = {},
            .example = {}};
}

Field several(const Table& table, const char* key, const QString& label, const QStringList& names) {
    const QStringList held = texts_in(table, key);
    Field field{.key = table.key(key),
                .kind = Kind::several,
                .label = label,
                .value = held.join(QStringLiteral(", ")),
                .silent = {},
                .example = {},
                .optional = true,
                .spans = held};
    for (const QString& name : names + held) {
        const bool there = std::ranges::any_of(
            field.options, [&name](const FieldOption& option) { return option.value == name; });
        if (!there) field.options.append({.value = name, .label = name});
    }
    return field;
}

Field shown_if(bool shown, Field field) {
    field.hidden = !shown;
    return field;
}

}  // namespace touch::making
