#include "models/fields.hpp"

#include <utility>

#include <QDateTime>
#include <QObject>

#include "models/field_makers.hpp"
#include "models/fields_of_build.hpp"
#include "models/finding_text.hpp"
#include "scenario/place_of_key.hpp"
#include "scenario/save.hpp"

namespace touch {

namespace {

using namespace making;
using scenario::Node;
using units::Dimension;
using Kind = Field::Kind;

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
    return QList<Field>{
               name_of(load),
               count(load, "count", QObject::tr("How many"), 1, 1000, 1),
               way_of_knowing(load),
               shown_if(load.has("metered"),
                        number(load, "metered.energy", QObject::tr("Energy metered"),
                               Dimension::energy, energies, "1.9 kWh")),
               shown_if(load.has("metered"),
                        number(load, "metered.over", QObject::tr("Metered over"),
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
           } +
           motor_fields(load);
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
        number(pack, "charge_limit", QObject::tr("Most it may take"), Dimension::current, {"A"},
               "50 A", QObject::tr("as usual for the kind")),
        number(pack, "usable", QObject::tr("Part of it that may be used"), Dimension::fraction,
               {"%"}, "80 %", QObject::tr("as usual for the kind")),
        number(pack, "cutoff_voltage", QObject::tr("Its protection switches off at"),
               Dimension::voltage, {"V"}, "10 V", QObject::tr("as usual for the kind")),
        number(pack, "rested_voltage", QObject::tr("Voltage measured at rest"), Dimension::voltage,
               {"V"}, "13.2 V", QObject::tr("not measured")),
        number(pack, "rested_for", QObject::tr("At rest before that for"), Dimension::duration,
               {"h", "min", "d"}, "24 h", QObject::tr("not told")),
        number(pack, "fuse", QObject::tr("Its fuse"), Dimension::current, {"A"}, "125 A",
               QObject::tr("none told")),
        number(pack, "weight", QObject::tr("Weight, each"), Dimension::mass, {"kg", "lb"}, "11 kg",
               QObject::tr("not told")),
        number(pack, "price", QObject::tr("Price, each"), Dimension::price, {}, "310",
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
        number(panel, "tilt", QObject::tr("Tilt from level"), Dimension::angle, {"deg"}, "60 deg",
               QObject::tr("as assumed")),
        hours(panel, "out", QObject::tr("Hours outside"), QObject::tr("always")),
        count(panel, "in_series", QObject::tr("Joined one behind the other"), 1, 64, 1),
        number(panel, "open_circuit_voltage", QObject::tr("Open-circuit voltage"),
               Dimension::voltage, {"V"}, "22.4 V", QObject::tr("as usual")),
        number(panel, "short_circuit_current", QObject::tr("Short-circuit current"),
               Dimension::current, {"A"}, "5.9 A", QObject::tr("as usual")),
        number(panel, "weight", QObject::tr("Weight, each"), Dimension::mass, {"kg", "lb"}, "7 kg",
               QObject::tr("not told")),
        number(panel, "price", QObject::tr("Price, each"), Dimension::price, {}, "80",
               QObject::tr("not told")),
    };
}

constexpr char nobody_knows[] = "?";

bool is_open_ended(const Table& outage) {
    const Node* lasts = outage.node != nullptr ? outage.node->find("lasts") : nullptr;
    return lasts != nullptr && lasts->kind == Node::Kind::text && lasts->text == nobody_knows;
}

// A length, or by when half of such outages are over.
Field length_known(const Table& outage) {
    return {.key = outage.key("length"),
            .kind = Kind::choice,
            .label = QObject::tr("How long it lasts"),
            .value = is_open_ended(outage) ? QStringLiteral("unknown") : QStringLiteral("known"),
            .silent = {},
            .example = {},
            .options = {{.value = "known",
                         .label = QObject::tr("a length"),
                         .detail = QObject::tr("days or hours"),
                         .asks_for = outage.key("lasts")},
                        {.value = "unknown",
                         .label = QObject::tr("nobody knows"),
                         .detail = QObject::tr("half of such outages are over by then"),
                         .asks_for = outage.key("half_over_by")}}};
}

QList<Field> outage_fields(const Table& outage) {
    const bool open_ended = is_open_ended(outage);
    return {
        moment(outage, "starts", QObject::tr("Begins")),
        length_known(outage),
        shown_if(!open_ended, number(outage, "lasts", QObject::tr("Lasts"), Dimension::duration,
                                     {"d", "h"}, "4 d")),
        shown_if(open_ended, number(outage, "half_over_by", QObject::tr("Half are over by"),
                                    Dimension::duration, {"h", "d"}, "24 h")),
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
        shown_if(storage.node, moment(storage, "since", QObject::tr("Put away"))),
        number(storage, "temperature", QObject::tr("Warmth of the place"), Dimension::temperature,
               {"degC", "degF"}, "25 degC", QObject::tr("as assumed")),
        number(storage, "drain", QObject::tr("Drain that stays on"), Dimension::current,
               {"mA", "A"}, "15 mA", QObject::tr("none told")),
        truth(storage, "master_switch_open", QObject::tr("Master switch open")),
        truth(storage, "maintained", QObject::tr("On a maintenance charger")),
    };
}

QList<Field> inverter_fields(const Table& inverter) {
    QList<Field> fields{number(inverter, "continuous", QObject::tr("Power without end"),
                               Dimension::power, {"W", "kW"}, "2400 W")};
    if (!inverter.node) return fields;
    return fields +
           QList<Field>{
               number(inverter, "continuous_apparent", QObject::tr("Apparent power without end"),
                      Dimension::apparent_power, {"VA", "kVA"}, "3000 VA", QObject::tr("not told")),
               number(inverter, "surge", QObject::tr("Power for a moment"), Dimension::power,
                      {"W", "kW"}, "4800 W", QObject::tr("as assumed")),
               number(inverter, "surge_lasts", QObject::tr("That moment lasts"),
                      Dimension::duration, {"s"}, "1 s", QObject::tr("not known")),
               number(inverter, "idle", QObject::tr("Draw with nothing plugged in"),
                      Dimension::power, {"W"}, "18 W", QObject::tr("as assumed")),
               number(inverter, "cutoff_voltage", QObject::tr("Switches off below"),
                      Dimension::voltage, {"V"}, "10.5 V", QObject::tr("as assumed")),
               number(inverter, "restart_voltage", QObject::tr("Switches on again above"),
                      Dimension::voltage, {"V"}, "12.5 V", QObject::tr("as assumed")),
               number(inverter, "cutoff_delay", QObject::tr("Waits before it switches off"),
                      Dimension::duration, {"s"}, "5 s", QObject::tr("as assumed")),
               number(inverter, "output_voltage", QObject::tr("Voltage of its outlets"),
                      Dimension::voltage, {"V"}, "120 V", QObject::tr("as assumed")),
               choice(inverter, "waveform", QObject::tr("Wave"), {},
                      {{.value = "", .label = QObject::tr("as assumed")},
                       {.value = "sine", .label = QObject::tr("sine")},
                       {.value = "quasi_square", .label = QObject::tr("stepped")}}),
               hours(inverter, "off", QObject::tr("Switched off"), QObject::tr("never")),
           };
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
        {"load", load_fields},       {"pack", pack_fields},
        {"panel", panel_fields},     {"outage", outage_fields},
        {"storage", storage_fields}, {"inverter", inverter_fields},
        {"circuit", circuit_fields}, {"links", link_fields},
        {"charger", charger_fields}, {"charge_controller", controller_fields},
        {"case", case_fields},       {"place", place_fields},
        {"goal", goal_fields}};
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
