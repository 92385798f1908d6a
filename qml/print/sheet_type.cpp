#include "print/sheet_type.hpp"

#include <QFontMetricsF>

namespace printing {

namespace {

// Longest beginning of a word that fits, at least one character.
qsizetype fitting(const QString& word, Type type, double width) {
    qsizetype fits = 1;
    while (fits < word.size() && width_of(word.left(fits + 1), type) <= width)
        ++fits;
    return fits;
}

}  // namespace

QFont font_of(Type type) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(qRound(type.size * grain));
    font.setBold(type.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any spacing keeps letters from being joined to one sign, which searching would not find.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.01 * grain);
    return font;
}

double width_of(const QString& text, Type type) {
    return QFontMetricsF(font_of(type)).horizontalAdvance(text) / grain;
}

double ascent_of(Type type) {
    return QFontMetricsF(font_of(type)).ascent() / grain;
}

double line_height_of(Type type) {
    return QFontMetricsF(font_of(type)).height() / grain;
}

QStringList words_in(const QString& text) {
    constexpr qsizetype longest_unit = 3;
    QStringList kept;
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (const QString& word : words) {
        QString letters = word;
        letters.remove(QLatin1Char(')')).remove(QLatin1Char('.')).remove(QLatin1Char(','));
        const bool unit = letters.size() <= longest_unit && !letters.isEmpty() &&
                          !letters.front().isDigit() && !kept.isEmpty() &&
                          kept.constLast().back().isDigit() && letters != u"to" && letters != u"a";
        if (unit)
            kept.last() += QLatin1Char(' ') + word;
        else
            kept << word;
    }
    return kept;
}

QStringList broken(const QString& text, Type type, double width) {
    QStringList lines;
    QString line;
    for (QString word : words_in(text)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (width_of(longer, type) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) lines << line;
        while (width_of(word, type) > width) {
            const qsizetype fits = fitting(word, type, width);
            if (fits >= word.size()) break;
            lines << word.left(fits);
            word = word.mid(fits);
        }
        line = word;
    }
    if (!line.isEmpty()) lines << line;
    return lines;
}

}  // namespace printing
