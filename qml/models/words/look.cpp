#include "models/words/look.hpp"

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

#include "models/words/saved_words.hpp"
#include "models/words/told.hpp"
#include "models/words/typed_amount.hpp"
#include "models/words/unit_words.hpp"
#include "models/words/usual_words.hpp"

namespace touch {

Look::Look(QQmlEngine* engine, QObject* parent) : QObject(parent), engine_(engine) {
    if (qGuiApp) qGuiApp->installEventFilter(this);
}

QStringList Look::themes() {
    return {QStringLiteral("dark"), QStringLiteral("light"), QStringLiteral("contrast"),
            QStringLiteral("system")};
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
    first_ = kept.isEmpty();
    const QString theme = kept[QStringLiteral("theme")].toString(theme_);
    if (themes().contains(theme)) theme_ = theme;
    text_scale_ = std::clamp(kept[QStringLiteral("textScale")].toDouble(text_scale_), 1.0, 2.0);
    still_ = kept[QStringLiteral("still")].toBool(still_);
    units_ = kept[QStringLiteral("units")].toString(usual_units());
    clock_ = kept[QStringLiteral("clock")].toString(usual_clock());
    language_ = kept[QStringLiteral("language")].toString(usual_language());
    tell();
    if (first_) keep();  // the next start is not the first
    emit changed();
}

QString Look::amount(const QString& of_file) const {
    return with_own_mark(of_file);
}

QVariantList Look::languages() const {
    QVariantList languages;
    for (const std::string_view code : words::language_codes()) {
        const std::string_view name = words::own_name(*words::language(code));
        languages << QVariantMap{{"value", QString::fromStdString(std::string(code))},
                                 {"label", QString::fromStdString(std::string(name))}};
    }
    return languages;
}

QString Look::decimal_mark() const {
    return touch::decimal_mark();
}

QString Look::unitShown(const QString& of_file) const {
    return with_signs_of_units(of_file);
}

QString Look::unitSpoken(const QString& of_file) const {
    return spoken_unit(of_file);
}

void Look::set_theme(const QString& theme) {
    if (!themes().contains(theme)) return;
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
    words::Language language = words::language(language_.toStdString()).value_or(words::english());
    // Labels of the screens that nobody has put into that language stay English.
    if (language.catalogue != nullptr &&
        translator_.load(QStringLiteral(":/i18n/candlemark_%1.qm").arg(language_)))
        QCoreApplication::installTranslator(&translator_);
    QLocale::setDefault(language.catalogue != nullptr ? QLocale(language_)
                                                      : QLocale(QLocale::English));
    language.twelve_hours = clock_ == QStringLiteral("12");
    language.us_units = units_ == QStringLiteral("us");
    set_language_wished(language);
    if (engine_) engine_->retranslate();
    emit told();
}

}  // namespace touch
