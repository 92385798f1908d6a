#include "models/words/number_entry.hpp"

#include <QClipboard>
#include <QGuiApplication>

#include "models/words/told.hpp"
#include "models/words/typed_amount.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

constexpr qsizetype longest = 16;  // signs; more is a slip of the finger

}  // namespace

void NumberEntry::begin(const QVariantMap& asked) {
    key_ = asked["key"].toString();
    label_ = asked["label"].toString();
    example_ = with_own_mark(asked["example"].toString());
    units_ = asked["units"].toStringList();
    dimension_ = static_cast<units::Dimension>(asked["dimension"].toInt());
    optional_ = asked["optional"].toBool();
    typed_.clear();
    unit_ = units_.value(0);
    take(with_own_mark(asked["value"].toString()));
    fresh_ = true;
    read();
}

void NumberEntry::beginVoltage(const QString& label, const QString& value) {
    begin({{"label", label},
           {"value", value},
           {"example", "12.9 V"},
           {"units", QStringList{"V"}},
           {"dimension", static_cast<int>(units::Dimension::voltage)}});
}

void NumberEntry::press(const QString& sign) {
    if (fresh_) typed_.clear();
    fresh_ = false;
    // The key of the decimal point is that of the comma where a comma is written.
    const QString mark = decimal_mark();
    if (typed_.size() < longest) typed_ += sign == u"." ? mark : sign;
    read();
}

void NumberEntry::back() {
    fresh_ = false;
    typed_.chop(1);
    read();
}

void NumberEntry::clear() {
    fresh_ = false;
    typed_.clear();
    read();
}

void NumberEntry::choose(const QString& unit) {
    unit_ = unit;
    read();
}

void NumberEntry::paste(const QString& text) {
    take(text.simplified());
    fresh_ = false;
    read();
}

void NumberEntry::pasteFromClipboard() {
    paste(QGuiApplication::clipboard()->text().left(100));
}

QString NumberEntry::value() const {
    return QStringLiteral("%1 %2").arg(for_the_file(typed_), unit_).simplified();
}

void NumberEntry::take(const QString& text) {
    qsizetype end = 0;
    while (end < text.size() &&
           (text[end].isDigit() || QStringLiteral(".,/-+ ").contains(text[end])))
        ++end;
    typed_ = text.left(end).trimmed();
    const QString unit = text.mid(end).trimmed();
    if (unit.isEmpty()) return;
    if (!units_.contains(unit)) units_.append(unit);
    unit_ = unit;
}

void NumberEntry::read() {
    reads_as_.clear();
    trouble_.clear();
    if (!typed_.isEmpty()) {
        const auto si = units::read_si(dimension_, value().toStdString());
        if (si) {
            reads_as_ = told(words::Amount{.dimension = dimension_, .si = *si, .digits = 6});
        } else {
            trouble_ = told(words::said<"{text}.">(units::in_words(si.error().front())));
        }
    }
    emit changed();
}

}  // namespace touch
