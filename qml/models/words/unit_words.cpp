#include "models/words/unit_words.hpp"

#include <QCoreApplication>

namespace touch {

namespace {

struct Spoken {
    const char* unit;  // as a file writes it
    const char* word;
};

constexpr Spoken words_of_units[] = {
    {"%", QT_TRANSLATE_NOOP("units", "percent")},
    {"V", QT_TRANSLATE_NOOP("units", "volts")},
    {"A", QT_TRANSLATE_NOOP("units", "amperes")},
    {"mA", QT_TRANSLATE_NOOP("units", "milliamperes")},
    {"kA", QT_TRANSLATE_NOOP("units", "kiloamperes")},
    {"W", QT_TRANSLATE_NOOP("units", "watts")},
    {"kW", QT_TRANSLATE_NOOP("units", "kilowatts")},
    {"hp", QT_TRANSLATE_NOOP("units", "horsepower")},
    {"VA", QT_TRANSLATE_NOOP("units", "volt-amperes")},
    {"kVA", QT_TRANSLATE_NOOP("units", "kilovolt-amperes")},
    {"Wh", QT_TRANSLATE_NOOP("units", "watt-hours")},
    {"kWh", QT_TRANSLATE_NOOP("units", "kilowatt-hours")},
    {"kWh/yr", QT_TRANSLATE_NOOP("units", "kilowatt-hours a year")},
    {"kWh/m2", QT_TRANSLATE_NOOP("units", "kilowatt-hours per square metre")},
    {"Ah", QT_TRANSLATE_NOOP("units", "ampere-hours")},
    {"mOhm", QT_TRANSLATE_NOOP("units", "milliohms")},
    {"Ohm", QT_TRANSLATE_NOOP("units", "ohms")},
    {"deg", QT_TRANSLATE_NOOP("units", "degrees")},
    {"degC", QT_TRANSLATE_NOOP("units", "degrees Celsius")},
    {"degF", QT_TRANSLATE_NOOP("units", "degrees Fahrenheit")},
    {"kg", QT_TRANSLATE_NOOP("units", "kilograms")},
    {"lb", QT_TRANSLATE_NOOP("units", "pounds")},
    {"m", QT_TRANSLATE_NOOP("units", "metres")},
    {"cm", QT_TRANSLATE_NOOP("units", "centimetres")},
    {"ft", QT_TRANSLATE_NOOP("units", "feet")},
    {"in", QT_TRANSLATE_NOOP("units", "inches")},
    {"s", QT_TRANSLATE_NOOP("units", "seconds")},
    {"min", QT_TRANSLATE_NOOP("units", "minutes")},
    {"h", QT_TRANSLATE_NOOP("units", "hours")},
    {"d", QT_TRANSLATE_NOOP("units", "days")},
};

struct Sign {
    const char* written;  // as a whole word
    const char* shown;
};

constexpr Sign signs[] = {{"degC", "°C"}, {"degF", "°F"},   {"deg", "°"},
                          {"mOhm", "mΩ"}, {"Ohm", "Ω"}, {"kWh/m2", "kWh/m²"}};

}  // namespace

QString with_signs_of_units(const QString& text) {
    for (const Sign& sign : signs) {
        const QLatin1String written(sign.written);
        const QString shown = QString::fromUtf8(sign.shown);
        if (text == written) return shown;
        // An angle stands close to its figure.
        const bool close = written == QLatin1String("deg");
        if (text.endsWith(QLatin1Char(' ') + written))
            return text.chopped(written.size() + (close ? 1 : 0)) + shown;
    }
    return text;
}

QString spoken_unit(const QString& unit) {
    for (const Spoken& spoken : words_of_units)
        if (unit == QLatin1String(spoken.unit))
            return QCoreApplication::translate("units", spoken.word);
    return unit;
}

}  // namespace touch
