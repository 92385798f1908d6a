// The chance of lasting with every number of packs and panels, as cells to touch.
#pragma once

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_runner.hpp"
#include "models/file/scenario_document.hpp"

namespace touch {

class ChanceGrid : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::AnswerRunner* runner READ runner WRITE set_runner NOTIFY askedChanged)
    Q_PROPERTY(bool present READ present NOTIFY read)
    // Numbers of panels across, numbers of packs down, both from the smallest.
    Q_PROPERTY(QStringList panels READ panels NOTIFY read)
    Q_PROPERTY(QStringList packs READ packs NOTIFY read)
    // {text, step, spoken} each, row by row; step: 0 to 4, the colour from hardly any chance to
    // nearly all.
    Q_PROPERTY(QVariantList cells READ cells NOTIFY read)

  public:
    using QObject::QObject;

    // What is known of one cell, in words.
    Q_INVOKABLE QString about(int row, int column) const;
    // How long half of its outages last, in words; empty where it is not known.
    Q_INVOKABLE QString half(int row, int column) const;

    [[nodiscard]] AnswerRunner* runner() const { return runner_; }
    void set_runner(AnswerRunner* runner);
    [[nodiscard]] bool present() const { return !cells_.isEmpty(); }
    [[nodiscard]] QStringList panels() const { return panels_; }
    [[nodiscard]] QStringList packs() const { return packs_; }
    [[nodiscard]] QVariantList cells() const { return cells_; }

  signals:
    void askedChanged();
    void read();

  private:
    void read_answer();

    AnswerRunner* runner_ = nullptr;
    QStringList panels_;
    QStringList packs_;
    QStringList lasts_;
    QVariantList cells_;
};

}  // namespace touch
