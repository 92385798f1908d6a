#include "models/look.hpp"

#include <algorithm>

#include <QCoreApplication>
#include <QDir>
#include <QEvent>
#include <QFile>
#include <QGuiApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QPalette>

#include "models/as_wished.hpp"
#include "models/said_again.hpp"
#include "models/saved_words.hpp"

namespace touch {

namespace {

// What the system's own settings suggest, until the person says otherwise.
QString language_of_the_system() {
    return QLocale::system().language() == QLocale::German ? QStringLiteral("de")
                                                           : QStringLiteral("en");
}

QString units_of_the_system() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
               ? QStringLiteral("us")
               : QStringLiteral("metric");
}

QString clock_of_the_system() {
    const QString format = QLocale::system().timeFormat(QLocale::ShortFormat);
    return format.contains(QLatin1String("AP"), Qt::CaseInsensitive) ? QStringLiteral("12")
                                                                     : QStringLiteral("24");
}

}  // namespace

Look::Look(QQmlEngine* engine, QObject* parent) : QObject(parent), engine_(engine) {
    if (qGuiApp) qGuiApp->installEventFilter(this);
}

Look* Look::create(QQmlEngine* engine, QJSEngine*) {
    return new Look(engine);  // the engine takes it
}

void Look::keepIn(const QString& folder) {
    file_ = folder + QStringLiteral("/look.json");
    QFile file(file_);
    const QJsonObject kept = file.open(QIODevice::ReadOnly)
                                 ? QJsonDocument::fromJson(file.readAll()).object()
                                 : QJsonObject();
    theme_ = kept[QStringLiteral("theme")].toString(theme_);
    text_scale_ = std::clamp(kept[QStringLiteral("textScale")].toDouble(text_scale_), 1.0, 2.0);
    still_ = kept[QStringLiteral("still")].toBool(still_);
    units_ = kept[QStringLiteral("units")].toString(units_of_the_system());
    clock_ = kept[QStringLiteral("clock")].toString(clock_of_the_system());
    language_ = kept[QStringLiteral("language")].toString(language_of_the_system());
    tell();
    emit changed();
}

QString Look::said(const QString& text) const {
    return amount_as_wished(text);
}

void Look::set_theme(const QString& theme) {
    theme_ = theme;
    keep();
    emit changed();
}

bool Look::dark() const {
    if (theme_ != QStringLiteral("system")) return theme_ != QStringLiteral("light");
    const QPalette palette = QGuiApplication::palette();
    return palette.color(QPalette::Window).lightness() <
           palette.color(QPalette::WindowText).lightness();
}

void Look::set_text_scale(double scale) {
    text_scale_ = std::clamp(scale, 1.0, 2.0);
    keep();
    emit changed();
}

void Look::set_still(bool still) {
    still_ = still;
    keep();
    emit changed();
}

void Look::set_units(const QString& units) {
    units_ = units;
    keep();
    tell();
}

void Look::set_clock(const QString& clock) {
    clock_ = clock;
    keep();
    tell();
}

void Look::set_language(const QString& language) {
    language_ = language;
    keep();
    tell();
}

bool Look::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::ApplicationPaletteChange && theme_ == QStringLiteral("system"))
        emit changed();
    return QObject::eventFilter(object, event);
}

void Look::keep() {
    if (file_.isEmpty()) return;
    const QJsonObject kept{{"theme", theme_}, {"textScale", text_scale_}, {"still", still_},
                           {"units", units_}, {"clock", clock_},          {"language", language_}};
    QDir().mkpath(QFileInfo(file_).absolutePath());
    const scenario::Saving saving = save_to(file_, QJsonDocument(kept).toJson());
    const QString trouble =
        saving.saved() ? QString()
                       : tr("How things are to look cannot be kept for the next start: %1.")
                             .arg(reason_in_words(saving));
    if (trouble == trouble_) return;
    trouble_ = trouble;
    emit troubleChanged();
}

void Look::tell() {
    QCoreApplication::removeTranslator(&translator_);
    const bool other = language_ != QStringLiteral("en") &&
                       translator_.load(QStringLiteral(":/i18n/candlemark_%1.qm").arg(language_)) &&
                       QCoreApplication::installTranslator(&translator_);
    speak_another_language(other);
    const QLocale locale(other ? QLocale(language_) : QLocale(QLocale::English));
    QLocale::setDefault(locale);
    set_wishes({.twelve_hours = clock_ == QStringLiteral("12"),
                .us_units = units_ == QStringLiteral("us"),
                .decimal_comma = locale.decimalPoint() == QStringLiteral(",")});
    if (engine_) engine_->retranslate();
    emit told();
}

}  // namespace touch
