// What lies on sheets, and whether it lies well.
#pragma once

#include <string>

#include <QStringList>
#include <gtest/gtest.h>

#include "print/sheet.hpp"

namespace printing_tests {

inline QString all_words(const QList<printing::Sheet>& sheets) {
    QStringList all;
    for (const printing::Sheet& sheet : sheets)
        for (const printing::Words& words : sheet.words)
            all << words.text;
    return all.join(QLatin1Char(' '));
}

// All words and lines lie on the paper, and no words upon others.
inline void expect_laid_out(const QList<printing::Sheet>& sheets, const std::string& of) {
    ASSERT_FALSE(sheets.isEmpty()) << of;
    for (const printing::Sheet& sheet : sheets) {
        EXPECT_FALSE(sheet.words.isEmpty()) << of << ": an empty page";
        const QRectF paper(QPointF(), sheet.size);
        for (const printing::Stroke& stroke : sheet.strokes)
            EXPECT_TRUE(paper.contains(stroke.line.p1()) && paper.contains(stroke.line.p2())) << of;
        for (qsizetype one = 0; one < sheet.words.size(); ++one) {
            const printing::Words& words = sheet.words[one];
            EXPECT_TRUE(paper.contains(words.box)) << of << ": " << words.text.toStdString();
            const QRectF own = words.box.adjusted(0.2, 0.5, -0.2, -0.5);
            for (qsizetype other = one + 1; other < sheet.words.size(); ++other)
                EXPECT_FALSE(own.intersects(sheet.words[other].box.adjusted(0.2, 0.5, -0.2, -0.5)))
                    << of << ": " << words.text.toStdString() << " and "
                    << sheet.words[other].text.toStdString();
        }
    }
}

}  // namespace printing_tests
