#include "models/now/note_parts.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <QObject>

#include "units/text.hpp"

namespace touch {

namespace {

using scenario::Happened;
using scenario::LogEntry;
using scenario::Scenario;

QString as_name(const std::string& name) {
    return QString::fromStdString(name);
}

template <class Quantity>
std::optional<Quantity> number_in(const TypedNumber& number) {
    if (number.typed.isEmpty()) return std::nullopt;
    const auto read =
        units::read<Quantity>((number.typed + QLatin1Char(' ') + number.unit).toStdString());
    return read ? std::optional(*read) : std::nullopt;
}

struct Event {
    const char* key;
    Happened happened;
};

constexpr std::array events{
    Event{"left", Happened::pack_left},     Event{"back", Happened::pack_back},
    Event{"joined", Happened::pack_joined}, Event{"fuse", Happened::fuse_opened},
    Event{"supply", Happened::supply_back}, Event{"expected", Happened::expected_back}};

std::optional<Happened> event_of(const QString& key) {
    const auto* found = std::ranges::find_if(
        events, [&](const Event& event) { return key == QLatin1String(event.key); });
    return found == events.end() ? std::nullopt : std::optional(found->happened);
}

QList<NoteChoice> events_to_pick() {
    return {{"left", QObject::tr("A pack left"), {}},
            {"back", QObject::tr("A pack came back"), {}},
            {"joined", QObject::tr("Another pack joined"), {}},
            {"fuse", QObject::tr("A fuse opened"), {}},
            {"expected", QObject::tr("Supply expected"), {}},
            {"supply", QObject::tr("The supply is back"), {}}};
}

QList<NoteChoice> packs_to_pick(const Scenario& scenario) {
    QList<NoteChoice> packs;
    for (const auto& pack : scenario.packs)
        packs.append({as_name(pack.name), as_name(pack.name), {}});
    return packs;
}

QList<NoteChoice> loads_to_pick(const Scenario& scenario, bool tell_whether_on) {
    QList<NoteChoice> loads;
    for (const auto& load : scenario.loads) {
        const auto last = scenario.log.empty() ? scenario.outage.starts
                                               : std::ranges::max(scenario.log, {}, [](auto& one) {
                                                     return one.at.since_1970();
                                                 }).at;
        const QString state = !tell_whether_on                    ? QString()
                              : is_off(scenario, load.name, last) ? QObject::tr("is off")
                                                                  : QObject::tr("is on");
        loads.append({as_name(load.name), as_name(load.name), state});
    }
    return loads;
}

// The load that has this word in its name, where there is one alone: as a line of the log is
// understood.
QString load_called(const Scenario& scenario, const QString& word) {
    QStringList found;
    for (const auto& load : scenario.loads)
        if (as_name(load.name).contains(word, Qt::CaseInsensitive)) found << as_name(load.name);
    return found.size() == 1 ? found.front() : QString();
}

QList<NoteChoice> places_to_pick(const Scenario& scenario) {
    QList<NoteChoice> places;
    const auto add = [&](const QString& key, const QString& name) {
        const bool there =
            std::ranges::any_of(places, [&](const NoteChoice& one) { return one.key == key; });
        if (!there) places.append({key, name, {}});
    };
    const auto add_cold = [&](const QString& word, const QString& name) {
        const QString load = load_called(scenario, word);
        add(load.isEmpty() ? word : load, load.isEmpty() ? name : load);
    };
    add_cold("refrigerator", QObject::tr("refrigerator"));
    add_cold("freezer", QObject::tr("freezer"));
    add("room", QObject::tr("room"));
    for (const LogEntry& entry : scenario.log)
        if (entry.keeps) add(as_name(*entry.keeps), as_name(*entry.keeps));
    return places;
}

bool reads_volts(const NoteParts& parts) {
    return parts.kind == "volts" && parts.number.unit == "V";
}

bool is_of_packs(const QString& event) {
    return event == "left" || event == "back" || event == "joined";
}

// ---- The entry, kind by kind; each gives whether nothing is missing.

bool take_volts(const NoteParts& parts, LogEntry& entry) {
    if (!parts.what.isEmpty()) entry.pack = parts.what.toStdString();
    if (parts.number.typed.isEmpty()) return false;
    if (parts.number.unit == "%") {
        entry.shows = number_in<units::StateOfCharge>(parts.number);
        return entry.shows.has_value();
    }
    const QString volts = with_its_point(parts.number.typed) + QStringLiteral(" V");
    const auto shown = scenario::read_voltage_shown(volts.toStdString());
    if (!shown) return false;
    entry.reads = *shown;
    if (parts.detail == "under") {
        const auto power = number_in<units::Power>(parts.other);
        const auto current = number_in<units::Current>(parts.other);
        entry.under = scenario::DrawnMeanwhile{.power = power, .current = current};
        return power.has_value() != current.has_value();
    }
    if (!parts.detail.isEmpty())
        entry.rested = units::read<units::Duration>(parts.detail.toStdString()).value();
    return true;
}

bool take_meter(const NoteParts& parts, LogEntry& entry) {
    entry.load = parts.what.toStdString();
    const auto energy = number_in<units::Energy>(parts.number);
    const auto over = parts.detail == "other"
                          ? number_in<units::Duration>(parts.other)
                          : number_in<units::Duration>({.typed = parts.detail.section(' ', 0, 0),
                                                        .unit = parts.detail.section(' ', 1)});
    if (parts.what.isEmpty() || !energy || !over) return false;
    entry.metered = scenario::MeteredUse{.energy = *energy, .over = *over, .room = {}};
    return true;
}

bool take_sun(const NoteParts& parts, LogEntry& entry) {
    entry.sun = scenario::SunCounted{.taken = number_in<units::Energy>(parts.number)};
    constexpr std::array skies{
        std::pair("clear", scenario::SeenSky::clear), std::pair("thin", scenario::SeenSky::thin),
        std::pair("grey", scenario::SeenSky::grey), std::pair("dark", scenario::SeenSky::dark)};
    for (const auto& [key, sky] : skies)
        if (parts.detail == QLatin1String(key)) entry.sky = sky;
    return entry.sun->taken.has_value();
}

bool take_thermometer(const NoteParts& parts, LogEntry& entry) {
    entry.keeps = parts.what.toStdString();
    entry.temperature = number_in<units::Temperature>(parts.number);
    return !parts.what.isEmpty() && entry.temperature;
}

bool take_switched(const Scenario& scenario, const NoteParts& parts, LogEntry& entry) {
    entry.load = parts.what.toStdString();
    entry.happened =
        is_off(scenario, *entry.load, parts.at) ? Happened::switched_on : Happened::switched_off;
    return !parts.what.isEmpty();
}

bool take_happened(const Scenario& scenario, const NoteParts& parts, LogEntry& entry) {
    entry.happened = event_of(parts.what);
    if (!entry.happened) return false;
    if (parts.what == "expected") entry.by = parts.by;
    if (parts.what == "expected" || parts.what == "supply") return true;
    if (parts.detail.isEmpty()) return false;
    if (parts.detail.startsWith("load:")) {
        entry.load = parts.detail.mid(5).toStdString();
        return true;
    }
    entry.pack = parts.detail.toStdString();
    if (packs_named(scenario, parts.detail) > 1) entry.count = parts.count;
    return true;
}

}  // namespace

QList<NoteChoice> choices_of(const Scenario& scenario, const QString& kind) {
    if (kind == "meter" || kind == "switched") return loads_to_pick(scenario, kind == "switched");
    if (kind == "thermometer") return places_to_pick(scenario);
    if (kind == "happened") return events_to_pick();
    if (kind != "volts" || scenario.packs.size() < 2) return {};
    return QList<NoteChoice>{{"", QObject::tr("all, joined"), {}}} + packs_to_pick(scenario);
}

QList<NoteChoice> details_of(const Scenario& scenario, const NoteParts& parts) {
    if (reads_volts(parts))
        return {{"", QObject::tr("no more known"), {}},
                {"1 h", QObject::tr("rested an hour"), {}},
                {"8 h", QObject::tr("rested a night"), {}},
                {"under", QObject::tr("while in use…"), {}}};
    if (parts.kind == "meter")
        return {{"1 h", QObject::tr("in 1 h"), {}},
                {"6 h", QObject::tr("in 6 h"), {}},
                {"12 h", QObject::tr("in 12 h"), {}},
                {"24 h", QObject::tr("in 24 h"), {}},
                {"other", QObject::tr("in…"), {}}};
    if (parts.kind == "sun")
        return {{"clear", QObject::tr("clear sky"), {}},
                {"thin", QObject::tr("sun through cloud"), {}},
                {"grey", QObject::tr("grey"), {}},
                {"dark", QObject::tr("dark"), {}}};
    if (parts.kind != "happened") return {};
    if (is_of_packs(parts.what)) return packs_to_pick(scenario);
    if (parts.what != "fuse") return {};
    QList<NoteChoice> whose = packs_to_pick(scenario);
    for (const auto& load : scenario.loads)
        whose.append({QStringLiteral("load:") + as_name(load.name), as_name(load.name), {}});
    return whose;
}

QStringList units_of(const NoteParts& parts, bool of_other, bool fahrenheit) {
    if (of_other) return parts.kind == "meter" ? QStringList{"h", "d"} : QStringList{"W", "A"};
    if (parts.kind == "volts") return {"V", "%"};
    if (parts.kind == "meter") return {"kWh", "Wh"};
    if (parts.kind == "sun") return {"Wh", "kWh"};
    if (parts.kind != "thermometer") return {};
    return fahrenheit ? QStringList{"degF", "degC"} : QStringList{"degC", "degF"};
}

QString with_its_point(const QString& typed) {
    const bool digits_alone = std::ranges::all_of(typed, [](QChar sign) { return sign.isDigit(); });
    if (!digits_alone || typed.size() < 3 || typed.size() > 4) return typed;
    return typed.left(2) + QLatin1Char('.') + typed.mid(2);
}

bool is_off(const Scenario& scenario, const std::string& load, units::LocalTime at) {
    bool off = false;
    for (const std::size_t place : scenario::standing(scenario.log)) {
        const LogEntry& entry = scenario.log[place];
        if (at < entry.at) break;
        if (entry.load != load || !entry.happened) continue;
        if (*entry.happened == Happened::switched_off) off = true;
        if (*entry.happened == Happened::switched_on) off = false;
    }
    return off;
}

int packs_named(const Scenario& scenario, const QString& name) {
    for (const auto& pack : scenario.packs)
        if (as_name(pack.name) == name) return pack.count;
    return 0;
}

std::optional<LogEntry> entry_of(const Scenario& scenario, const NoteParts& parts) {
    LogEntry entry{.at = parts.at};
    const bool whole = parts.kind == "volts"         ? take_volts(parts, entry)
                       : parts.kind == "meter"       ? take_meter(parts, entry)
                       : parts.kind == "sun"         ? take_sun(parts, entry)
                       : parts.kind == "thermometer" ? take_thermometer(parts, entry)
                       : parts.kind == "switched"    ? take_switched(scenario, parts, entry)
                       : parts.kind == "happened"    ? take_happened(scenario, parts, entry)
                                                     : false;
    return whole ? std::optional(entry) : std::nullopt;
}

}  // namespace touch
