#include "models/fields_of_build.hpp"

#include <QLocale>
#include <QObject>

#include "models/finding_text.hpp"

namespace touch {

using namespace making;
using units::Dimension;

namespace {

QString as_assumed() {
    return QObject::tr("as assumed");
}

QString not_told() {
    return QObject::tr("not told");
}

QStringList names_of(const scenario::Node* document, const char* table) {
    QStringList names;
    const scenario::Node* list = document ? document->find(table) : nullptr;
    if (!list) return names;
    for (const scenario::Node& item : list->items) {
        if (const scenario::Node* name = item.find("name")) names << words_of(name->text);
    }
    return names;
}

// What a circuit may feed: all that has a name, and the parts there is one of.
QStringList fed_by_circuits(const scenario::Node* document) {
    QStringList names =
        names_of(document, "load") + names_of(document, "pack") + names_of(document, "charger");
    for (const char* one : {"inverter", "charge_controller"}) {
        if (document && document->find(one)) names << QLatin1String(one);
    }
    if (document && document->find("panel")) names << QStringLiteral("panels");
    return names;
}

// The usual sizes of copper wire in a 12 V unit.
Field wire_size(const Table& table, const char* key, const QString& label, const QString& silent) {
    QList<FieldOption> sizes;
    if (!silent.isEmpty()) sizes.append({.value = QString(), .label = silent});
    for (const char* size :
         {"18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0"}) {
        const QString words = QStringLiteral("%1 AWG").arg(QLatin1String(size));
        sizes.append({.value = words, .label = words});
    }
    return choice(table, key, label, {}, sizes);
}

Field voltage_rating(const Table& link) {
    return number(link, "voltage", QObject::tr("Rated for at most"), Dimension::voltage, {"V"},
                  "32 V", not_told());
}

Field takes_wire(const Table& link) {
    return wire_size(link, "takes", QObject::tr("Largest wire it takes"), not_told());
}

QList<Field> fuse_fields(const Table& fuse) {
    return {
        number(fuse, "fuse", QObject::tr("Rating of the fuse"), Dimension::current, {"A"}, "7.5 A"),
        choice(fuse, "family", QObject::tr("Kind of fuse"), {},
               {{.value = "", .label = as_assumed()},
                {.value = "blade", .label = QObject::tr("blade")},
                {.value = "maxi blade", .label = QObject::tr("large blade")},
                {.value = "strip 30 mm", .label = QObject::tr("strip, 30 mm")},
                {.value = "strip 51 mm", .label = QObject::tr("strip, 51 mm")},
                {.value = "anl", .label = QObject::tr("bolted limiter (ANL)")},
                {.value = "terminal", .label = QObject::tr("on the terminal")},
                {.value = "class T", .label = QObject::tr("class T")},
                {.value = "cartridge", .label = QObject::tr("cartridge")},
                {.value = "breaker", .label = QObject::tr("circuit breaker")}}),
        voltage_rating(fuse),
        number(fuse, "interrupts", QObject::tr("Breaks at most"), Dimension::current, {"A", "kA"},
               "1 kA", as_assumed()),
    };
}

QList<Field> switch_fields(const Table& part) {
    return {
        number(part, "switch", QObject::tr("Rating of the switch"), Dimension::current, {"A"},
               "10 A"),
        choice(part, "rated_for", QObject::tr("Rated for"), {},
               {{.value = "", .label = not_told()},
                {.value = "dc", .label = QObject::tr("direct current")},
                {.value = "ac", .label = QObject::tr("alternating current")},
                {.value = "both", .label = QObject::tr("both")}}),
        voltage_rating(part),
        takes_wire(part),
    };
}

QList<Field> wire_fields(const Table& wire) {
    return {
        wire_size(wire, "wire", QObject::tr("Size of the wire"), {}),
        shown_if(!wire.has("round_trip"), number(wire, "length", QObject::tr("Length, one way"),
                                                 Dimension::length, {"ft", "m", "cm"}, "3 ft")),
        shown_if(wire.has("round_trip"),
                 number(wire, "round_trip", QObject::tr("Length, out and back"), Dimension::length,
                        {"ft", "m", "cm"}, "6 ft")),
        number(wire, "insulation", QObject::tr("Insulation stands"), Dimension::temperature,
               {"degC", "degF"}, "105 degC", as_assumed()),
        number(wire, "terminals", QObject::tr("Terminals stand"), Dimension::temperature,
               {"degC", "degF"}, "75 degC", QObject::tr("as the insulation")),
        count(wire, "runs", QObject::tr("Wires side by side"), 1, 16, 1),
    };
}

QList<Field> connector_fields(const Table& connector) {
    return {
        number(connector, "connector", QObject::tr("Rating of the connector"), Dimension::current,
               {"A"}, "50 A"),
        words(connector, "part", QObject::tr("Which connector"), "two-pole 50", not_told()),
        number(connector, "resistance", QObject::tr("Its resistance"), Dimension::resistance,
               {"mOhm"}, "0.5 mOhm", as_assumed()),
        voltage_rating(connector),
        takes_wire(connector),
    };
}

QList<Field> outlet_fields(const Table& outlet) {
    return {
        number(outlet, "outlet", QObject::tr("Rating of the outlet"), Dimension::current, {"A"},
               "15 A"),
        truth(outlet, "ground_fault", QObject::tr("Trips on a ground fault")),
        voltage_rating(outlet),
        takes_wire(outlet),
    };
}

QList<Field> monthly_fields(const Table& place, const char* key, const QString& label,
                            Dimension dimension, const QStringList& units, const QString& example) {
    QList<Field> fields;
    const scenario::Node* list = node_at(place.node, QLatin1String(key));
    for (int month = 0; month < 12; ++month) {
        const bool there = list && month < static_cast<int>(list->items.size());
        fields.append({.key = QStringLiteral("%1[%2]").arg(place.key(key)).arg(month),
                       .kind = Field::Kind::number,
                       .label = label.arg(QLocale().standaloneMonthName(month + 1)),
                       .value = there ? words_of(list->items[static_cast<std::size_t>(month)].text)
                                      : QString(),
                       .silent = as_assumed(),
                       .example = example,
                       .dimension = dimension,
                       .units = units});
    }
    return fields;
}

}  // namespace

QList<Field> circuit_fields(const Table& circuit) {
    return {
        name_of(circuit),
        several(circuit, "feeds", QObject::tr("Feeds"), fed_by_circuits(circuit.document)),
        choice(circuit, "from", QObject::tr("Begins at"), {},
               {{.value = "", .label = QObject::tr("as usual for what it feeds")},
                {.value = "bus", .label = QObject::tr("the bus")},
                {.value = "inverter", .label = QObject::tr("the inverter's outlets")}}),
        number(circuit, "drop_limit", QObject::tr("Voltage it may lose"), Dimension::fraction,
               {"%"}, "3 %", QObject::tr("by what it feeds")),
        choice(circuit, "neutral", QObject::tr("Neutral"), "unknown",
               {{.value = "unknown", .label = QObject::tr("not known")},
                {.value = "bonded", .label = QObject::tr("bonded to ground")},
                {.value = "floating", .label = QObject::tr("floating")},
                {.value = "switched", .label = QObject::tr("switched")},
                {.value = "split", .label = QObject::tr("split")}}),
    };
}

QList<Field> link_fields(const Table& link) {
    if (link.has("fuse")) return fuse_fields(link);
    if (link.has("switch")) return switch_fields(link);
    if (link.has("wire")) return wire_fields(link);
    if (link.has("connector")) return connector_fields(link);
    if (link.has("outlet")) return outlet_fields(link);
    return {};
}

QList<Field> controller_fields(const Table& controller) {
    return {
        choice(controller, "kind", QObject::tr("Kind"), {},
               {{.value = "mppt", .label = QObject::tr("finds the best voltage (MPPT)")},
                {.value = "pwm", .label = QObject::tr("switches the panels through (PWM)")}}),
        number(controller, "input_limit", QObject::tr("Takes from the panels at most"),
               Dimension::power, {"W"}, "520 W", QObject::tr("no limit")),
        number(controller, "output_limit", QObject::tr("Gives to the packs at most"),
               Dimension::current, {"A"}, "30 A", QObject::tr("no limit")),
        number(controller, "voltage_limit", QObject::tr("Stands from the panels at most"),
               Dimension::voltage, {"V"}, "100 V", as_assumed()),
        number(controller, "efficiency", QObject::tr("Efficiency"), Dimension::fraction, {"%"},
               "96 %", as_assumed()),
    };
}

QList<Field> charger_fields(const Table& charger) {
    return {
        name_of(charger),
        choice(charger, "kind", QObject::tr("Kind"), {},
               {{.value = "wall", .label = QObject::tr("from the wall")},
                {.value = "vehicle", .label = QObject::tr("from a vehicle")},
                {.value = "generator", .label = QObject::tr("from a generator")}}),
        number(charger, "current", QObject::tr("Charging current"), Dimension::current, {"A"},
               "20 A"),
        hours(charger, "hours", QObject::tr("Hours"), QObject::tr("at all hours")),
        number(charger, "efficiency", QObject::tr("Efficiency"), Dimension::fraction, {"%"}, "85 %",
               as_assumed()),
        number(charger, "generator_rating", QObject::tr("Rating of the generator"),
               Dimension::power, {"W"}, "2000 W", not_told()),
    };
}

QList<Field> case_fields(const Table& enclosure) {
    const auto side = [&enclosure](const char* key, const QString& label) {
        return number(enclosure, key, label, Dimension::length, {"cm", "in", "m"}, "45 cm",
                      as_assumed());
    };
    return {
        side("length", QObject::tr("Length of the case")),
        side("width", QObject::tr("Width of the case")),
        side("height", QObject::tr("Height of the case")),
        choice(enclosure, "material", QObject::tr("Made of"), {},
               {{.value = "", .label = as_assumed()},
                {.value = "plastic", .label = QObject::tr("plastic")},
                {.value = "steel", .label = QObject::tr("steel")}}),
        choice(enclosure, "lid", QObject::tr("Lid while in use"), {},
               {{.value = "", .label = as_assumed()},
                {.value = "open", .label = QObject::tr("open")},
                {.value = "closed", .label = QObject::tr("closed")}}),
        number(enclosure, "air", QObject::tr("Air around it"), Dimension::temperature,
               {"degC", "degF"}, "30 degC", as_assumed()),
    };
}

QList<Field> place_fields(const Table& place) {
    QList<Field> fields{
        number(place, "latitude", QObject::tr("Latitude, north positive"), Dimension::angle,
               {"deg"}, "42 deg", as_assumed()),
        number(place, "longitude", QObject::tr("Longitude, east positive"), Dimension::angle,
               {"deg"}, "-87.9 deg", as_assumed()),
        number(place, "elevation", QObject::tr("Height above the sea"), Dimension::length,
               {"m", "ft"}, "200 m", as_assumed()),
        number(place, "utc_offset", QObject::tr("Clock ahead of universal time"),
               Dimension::duration, {"h"}, "-6 h", as_assumed()),
    };
    fields += monthly_fields(place, "irradiation", QObject::tr("Sun on level ground a day, %1"),
                             Dimension::irradiation, {"kWh/m2"}, "4.5 kWh/m2");
    fields += monthly_fields(place, "temperature", QObject::tr("Warmth of the air, %1"),
                             Dimension::temperature, {"degC", "degF"}, "-4 degC");
    return fields;
}

QList<Field> goal_fields(const Table& goal) {
    return {
        number(goal, "chance", QObject::tr("Chance to last the outage, at least"),
               Dimension::probability, {"%"}, "90 %", as_assumed()),
        number(goal, "carry_at_most", QObject::tr("Carried in one go, at most"), Dimension::mass,
               {"kg", "lb"}, "20 kg", as_assumed()),
        number(goal, "spend_at_most", QObject::tr("Spent at most"), Dimension::price, {}, "1500",
               QObject::tr("no limit")),
    };
}

QList<Field> motor_fields(const Table& load) {
    QList<Field> fields{choice(
        load, "motor.kind", QObject::tr("Its motor"), {},
        {{.value = "", .label = QObject::tr("no motor, or as listed")},
         {.value = "compressor_rsir", .label = QObject::tr("small compressor")},
         {.value = "compressor_csir", .label = QObject::tr("compressor with start capacitor")},
         {.value = "permanent_split_compressor", .label = QObject::tr("air conditioner")},
         {.value = "permanent_split_fan", .label = QObject::tr("fan")},
         {.value = "split_phase", .label = QObject::tr("split phase")},
         {.value = "capacitor_start", .label = QObject::tr("with start capacitor")},
         {.value = "submersible", .label = QObject::tr("submersible pump")},
         {.value = "shaded_pole", .label = QObject::tr("shaded pole")},
         {.value = "universal", .label = QObject::tr("with brushes (hand tool)")},
         {.value = "electronic", .label = QObject::tr("driven electronically")},
         {.value = "direct_current", .label = QObject::tr("direct current")}})};
    const bool there = load.has("motor");
    fields.append(shown_if(there, number(load, "motor.locked_rotor_current",
                                         QObject::tr("Starting current on its plate"),
                                         Dimension::current, {"A"}, "11 A", not_told())));
    fields.append(shown_if(there, number(load, "motor.horsepower", QObject::tr("Its rated power"),
                                         Dimension::power, {"hp", "W"}, "1/2 hp", not_told())));
    fields.append(shown_if(
        there, number(load, "motor.full_load_current", QObject::tr("Running current on its plate"),
                      Dimension::current, {"A"}, "9.8 A", not_told())));
    return fields;
}

}  // namespace touch
