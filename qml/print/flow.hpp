// Blocks set one below the other, page after page.
#pragma once

#include <QList>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include "print/block.hpp"

namespace printing {

class Flow {
  public:
    // Pages of that size; `foot` stands at the bottom of each beside its number.
    Flow(QSizeF page, QString foot);

    [[nodiscard]] double width() const;
    // What is left of this page below what stands on it.
    [[nodiscard]] QSizeF room() const;
    // The number of this page, from 1.
    [[nodiscard]] int page() const { return static_cast<int>(pages_.size()); }

    // Below what is there, or on a new page where it does not fit; `keep` more points are wanted
    // below it, so that a heading does not stand alone.
    void add(const Block& block, double gap_before = 0.0, double keep = 0.0);
    void add(const QString& text, Type type, double gap_before = 0.0, double left = 0.0,
             double keep = 0.0);
    // A table whose rows may go on on the next page.
    void add(const QStringList& headings, const QList<QStringList>& rows, Type type);
    void new_page();
    // The pages from here on lie across, or stand upright again.
    void turn();

    [[nodiscard]] QList<Sheet> pages() const;

  private:
    // Where the foot begins.
    [[nodiscard]] double low() const;

    QSizeF page_;
    QString foot_;
    QList<Sheet> pages_;
    double y_ = 0.0;
};

}  // namespace printing
