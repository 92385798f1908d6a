#include "models/fields.hpp"

#include <utility>

#include "models/finding_text.hpp"
#include <QObject>

#include "scenario/save.hpp"

namespace touch {

namespace {

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

// One table with the start of its keys.
struct Table {
    const Node* node = nullptr;
    QString path;  // "load[2]"

    [[nodiscard]] bool has(const char* key) const {
        return node_at(node, QLatin1String(key)) != nullptr;
    }
    [[nodiscard]] QString text(const char* key) const {
        const Node* found = node_at(node, QLatin1String(key));
        return found ? words_of(found->text) : QString();
    }
    [[nodiscard]] QString key(const char* key) const {
        return QStringLiteral("%1.%2").arg(path, QLatin1String(key));
    }
};

Field number(const Table& table, const char* key, const QString& label, Dimension dimension,
             const QStringList& units, const QString& example, const QString& silent = {}) {
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

Field name_of(const Table& table) {
    return {.key = table.key("name"),
            .kind = Kind::words,
            .label = QObject::tr("Name"),
            .value = table.text("name"),
            .silent = {},
            .example = {}};
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
    const QString given = table.text(key);
    return {.key = table.key(key),
            .kind = Kind::choice,
            .label = label,
            .value = given.isEmpty() ? silent : given,
            .silent = {},
            .example = {},
            .options = std::move(options)};
}

Field truth(const Table& table, const char* key, const QString& label) {
    return choice(table, key, label, QStringLiteral("false"),
                  {{.value = QStringLiteral("false"), .label = QObject::tr("no")},
                   {.value = QStringLiteral("true"), .label = QObject::tr("yes")}});
}

Field hours(const Table& table, const char* key, const QString& label, const QString& silent) {
    QStringList spans;
    if (const Node* list = node_at(table.node, QLatin1String(key))) {
        for (const Node& item : list->items)
            spans << words_of(item.text);
    }
    return {.key = table.key(key),
            .kind = Kind::hours,
            .label = label,
            .value = spans.join(QStringLiteral(", ")),
            .silent = silent,
            .example = {},
            .optional = true,
            .spans = spans};
}

Field shown_if(bool shown, Field field) {
    field.hidden = !shown;
    return field;
}

const QStringList& power_units() {
    static const QStringList units{"W", "kW", "hp"};
    return units;
}

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
        if (load.has(way.table)) holds = QLatin1String(way.table);
    }
    return {.key = load.key("draw"),
            .kind = Kind::choice,
            .label = QObject::tr("How its use is known"),
            .value = holds,
            .silent = {},
            .example = {},
            .options = {{.value = "metered",
                         .label = QObject::tr("plug-in meter"),
                         .detail = QObject::tr("energy over some time"),
                         .asks_for = load.key("metered.energy")},
                        {.value = "label",
                         .label = QObject::tr("yearly label"),
                         .detail = QObject::tr("kWh a year"),
                         .asks_for = load.key("label")},
                        {.value = "nameplate",
                         .label = QObject::tr("nameplate"),
                         .detail = QObject::tr("volts and amperes"),
                         .asks_for = load.key("nameplate.current")},
                        {.value = "power",
                         .label = QObject::tr("power"),
                         .detail = QObject::tr("watts while on"),
                         .asks_for = load.key("power")}}};
}

Field evidence_of(const Table& load) {
    return choice(load, "evidence", QObject::tr("How sure"), {},
                  {{.value = "metered", .label = QObject::tr("metered")},
                   {.value = "label", .label = QObject::tr("from a label")},
                   {.value = "guess", .label = QObject::tr("a guess")}});
}

Field cycle_of(const Table& load) {
    return {.key = load.key("runs"),
            .kind = Kind::choice,
            .label = QObject::tr("While switched on it runs"),
            .value = load.has("runs") ? QStringLiteral("cycle") : QString(),
            .silent = {},
            .example = {},
            .options = {{.value = "", .label = QObject::tr("all the time")},
                        {.value = "cycle", .label = QObject::tr("on and off")}}};
}

Field priority_of(const Table& load) {
    return choice(load, "priority", QObject::tr("Kept on before others"), QStringLiteral("3"),
                  {{.value = "1", .label = QObject::tr("1 life and health")},
                   {.value = "2", .label = QObject::tr("2 property")},
                   {.value = "3", .label = QObject::tr("3 word and light")},
                   {.value = "4", .label = QObject::tr("4 comfort")},
                   {.value = "5", .label = QObject::tr("5 work")}});
}

QList<Field> load_fields(const Table& load) {
    const QStringList energies{"kWh", "Wh"};
    const QStringList times{"h", "d", "min"};
    const QStringList cycles{"min", "h", "s"};
    return {
        name_of(load),
        count(load, "count", QObject::tr("How many"), 1, 1000, 1),
        way_of_knowing(load),
        shown_if(load.has("metered"), number(load, "metered.energy", QObject::tr("Energy metered"),
                                             Dimension::energy, energies, "1.9 kWh")),
        shown_if(load.has("metered"), number(load, "metered.over", QObject::tr("Metered over"),
                                             Dimension::duration, times, "31 h")),
        shown_if(load.has("label"), number(load, "label", QObject::tr("On the label"),
                                           Dimension::power, {"kWh/yr"}, "450 kWh/yr")),
        shown_if(load.has("nameplate"),
                 number(load, "nameplate.voltage", QObject::tr("Volts on the plate"),
                        Dimension::voltage, {"V"}, "120 V")),
        shown_if(load.has("nameplate"),
                 number(load, "nameplate.current", QObject::tr("Amperes on the plate"),
                        Dimension::current, {"A", "mA"}, "1.5 A")),
        shown_if(load.has("power"), number(load, "power", QObject::tr("Power while on"),
                                           Dimension::power, power_units(), "60 W")),
        evidence_of(load),
        choice(load, "from", QObject::tr("Plugged into"), "ac",
               {{.value = "ac", .label = QObject::tr("inverter outlet")},
                {.value = "12V", .label = QObject::tr("12 V")},
                {.value = "usb", .label = QObject::tr("USB")}}),
        hours(load, "hours", QObject::tr("Hours"), QObject::tr("at all hours")),
        cycle_of(load),
        shown_if(load.has("runs"), number(load, "runs.on", QObject::tr("On for"),
                                          Dimension::duration, cycles, "15 min")),
        shown_if(load.has("runs"), number(load, "runs.every", QObject::tr("Out of every"),
                                          Dimension::duration, cycles, "45 min")),
        priority_of(load),
        truth(load, "medical", QObject::tr("Somebody's health depends on it")),
    };
}

// ---- The other tables.

QList<Field> pack_fields(const Table& pack) {
    const QString as_first = QObject::tr("as the first pack, or as usual for the kind");
    return {
        name_of(pack),
        count(pack, "count", QObject::tr("How many"), 0, 64, 1),
        choice(pack, "chemistry", QObject::tr("Kind"), {},
               {{.value = "lifepo4", .label = QObject::tr("lithium iron phosphate")},
                {.value = "agm", .label = QObject::tr("lead, sealed (AGM)")},
                {.value = "gel", .label = QObject::tr("lead, gel")},
                {.value = "flooded", .label = QObject::tr("lead, wet")}}),
        number(pack, "capacity", QObject::tr("Capacity, each"), Dimension::charge, {"Ah"}, "100 Ah",
               as_first),
        number(pack, "rated_over", QObject::tr("Capacity rated over"), Dimension::duration, {"h"},
               "20 h", as_first),
        number(pack, "voltage", QObject::tr("Voltage"), Dimension::voltage, {"V"}, "12.8 V",
               as_first),
        number(pack, "charge", QObject::tr("How full at the start"), Dimension::fraction, {"%"},
               "100 %", QObject::tr("full")),
        choice(pack, "age", QObject::tr("Age"), {},
               {{.value = "fresh", .label = QObject::tr("new")},
                {.value = "mid_life", .label = QObject::tr("half its life")},
                {.value = "end_of_life", .label = QObject::tr("old")}}),
        number(pack, "tested_capacity", QObject::tr("Capacity found by a test"), Dimension::charge,
               {"Ah"}, "92 Ah", QObject::tr("not tested")),
        number(pack, "lead_resistance", QObject::tr("Lead and connector, both ways"),
               Dimension::resistance, {"mOhm"}, "2 mOhm", QObject::tr("as usual")),
        number(pack, "current_limit", QObject::tr("Most it may give"), Dimension::current, {"A"},
               "100 A", QObject::tr("as usual for the kind")),
        number(pack, "fuse", QObject::tr("Its fuse"), Dimension::current, {"A"}, "125 A",
               QObject::tr("none told")),
        number(pack, "weight", QObject::tr("Weight, each"), Dimension::mass, {"kg", "lb"}, "11 kg",
               QObject::tr("not told")),
    };
}

QList<Field> panel_fields(const Table& panel) {
    return {
        count(panel, "count", QObject::tr("How many"), 0, 64, 1),
        number(panel, "power", QObject::tr("Power, each"), Dimension::power, {"W"}, "100 W"),
        choice(panel, "placement", QObject::tr("How they stand"), "flat",
               {{.value = "flat", .label = QObject::tr("flat on the ground")},
                {.value = "fixed", .label = QObject::tr("propped up")},
                {.value = "aimed", .label = QObject::tr("turned by hand")}}),
        number(panel, "azimuth", QObject::tr("Faces, from north by east"), Dimension::angle,
               {"deg"}, "180 deg", QObject::tr("towards the sun at noon")),
        hours(panel, "out", QObject::tr("Hours outside"), QObject::tr("always")),
    };
}

QList<Field> outage_fields(const Table& outage) {
    return {
        choice(outage, "cause", QObject::tr("The first sky"), "unknown",
               {{.value = "storm", .label = QObject::tr("storm")},
                {.value = "clear", .label = QObject::tr("clear")},
                {.value = "unknown", .label = QObject::tr("unknown")}}),
        number(outage, "battery_temperature", QObject::tr("Warmth of the packs"),
               Dimension::temperature, {"degC", "degF"}, "5 degC", QObject::tr("as assumed")),
    };
}

QList<Field> storage_fields(const Table& storage) {
    return {
        number(storage, "temperature", QObject::tr("Warmth of the place"), Dimension::temperature,
               {"degC", "degF"}, "25 degC", QObject::tr("as assumed")),
        number(storage, "drain", QObject::tr("Drain that stays on"), Dimension::current,
               {"mA", "A"}, "15 mA", QObject::tr("none told")),
        truth(storage, "master_switch_open", QObject::tr("Master switch open")),
        truth(storage, "maintained", QObject::tr("On a maintenance charger")),
    };
}

QList<Field> inverter_fields(const Table& inverter) {
    return {
        number(inverter, "continuous", QObject::tr("Power without end"), Dimension::power, {"W"},
               "2400 W"),
        number(inverter, "surge", QObject::tr("Power for a moment"), Dimension::power, {"W"},
               "4800 W", QObject::tr("as assumed")),
        number(inverter, "surge_lasts", QObject::tr("That moment lasts"), Dimension::duration,
               {"s"}, "1 s", QObject::tr("not known")),
        number(inverter, "idle", QObject::tr("Draw with nothing plugged in"), Dimension::power,
               {"W"}, "18 W", QObject::tr("as assumed")),
    };
}

using FieldsOf = QList<Field> (*)(const Table&);

FieldsOf maker_of(const QString& table) {
    static const QList<std::pair<const char*, FieldsOf>> makers{
        {"load", load_fields},     {"pack", pack_fields},       {"panel", panel_fields},
        {"outage", outage_fields}, {"storage", storage_fields}, {"inverter", inverter_fields}};
    for (const auto& [name, maker] : makers) {
        if (table == QLatin1String(name)) return maker;
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

}  // namespace

QList<Field> fields_of(const Node& document, const QString& table, int number) {
    const FieldsOf maker = maker_of(table);
    const Node* node = document.find(table.toStdString());
    if (!maker || !node) return {};
    if (node->kind != Node::Kind::list) return maker({.node = node, .path = table});
    if (number < 0 || number >= static_cast<int>(node->items.size())) return {};
    return maker({.node = &node->items[static_cast<std::size_t>(number)],
                  .path = QStringLiteral("%1[%2]").arg(table).arg(number)});
}

Text with_field(const std::string& text, const QString& key, const QString& value) {
    const qsizetype dot = key.indexOf(QLatin1Char('.'));
    const QString table = key.left(dot);
    const QString rest = key.mid(dot + 1);
    if (value.isEmpty()) {
        auto without = without_key(text, key);
        return without ? without : Text(text);  // what is not there need not be taken out
    }
    if (rest == u"runs") {
        return with_key(text, key, QStringLiteral("{ on = \"15 min\", every = \"45 min\" }"));
    }
    if (table.startsWith(QLatin1String("load["))) {
        const auto document = scenario::read_document(text, std::string());
        if (!document) return units::fail(document.error());
        for (const Way& way : ways) {
            const Node* loads = document->find("load");
            const int number = table.mid(5, table.size() - 6).toInt();
            const bool there =
                loads && number < static_cast<int>(loads->items.size()) &&
                loads->items[static_cast<std::size_t>(number)].find(way.table) != nullptr;
            if (rest == QLatin1String(way.asks) && !there) return with_way(text, table, way, value);
        }
    }
    return with_key(text, key, value);
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
    if (spans.isEmpty()) return {};
    return QStringLiteral("[\"%1\"]").arg(spans.join(QStringLiteral("\", \"")));
}

}  // namespace touch
