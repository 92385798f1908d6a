// A page as pieces at finished places, in points from its upper left corner, black on white.
#pragma once

#include <QLineF>
#include <QList>
#include <QPainter>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include "print/sheet_type.hpp"

namespace printing {

// One line of text. The box is what its font takes: nothing else may stand in it.
struct Words {
    QRectF box;
    QString text;
    Type type;
};

struct Stroke {
    QLineF line;
    double width = 1.0;
};

// A closed outline filled with a grey: 0 is black, 1 is white.
struct Shape {
    QPolygonF outline;
    double grey = 0.0;
};

struct Sheet {
    QSizeF size;
    QList<Words> words;
    QList<Stroke> strokes;
    QList<QRectF> boxes;  // empty ones, to tick
    QList<Shape> shapes;  // drawn first
    bool fits = true;     // false: something stands outside the margins
};

// Everything moved by that much.
void move(Sheet& sheet, double right, double down);
void add(Sheet& sheet, const Sheet& other);

// The painter's unit is the point.
void paint(QPainter& painter, const Sheet& sheet);

}  // namespace printing
