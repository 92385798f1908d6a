#include "models/as_wished.hpp"

#include <atomic>
#include <cmath>

#include <QRegularExpression>

#include "models/finding_text.hpp"
#include "models/said_again.hpp"

namespace touch {

namespace {

std::atomic<unsigned>& kept_wishes() {
    static std::atomic<unsigned> bits{0};
    return bits;
}

// Each match gives way to what is made of it.
template <class Make>
QString replaced(const QString& text, const QRegularExpression& pattern, Make make) {
    QString result;
    qsizetype from = 0;
    auto matches = pattern.globalMatch(text);
    while (matches.hasNext()) {
        const QRegularExpressionMatch match = matches.next();
        result += text.mid(from, match.capturedStart() - from) + make(match);
        from = match.capturedEnd();
    }
    return result + text.mid(from);
}

QString on_twelve_hours(const QRegularExpressionMatch& time) {
    const int hour = time.captured(1).toInt();
    const int shown = hour % 12 == 0 ? 12 : hour % 12;
    return QStringLiteral("%1:%2 %3")
        .arg(shown)
        .arg(time.captured(2), hour % 24 < 12 ? QStringLiteral("AM") : QStringLiteral("PM"));
}

QString with_clock(const QString& text) {
    // Neither within 2026-01-14T18:00:00 nor within a longer row of figures.
    static const QRegularExpression clock(
        QStringLiteral("(?<![\\d:T.])([01]?\\d|2[0-4]):([0-5]\\d)(?![\\d:])"));
    return replaced(text, clock, on_twelve_hours);
}

struct OtherUnit {
    const char* metric;
    const char* us;
    double factor;  // us units in one metric
    double offset;
};

//   source  [NIST SP 811] appendix B.8, exact definitions of pound and foot
constexpr OtherUnit other_units[] = {
    {"°C", "°F", 1.8, 32.0}, {"kg", "lb", 1.0 / 0.45359237, 0.0}, {"m", "ft", 1.0 / 0.3048, 0.0}};

QString with_us_units(const QString& text) {
    static const QRegularExpression amount(
        QStringLiteral("(?<![\\w.])(-?\\d+(?:\\.\\d+)?) (°C|kg|m)(?![\\w²³/(])(?! \\()"),
        QRegularExpression::UseUnicodePropertiesOption);
    return replaced(text, amount, [](const QRegularExpressionMatch& match) {
        for (const OtherUnit& other : other_units) {
            if (match.captured(2) != QString::fromUtf8(other.metric)) continue;
            const double us = match.captured(1).toDouble() * other.factor + other.offset;
            const int digits = std::abs(us) < 10.0 ? 1 : 0;
            return QStringLiteral("%1 (%2 %3)")
                .arg(match.captured(0), QString::number(us, 'f', digits),
                     QString::fromUtf8(other.us));
        }
        return match.captured(0);
    });
}

}  // namespace

Wishes wishes() {
    const unsigned bits = kept_wishes();
    return {.twelve_hours = (bits & 1U) != 0,
            .us_units = (bits & 2U) != 0,
            .decimal_comma = (bits & 4U) != 0};
}

void set_wishes(const Wishes& wishes) {
    kept_wishes() = (wishes.twelve_hours ? 1U : 0U) | (wishes.us_units ? 2U : 0U) |
                    (wishes.decimal_comma ? 4U : 0U);
}

QString as_wished(const QString& text, const Wishes& wishes) {
    static const QRegularExpression degrees(QStringLiteral("(?<=\\d) deg([CF])\\b"));
    QString said = text;
    said.replace(degrees, QStringLiteral(" °\\1"));
    if (wishes.us_units) said = with_us_units(said);
    if (wishes.twelve_hours) said = with_clock(said);
    return said;
}

QString amount_as_wished(const QString& amount, const Wishes& wishes) {
    static const QRegularExpression point(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    QString said = as_wished(amount, wishes);
    if (wishes.decimal_comma) said.replace(point, QStringLiteral(","));
    return said;
}

QString told(std::string_view utf8) {
    return as_wished(said_again(words_of(utf8)));
}

QString told_amount(std::string_view utf8) {
    return amount_as_wished(words_of(utf8));
}

}  // namespace touch
