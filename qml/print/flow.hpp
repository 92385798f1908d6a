// Blocks set one below the other, page after page.
#pragma once

#include <vector>

#include <QList>
#include <QSizeF>

#include "answers/answer.hpp"
#include "print/block.hpp"

namespace printing {

class Flow {
  public:
    // Pages of that size; `foot` stands at the bottom of each beside its number.
    Flow(QSizeF page, std::string foot);

    [[nodiscard]] double width() const;

    // Below what is there, or on a new page where it does not fit; `keep` more points are wanted
    // below it, so that a heading does not stand alone.
    void add(const Block& block, double gap_before = 0.0, double keep = 0.0);
    void add(const std::string& text, Type type, double gap_before = 0.0, double left = 0.0,
             double keep = 0.0);
    // A table whose rows may go on on the next page.
    void add(const std::vector<std::string>& headings,
             const std::vector<std::vector<std::string>>& rows, Type type);
    void new_page();
    // The pages from here on lie across, or stand upright again.
    void turn();

    [[nodiscard]] QList<Sheet> pages() const;

  private:
    QSizeF page_;
    std::string foot_;
    QList<Sheet> pages_;
    double y_ = 0.0;
};

}  // namespace printing
