#include "models/words/typed_amount.hpp"

#include "models/words/told.hpp"
#include "models/words/unit_words.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

constexpr int digits_kept = 6;

// Each mark that stands between two digits gives way to another.
QString with_mark_between_digits(QString text, QChar mark, const QString& other) {
    for (qsizetype at = text.size() - 2; at > 0; --at)
        if (text[at] == mark && text[at - 1].isDigit() && text[at + 1].isDigit())
            text.replace(at, 1, other);
    return text;
}

// " (41 °F)", or nothing.
QString us_units_beside(units::Dimension dimension, double si) {
    words::Language language = language_wished();
    if (!language.us_units) return {};
    const words::Amount amount{.dimension = dimension, .si = si, .digits = digits_kept};
    const std::string both = words::in(language, amount);
    language.us_units = false;
    const std::string metric = words::in(language, amount);
    return QString::fromStdString(both.substr(metric.size()));
}

}  // namespace

QString decimal_mark() {
    const words::Language language = language_wished();
    const std::string_view mark = language.decimal_mark();
    return QString::fromUtf8(mark.data(), static_cast<qsizetype>(mark.size()));
}

QString with_own_mark(const QString& amount) {
    return with_mark_between_digits(amount, QLatin1Char('.'), decimal_mark());
}

QString for_the_file(const QString& typed) {
    const QString mark = decimal_mark();
    return mark == u"." ? typed : QString(typed).replace(mark, QStringLiteral("."));
}

QString amount_in_field(const QString& amount, units::Dimension dimension) {
    const QString shown = with_signs_of_units(with_own_mark(amount));
    const auto si = units::read_si(dimension, amount.toStdString());
    const bool has_metric =
        shown.endsWith(u"°C") || shown.endsWith(u" kg") || shown.endsWith(u" m");
    return si && has_metric ? shown + us_units_beside(dimension, *si) : shown;
}

}  // namespace touch
