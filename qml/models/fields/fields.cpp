#include "models/fields/fields.hpp"

#include <utility>

#include <QDateTime>
#include <QObject>

#include "models/fields/field_makers.hpp"
#include "models/fields/fields_of_build.hpp"
#include "models/words/finding_text.hpp"
#include "scenario/file/save.hpp"
#include "scenario/keys/place_of_key.hpp"

namespace touch {

namespace {

using namespace making;
using scenario::Node;
using Kind = Field::Kind;

// ---- What a load draws is told in one of four ways.

struct Way {
    const char* table;  // key that holds it
    const char* asks;   // key of the number that is typed first
};

constexpr Way ways[] = {{"metered", "metered.energy"},
                        {"label", "label"},
                        {"nameplate", "nameplate.current"},
                        {"power", "power"}};

Field way_of_knowing(const Table& load) {
    QString holds;
    for (const Way& way : ways) {
        if (load.has(QLatin1String(way.table))) holds = QLatin1String(way.table);
    }
    return {.key = load.key(QStringLiteral("draw")),
            .kind = Kind::choice,
            .label = QObject::tr("How its use is known"),
            .value = holds,
            .silent = {},
            .example = {},
            .options = {{.value = "metered",
                         .label = QObject::tr("plug-in meter"),
                         .detail = QObject::tr("energy over some time"),
                         .asks_for = load.key(QStringLiteral("metered.energy"))},
                        {.value = "label",
                         .label = QObject::tr("yearly label"),
                         .detail = QObject::tr("kWh a year"),
                         .asks_for = load.key(QStringLiteral("label"))},
                        {.value = "nameplate",
                         .label = QObject::tr("nameplate"),
                         .detail = QObject::tr("volts and amperes"),
                         .asks_for = load.key(QStringLiteral("nameplate.current"))},
                        {.value = "power",
                         .label = QObject::tr("power"),
                         .detail = QObject::tr("watts while on"),
                         .asks_for = load.key(QStringLiteral("power"))}}};
}

Field cycle_of(const Table& load) {
    return {.key = load.key(QStringLiteral("runs")),
            .kind = Kind::choice,
            .label = QObject::tr("While switched on it runs"),
            .value = load.has(QStringLiteral("runs")) ? QStringLiteral("cycle") : QString(),
            .silent = {},
            .example = {},
            .options = {{.value = "", .label = QObject::tr("all the time")},
                        {.value = "cycle", .label = QObject::tr("on and off")}}};
}

// A field that is shown in one case alone.
Own shown_if(bool shown, const Table& table, const QString& key) {
    std::optional<Field> field = described(table, key);
    if (!field) return {};
    field->hidden = !shown;
    return {{key, *field}};
}

Own together(std::initializer_list<Own> parts) {
    Own all;
    for (const Own& part : parts)
        all.insert(part);
    return all;
}

QList<Field> load_fields(const Table& load) {
    static const QStringList first{QStringLiteral("name"),
                                   QStringLiteral("count"),
                                   QStringLiteral("draw"),
                                   QStringLiteral("metered.energy"),
                                   QStringLiteral("metered.over"),
                                   QStringLiteral("label"),
                                   QStringLiteral("nameplate.voltage"),
                                   QStringLiteral("nameplate.current"),
                                   QStringLiteral("power"),
                                   QStringLiteral("evidence"),
                                   QStringLiteral("from"),
                                   QStringLiteral("hours"),
                                   QStringLiteral("runs"),
                                   QStringLiteral("runs.on"),
                                   QStringLiteral("runs.every"),
                                   QStringLiteral("priority"),
                                   QStringLiteral("medical")};
    // Whether it has a motor is asked of every load.
    std::optional<Field> motor = described(load, QStringLiteral("motor.kind"));
    if (motor) motor->hidden = false;
    const QString label = QStringLiteral("label");
    const QString power = QStringLiteral("power");
    Own own = together({shown_if(load.has(label), load, label),
                        shown_if(load.has(power), load, power),
                        {{QStringLiteral("draw"), way_of_knowing(load)},
                         {QStringLiteral("runs"), cycle_of(load)}}});
    if (motor) own.insert(QStringLiteral("motor.kind"), *motor);
    return fields_in(load, first, own);
}

// ---- The other tables.

QList<Field> plain_fields(const Table& table) {
    return fields_in(table);
}

constexpr char nobody_knows[] = "?";

bool is_open_ended(const Table& outage) {
    const Node* lasts = outage.node != nullptr ? outage.node->find("lasts") : nullptr;
    return lasts != nullptr && lasts->kind == Node::Kind::text && lasts->text == nobody_knows;
}

// A length, or by when half of such outages are over.
Field length_known(const Table& outage) {
    return {.key = outage.key(QStringLiteral("length")),
            .kind = Kind::choice,
            .label = QObject::tr("How long it lasts"),
            .value = is_open_ended(outage) ? QStringLiteral("unknown") : QStringLiteral("known"),
            .silent = {},
            .example = {},
            .options = {{.value = "known",
                         .label = QObject::tr("a length"),
                         .detail = QObject::tr("days or hours"),
                         .asks_for = outage.key(QStringLiteral("lasts"))},
                        {.value = "unknown",
                         .label = QObject::tr("nobody knows"),
                         .detail = QObject::tr("half of such outages are over by then"),
                         .asks_for = outage.key(QStringLiteral("half_over_by"))}}};
}

QList<Field> outage_fields(const Table& outage) {
    const bool open_ended = is_open_ended(outage);
    const QString length = QStringLiteral("length");
    const QString lasts = QStringLiteral("lasts");
    const QString half = QStringLiteral("half_over_by");
    return fields_in(outage, {QStringLiteral("starts"), length, lasts, half},
                     together({shown_if(!open_ended, outage, lasts),
                               shown_if(open_ended, outage, half),
                               {{length, length_known(outage)}}}));
}

QList<Field> storage_fields(const Table& storage) {
    return fields_in(storage, {}, shown_if(storage.node, storage, QStringLiteral("since")));
}

// One that is not there begins with its power.
QList<Field> inverter_fields(const Table& inverter) {
    return inverter.node ? fields_in(inverter) : fields_in(inverter).mid(0, 1);
}

bool is_of_several(const QString& table) {
    static const QStringList several{"load", "pack", "panel", "circuit", "charger"};
    return several.contains(table) || table.endsWith(QLatin1String(".links"));
}

// A list that stands in another table: "circuit[2].links".
const scenario::Node* node_of(const Node& document, const QString& table) {
    const auto place = scenario::place_of_key(document, table.toStdString());
    return place ? place->value : nullptr;
}

using FieldsOf = QList<Field> (*)(const Table&);

FieldsOf maker_of(const QString& table) {
    static const QList<std::pair<const char*, FieldsOf>> makers{
        {"load", load_fields},       {"pack", plain_fields},
        {"panel", plain_fields},     {"outage", outage_fields},
        {"storage", storage_fields}, {"inverter", inverter_fields},
        {"circuit", circuit_fields}, {"links", link_fields},
        {"charger", plain_fields},   {"charge_controller", plain_fields},
        {"case", plain_fields},      {"place", place_fields},
        {"goal", plain_fields}};
    const QString last = table.mid(table.lastIndexOf(QLatin1Char('.')) + 1);
    for (const auto& [name, maker] : makers) {
        if (last == QLatin1String(name)) return maker;
    }
    return nullptr;
}

using Text = units::Result<std::string>;

Text without_key(const std::string& text, const QString& key) {
    return scenario::without_value(text, key.toStdString());
}

Text with_key(const std::string& text, const QString& key, const QString& value) {
    return scenario::with_value(text, key.toStdString(), value.toStdString());
}

// What a table cannot do without, put before anything else where the file has no such table.
Text with_beginning(const std::string& text, const Node& document, const QString& table,
                    const QString& rest) {
    if (document.find(table.toStdString())) return text;
    if (table == u"charge_controller" && rest != u"kind")
        return with_key(text, QStringLiteral("charge_controller.kind"), QStringLiteral("mppt"));
    if (table == u"storage" && rest != u"since") {
        const Node* outage = document.find("outage");
        const Node* starts = outage ? outage->find("starts") : nullptr;
        if (starts) return with_key(text, QStringLiteral("storage.since"), words_of(starts->text));
    }
    return text;
}

// One month of twelve; where the file has none of them, all become like this one.
Text with_month(const std::string& text, const Node& document, const QString& key,
                const QString& value) {
    const QString list = key.left(key.indexOf(QLatin1Char('[')));
    if (node_of(document, list)) return with_key(text, key, value);
    return with_key(text, list, list_value(QStringList(12, value)));
}

// A way of knowing takes the place of the others.
Text with_way(const std::string& text, const QString& load, const Way& way, const QString& value) {
    Text changed = text;
    for (const Way& other : ways) {
        if (&other == &way) continue;
        const QString key = load + QLatin1Char('.') + QLatin1String(other.table);
        if (auto without = without_key(*changed, key)) changed = std::move(without);
    }
    const QString key = load + QLatin1Char('.') + QLatin1String(way.table);
    const QString quoted = QStringLiteral("\"%1\"").arg(value);
    QString whole = value;
    if (QLatin1String(way.table) == u"metered") {
        whole = QStringLiteral("{ energy = %1, over = \"24 h\" }").arg(quoted);
    } else if (QLatin1String(way.table) == u"nameplate") {
        whole = QStringLiteral("{ voltage = \"120 V\", current = %1 }").arg(quoted);
    }
    return with_key(*changed, key, whole);
}

// Of the length and the time by which half are over, one holds.
Text with_length(const std::string& text, const QString& key, const QString& value) {
    if (key == u"outage.lasts") {
        auto known = without_key(text, QStringLiteral("outage.half_over_by"));
        return with_key(known ? *known : text, key, value);
    }
    const auto half = with_key(text, key, value);
    return half ? with_key(*half, QStringLiteral("outage.lasts"), QLatin1String(nobody_knows))
                : half;
}

}  // namespace

QList<Field> fields_of(const Node& document, const QString& table, int number) {
    const FieldsOf maker = maker_of(table);
    const Node* node = node_of(document, table);
    if (!maker) return {};
    if (!node) {
        if (is_of_several(table)) return {};
        return maker({.node = nullptr, .path = table, .document = &document});
    }
    if (node->kind != Node::Kind::list)
        return maker({.node = node, .path = table, .document = &document});
    if (number < 0 || number >= static_cast<int>(node->items.size())) return {};
    return maker({.node = &node->items[static_cast<std::size_t>(number)],
                  .path = QStringLiteral("%1[%2]").arg(table).arg(number),
                  .document = &document});
}

Text with_field(const std::string& text, const QString& key, const QString& value) {
    const qsizetype dot = key.indexOf(QLatin1Char('.'));
    const QString table = key.left(dot);
    const QString rest = key.mid(dot + 1);
    if (value.isEmpty()) {
        const bool no_motor = rest == u"motor.kind";
        auto without = without_key(text, no_motor ? table + QStringLiteral(".motor") : key);
        return without ? without : Text(text);  // what is not there need not be taken out
    }
    if (key == u"outage.lasts" || key == u"outage.half_over_by")
        return with_length(text, key, value);
    if (rest == u"runs") {
        return with_key(text, key, QStringLiteral("{ on = \"15 min\", every = \"45 min\" }"));
    }
    const auto document = scenario::read_document(text, std::string());
    if (!document) return units::fail(document.error());
    if (table == u"place" && key.endsWith(QLatin1Char(']')))
        return with_month(text, *document, key, value);
    if (table.startsWith(QLatin1String("load["))) {
        for (const Way& way : ways) {
            const Node* loads = document->find("load");
            const int number = table.mid(5, table.size() - 6).toInt();
            const bool there =
                loads && number < static_cast<int>(loads->items.size()) &&
                loads->items[static_cast<std::size_t>(number)].find(way.table) != nullptr;
            if (rest == QLatin1String(way.asks) && !there) return with_way(text, table, way, value);
        }
    }
    const Text begun = with_beginning(text, *document, table, rest);
    return begun ? with_key(*begun, key, value) : begun;
}

QString with_moment_moved(const QString& moment, int months, int days, int minutes) {
    const QDateTime time = QDateTime::fromString(
        QString(moment).replace(QLatin1Char(' '), QLatin1Char('T')), Qt::ISODate);
    if (!time.isValid()) return moment;
    // As a clock without summer time runs.
    const QDateTime clock(time.date(), time.time(), Qt::UTC);
    return clock.addMonths(months)
        .addDays(days)
        .addSecs(60LL * minutes)
        .toString(QStringLiteral("yyyy-MM-ddTHH:mm:ss"));
}

QString with_end_moved(const QString& span, bool its_end, int minutes) {
    QStringList ends = span.split(QLatin1Char('-'));
    if (ends.size() != 2) return span;
    QString& moved = ends[its_end ? 1 : 0];
    const QStringList clock = moved.split(QLatin1Char(':'));
    constexpr int day = 24 * 60;
    const int at = (clock.value(0).toInt() * 60 + clock.value(1).toInt() + minutes + day) % day;
    moved = QStringLiteral("%1:%2")
                .arg(at / 60, 2, 10, QLatin1Char('0'))
                .arg(at % 60, 2, 10, QLatin1Char('0'));
    return ends.join(QLatin1Char('-'));
}

QString hours_value(const QStringList& spans) {
    return list_value(spans);
}

QString list_value(const QStringList& words) {
    if (words.isEmpty()) return {};
    QStringList quoted;
    for (QString word : words) {
        word.replace(QLatin1Char('\\'), QStringLiteral("\\\\"))
            .replace(QLatin1Char('"'), QStringLiteral("\\\""));
        quoted << QStringLiteral("\"%1\"").arg(word);
    }
    return QStringLiteral("[%1]").arg(quoted.join(QStringLiteral(", ")));
}

}  // namespace touch
