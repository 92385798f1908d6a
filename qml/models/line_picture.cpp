#include "models/line_picture.hpp"

#include <algorithm>
#include <array>

#include <QPainter>
#include <QPainterPath>

namespace touch {

namespace {

constexpr double square_side = 48.0;  // of the square that the strokes are given in
constexpr double width_of_line = 2.4;

// M x y: begin, L x y: line, Q x y x y: curve, R x y w h: box, O x y r: circle.
struct Drawing {
    const char* name;
    const char* strokes;
};

constexpr std::array drawings{
    Drawing{"lamp",
            "O 24 18 11 M 19 28 L 19 34 L 29 34 L 29 28 M 20 38 L 28 38 M 22 42 L 26 42 "
            "M 20 18 L 24 24 L 28 18"},
    Drawing{"phone", "R 15 5 18 38 M 15 11 L 33 11 M 15 36 L 33 36 O 24 39.5 0.8"},
    Drawing{"router",
            "R 6 28 36 12 M 13 28 L 9 10 M 35 28 L 39 10 O 14 34 1 O 20 34 1 "
            "M 28 34 L 36 34"},
    Drawing{"laptop", "R 10 10 28 20 M 4 38 L 44 38 L 38 30 M 10 30 L 4 38 M 19 35 L 29 35"},
    Drawing{"television", "R 5 9 38 25 M 16 41 L 32 41 M 24 34 L 24 41"},
    Drawing{"refrigerator",
            "R 13 4 22 38 M 13 17 L 35 17 M 18 9 L 18 13 M 18 21 L 18 29 "
            "M 16 42 L 16 45 M 32 42 L 32 45"},
    Drawing{"freezer",
            "R 5 18 38 22 M 5 18 L 9 9 L 39 9 L 43 18 M 24 23 L 24 35 M 18.8 26 L 29.2 32 "
            "M 29.2 26 L 18.8 32"},
    Drawing{"heating",
            "R 10 6 28 36 M 10 30 L 38 30 M 17 36 L 31 36 M 24 26 Q 15 22 22 11 "
            "Q 24 16 27 15 Q 33 22 24 26"},
    Drawing{"breathing",
            "R 5 22 20 16 O 12 30 3.5 M 25 27 Q 33 27 33 18 Q 33 12 38 12 "
            "M 36 7 L 43 10 L 41 18 L 35 16 L 36 7"},
    Drawing{"oxygen",
            "R 16 14 16 29 M 20 14 L 20 9 L 28 9 L 28 14 M 24 9 L 24 5 M 20 5 L 28 5 "
            "O 24 27 4 M 16 36 L 32 36"},
    Drawing{"pump",
            "R 14 16 20 18 M 18 34 L 18 39 L 30 39 L 30 34 M 34 21 L 40 21 L 40 6 "
            "M 4 43 Q 9 39 14 43 Q 19 47 24 43 Q 29 39 34 43 Q 39 47 44 43 M 20 16 L 20 10 L 28 10 "
            "L 28 16"},
    Drawing{"fan",
            "O 24 20 15 O 24 20 2.5 M 24 17.5 Q 30 8 24 7 M 26.5 21 Q 36 24 36 18 "
            "M 22 22 Q 14 28 19 32 M 24 35 L 24 42 M 15 43 L 33 43"},
    Drawing{"battery",
            "R 5 15 38 26 M 11 15 L 11 10 L 18 10 L 18 15 M 30 15 L 30 10 L 37 10 L 37 15 "
            "M 11 24 L 18 24 M 33.5 20.5 L 33.5 27.5 M 30 24 L 37 24"},
    Drawing{"panel",
            "M 12 8 L 40 8 L 36 32 L 8 32 L 12 8 M 21 8 L 17 32 M 31 8 L 27 32 M 10 20 L 38 20 "
            "M 22 32 L 22 42 M 14 42 L 30 42"},
};

// The next number of a list of strokes.
double next_number(QStringList& words) {
    return words.isEmpty() ? 0.0 : words.takeFirst().toDouble();
}

QPainterPath path_of(const char* strokes) {
    QPainterPath path;
    QStringList words = QString::fromLatin1(strokes).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    while (!words.isEmpty()) {
        const QString stroke = words.takeFirst();
        const double x = next_number(words);
        const double y = next_number(words);
        if (stroke == QStringLiteral("M")) path.moveTo(x, y);
        if (stroke == QStringLiteral("L")) path.lineTo(x, y);
        if (stroke == QStringLiteral("O")) {
            const double radius = next_number(words);
            path.addEllipse(QPointF(x, y), radius, radius);
        }
        if (stroke == QStringLiteral("Q") || stroke == QStringLiteral("R")) {
            const double first = next_number(words);
            const double second = next_number(words);
            if (stroke == QStringLiteral("Q"))
                path.quadTo(x, y, first, second);
            else
                path.addRoundedRect(x, y, first, second, 3.0, 3.0);
        }
    }
    return path;
}

}  // namespace

LinePicture::LinePicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &LinePicture::changed, this, [this] { update(); });
}

void LinePicture::paint(QPainter* painter) {
    const double scale = std::min(width(), height()) / square_side;
    painter->translate((width() - scale * square_side) / 2.0,
                       (height() - scale * square_side) / 2.0);
    painter->scale(scale, scale);
    painter->setPen(QPen(ink_, width_of_line, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const Drawing& drawing : drawings)
        if (name_ == QLatin1String(drawing.name)) painter->drawPath(path_of(drawing.strokes));
}

QStringList LinePicture::names() {
    QStringList names;
    for (const Drawing& drawing : drawings)
        names << QString::fromLatin1(drawing.name);
    return names;
}

}  // namespace touch
