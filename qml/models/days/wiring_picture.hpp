// The picture of the build: boxes and the lines between them, as the report places them.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "answers/wiring/diagram.hpp"
#include "models/answer_runner.hpp"

namespace touch {

// One straight piece of a line, in cells.
struct LinePiece {
    double x = 0.0;
    double y = 0.0;
    double across = 0.0;  // to the right
    double down = 0.0;
    QString mark;  // of the worst finding; empty where there is none
};

// Along the middles of the boxes, with one bend half way where they do not stand level.
[[nodiscard]] QList<LinePiece> pieces_of(const answers::WiringDiagram& diagram);

class WiringPicture : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::AnswerRunner* runner READ runner WRITE set_runner NOTIFY askedChanged)
    Q_PROPERTY(bool present READ present NOTIFY drawn)
    Q_PROPERTY(double width READ width NOTIFY drawn)  // cells
    Q_PROPERTY(double height READ height NOTIFY drawn)
    // {x, y, height, title, detail, caption, kind, mark, finding, spoken}; x and y are the middle.
    Q_PROPERTY(QVariantList boxes READ boxes NOTIFY drawn)
    Q_PROPERTY(QVariantList pieces READ pieces NOTIFY drawn)  // {x, y, across, down, mark}
    Q_PROPERTY(QString spoken READ spoken NOTIFY drawn)

  public:
    using QObject::QObject;

    [[nodiscard]] AnswerRunner* runner() const { return runner_; }
    void set_runner(AnswerRunner* runner);
    [[nodiscard]] bool present() const { return !boxes_.isEmpty(); }
    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] QVariantList boxes() const { return boxes_; }
    [[nodiscard]] QVariantList pieces() const { return pieces_; }
    [[nodiscard]] QString spoken() const { return spoken_; }

  signals:
    void askedChanged();
    void drawn();

  private:
    void read();

    AnswerRunner* runner_ = nullptr;
    double width_ = 0.0;
    double height_ = 0.0;
    QVariantList boxes_;
    QVariantList pieces_;
    QString spoken_;
};

}  // namespace touch
