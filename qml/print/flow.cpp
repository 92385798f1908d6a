#include "print/flow.hpp"

#include <algorithm>

#include "print/card_layout.hpp"

namespace printing {

namespace {

constexpr Type small{.size = 9.0};
constexpr double gap = 8.0;  // between columns of a table
constexpr double paper_margin = 42.0;

double widest_word(const QString& text, Type type) {
    double wide = 0.0;
    for (const QString& word : words_in(text))
        wide = std::max(wide, width_of(word, type));
    return wide;
}

// As wide as the longest cell; where that is too much, each gives of what it has above its longest
// word.
QList<double> widths_of(const QStringList& headings, const QList<QStringList>& rows, Type type,
                        double width) {
    const Type bold{.size = type.size, .bold = true};
    QList<double> widths;
    QList<double> least;
    for (qsizetype column = 0; column < headings.size(); ++column) {
        double wide = width_of(headings[column], bold);
        double word = widest_word(headings[column], bold);
        for (const auto& row : rows) {
            wide = std::max(wide, width_of(row[column], type));
            word = std::max(word, widest_word(row[column], type));
        }
        widths << wide + 1.0;
        least << std::min(word + 1.0, 0.4 * width);
    }
    const double room = width - gap * static_cast<double>(widths.size() - 1);
    double all = 0.0;
    double bare = 0.0;
    for (qsizetype column = 0; column < widths.size(); ++column) {
        all += widths[column];
        bare += least[column];
    }
    if (all <= room) return widths;
    // Where not even the words fit, they are broken: every column gives the same part.
    if (bare >= room)
        for (double& wide : least)
            wide *= room / bare;
    const double given = bare >= room ? 0.0 : (room - bare) / (all - bare);
    for (qsizetype column = 0; column < widths.size(); ++column)
        widths[column] = least[column] + given * std::max(0.0, widths[column] - least[column]);
    return widths;
}

Block row_of(const QStringList& cells, const QList<double>& widths, Type type, double width) {
    Block block;
    double left = 0.0;
    double height = 0.0;
    for (qsizetype column = 0; column < cells.size(); ++column) {
        Block cell;
        const double wide = widths[column];
        add_lines(cell, cells[column], type, wide);
        move(cell.sheet, left, 1.0);
        add(block.sheet, cell.sheet);
        height = std::max(height, cell.height);
        left += wide + gap;
    }
    block.height = height + 2.0;
    block.sheet.strokes.append({{0.0, block.height, width, block.height}, 0.3});
    return block;
}

}  // namespace

Flow::Flow(QSizeF page, QString foot) : page_(page), foot_(std::move(foot)) {
    new_page();
}

double Flow::width() const {
    return page_.width() - 2.0 * paper_margin;
}

double Flow::low() const {
    return page_.height() - paper_margin - 16.0;
}

QSizeF Flow::room() const {
    return {width(), low() - y_ - 8.0};
}

void Flow::new_page() {
    pages_.append(Sheet{.size = page_});
    y_ = paper_margin;
}

void Flow::turn() {
    page_.transpose();
    // A page that nothing stands on yet is turned itself.
    if (pages_.last().words.isEmpty()) pages_.removeLast();
    new_page();
}

void Flow::add(const Block& block, double gap_before, double keep) {
    const bool at_top = y_ <= paper_margin;
    if (!at_top && y_ + gap_before + block.height + keep > low()) new_page();
    if (y_ > paper_margin) y_ += gap_before;
    Sheet moved = block.sheet;
    move(moved, paper_margin, y_);
    printing::add(pages_.last(), moved);
    y_ += block.height;
}

void Flow::add(const QString& text, Type type, double gap_before, double left, double keep) {
    double before = gap_before;
    for (const QString& line : broken(text, type, width() - left)) {
        Block block;
        put(block, line, type, left, width(), 0.0);
        block.height = line_height_of(type);
        add(block, before, keep);
        before = 0.0;
    }
}

void Flow::add(const QStringList& headings, const QList<QStringList>& rows, Type type) {
    if (rows.isEmpty() || headings.isEmpty()) return;
    const QList<double> widths = widths_of(headings, rows, type, width());
    const Block head = row_of(headings, widths, {.size = type.size, .bold = true}, width());
    add(head, 2.0, 2.0 * line_height_of(type));
    for (const auto& row : rows) {
        const Block block = row_of(row, widths, type, width());
        const qsizetype before = pages_.size();
        add(block);
        if (pages_.size() == before) continue;
        // The headings come again on each page: set them first, then the row.
        pages_.last() = Sheet{.size = page_};
        y_ = paper_margin;
        add(head);
        add(block);
    }
}

QList<Sheet> Flow::pages() const {
    QList<Sheet> pages = pages_;
    for (qsizetype number = 0; number < pages.size(); ++number) {
        const double wide = pages[number].size.width() - 2.0 * paper_margin;
        Block foot;
        put(foot, foot_, small, 0.0, wide, 0.0);
        put(foot, QStringLiteral("%1 / %2").arg(number + 1).arg(pages.size()), small, 0.0, wide,
            0.0, Align::right);
        move(foot.sheet, paper_margin,
             pages[number].size.height() - paper_margin - line_height_of(small) + 6.0);
        printing::add(pages[number], foot.sheet);
    }
    return pages;
}

}  // namespace printing
