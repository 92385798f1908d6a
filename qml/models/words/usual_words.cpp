#include "models/words/usual_words.hpp"

#include <QLocale>

#include "words/language.hpp"

namespace touch {

QString usual_language() {
    const auto known = words::language(QLocale::system().name().toStdString());
    return QString::fromStdString(std::string(known.value_or(words::english()).code()));
}

QString usual_units() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
               ? QStringLiteral("us")
               : QStringLiteral("metric");
}

QString usual_clock() {
    const QString format = QLocale::system().timeFormat(QLocale::ShortFormat);
    return format.contains(QLatin1String("AP"), Qt::CaseInsensitive) ? QStringLiteral("12")
                                                                     : QStringLiteral("24");
}

}  // namespace touch
