#include "print/card_layout.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

#include "faces/paper.hpp"
#include "print/block.hpp"

namespace printing {

namespace {

using answers::CardPart;
using answers::LidCard;

constexpr Type body{.size = body_size};
constexpr Type strong{.size = body_size, .bold = true};
constexpr Type answer{.size = answer_size, .bold = true};
constexpr Type title{.size = 15.0, .bold = true};
constexpr double gutter = 18.0;  // between columns of the page
constexpr double cell_gap = 12.0;
constexpr double least_gap = 2.0;  // between parts
constexpr double most_gap = 14.0;
constexpr double most_air = 3.0;  // within a row of a table

// How the card is shown.
//   air   points of room within each row of a table
struct Look {
    const words::Language& language;
    double air = 0.0;

    [[nodiscard]] QString operator()(const words::Said& said) const {
        return in_qt(words::in(language, said));
    }
};

void add_lines(Block& block, const words::Said& said, Type type, double width, const Look& look,
               double left = 0.0) {
    add_lines(block, look(said), type, width, left);
}

// The least width at which a heading takes no more lines than this.
constexpr int heading_lines = 2;
double heading_width(const QString& heading) {
    double wide = 0.0;
    for (const QString& word : words_in(heading))
        wide = std::max(wide, width_of(word, body));
    while (broken(heading, body, wide).size() > heading_lines)
        wide += 4.0;
    return wide;
}

// How wide a column must be for its heading over two lines and each of its cells on one.
double needed_width(const answers::CardTable& table, std::size_t column, const Look& look) {
    double wide = heading_width(look(table.headings[column]));
    for (const auto& row : table.rows)
        wide = std::max(wide, width_of(look(row[column]), table.answers == column ? answer : body));
    return wide;
}

// All columns but the first are as wide as they need to be; the first takes the rest and breaks.
QList<double> column_widths(const answers::CardTable& table, double width, const Look& look) {
    QList<double> widths;
    double taken = 0.0;
    for (std::size_t column = 0; column < table.headings.size(); ++column) {
        const double wide = needed_width(table, column, look);
        widths << wide;
        taken += column == 0 ? 0.0 : wide + cell_gap;
    }
    if (!widths.isEmpty()) widths[0] = std::max(width - taken, 0.2 * width);
    return widths;
}

// The width that a part with a table must have: its first column may break between words, unless it
// says little more than a figure.
constexpr qsizetype letters_of_a_figure = 10;
double least_width(const CardPart& part, const Look& look) {
    if (part.table.rows.empty()) return 0.0;
    double wide = heading_width(look(part.table.headings.front()));
    for (const auto& row : part.table.rows) {
        const QString cell = look(row.front());
        if (cell.size() <= letters_of_a_figure) wide = std::max(wide, width_of(cell, body));
        for (const QString& word : words_in(cell))
            wide = std::max(wide, width_of(word, body));
    }
    for (std::size_t column = 1; column < part.table.headings.size(); ++column)
        wide += needed_width(part.table, column, look) + cell_gap;
    return wide;
}

// Each heading ends on the line above the rows.
void add_headings(Block& block, const std::vector<words::Said>& headings,
                  const QList<double>& widths, const Look& look) {
    const double line = line_height_of(body);
    qsizetype most = 1;
    for (qsizetype column = 0; column < widths.size(); ++column)
        most = std::max(most, broken(look(headings[static_cast<std::size_t>(column)]), body,
                                     widths[column] + 0.01)
                                  .size());
    double left = 0.0;
    for (qsizetype column = 0; column < widths.size(); ++column) {
        const QStringList lines = broken(look(headings[static_cast<std::size_t>(column)]), body,
                                         widths[column] + 0.01);
        double top = block.height + line * static_cast<double>(most - lines.size());
        for (const QString& each : lines) {
            put(block, each, body, left, widths[column], top,
                column == 0 ? Align::left : Align::right);
            top += line;
        }
        left += widths[column] + cell_gap;
    }
    block.height += line * static_cast<double>(most);
}

void add_row(Block& block, const std::vector<words::Said>& cells, const QList<double>& widths,
             std::optional<std::size_t> answers, const Look& look) {
    const QStringList first = broken(look(cells.front()), body, widths.front());
    const double line = line_height_of(body);
    const double tall = answers ? line_height_of(answer) : line;
    const double height = std::max(tall, line * static_cast<double>(first.size())) + look.air;
    double top = block.height + (height - line * static_cast<double>(first.size())) / 2.0;
    for (const QString& each : first) {
        put(block, each, body, 0.0, widths.front(), top);
        top += line;
    }
    double left = widths.front() + cell_gap;
    for (qsizetype column = 1; column < widths.size(); ++column) {
        const auto index = static_cast<std::size_t>(column);
        const Type type = answers == index ? answer : body;
        put(block, look(cells[index]), type, left, widths[column],
            block.height + (height - line_height_of(type)) / 2.0, Align::right);
        left += widths[column] + cell_gap;
    }
    block.height += height;
}

void add_table(Block& block, const answers::CardTable& table, double width, const Look& look) {
    if (table.rows.empty()) return;
    const QList<double> widths = column_widths(table, width, look);
    add_headings(block, table.headings, widths, look);
    for (const auto& row : table.rows) {
        block.sheet.strokes.append({{0.0, block.height, width, block.height}, 0.5});
        add_row(block, row, widths, table.answers, look);
    }
}

void add_ticks(Block& block, const std::vector<words::Said>& ticks, double width,
               const Look& look) {
    const double side = 12.0;
    const double line = line_height_of(body);
    double left = 0.0;
    for (const auto& tick : ticks) {
        const double wide = side + 6.0 + width_of(look(tick), body);
        if (left > 0.0 && left + wide > width) {
            left = 0.0;
            block.height += line + 2.0;
        }
        block.sheet.boxes.append({left, block.height + (line - side) / 2.0, side, side});
        put(block, look(tick), body, left + side + 6.0, width, block.height);
        left += wide + 16.0;
    }
    if (!ticks.empty()) block.height += line;
}

Block block_of(const CardPart& part, double width, const Look& look) {
    Block block;
    block.sheet.strokes.append({{0.0, 1.0, width, 1.0}, 2.0});
    block.height = 3.0;
    add_lines(block, part.heading, strong, width, look);
    for (const auto& line : part.lines)
        add_lines(block, line, body, width, look);
    add_table(block, part.table, width, look);
    for (const auto& line : part.after)
        add_lines(block, line, strong, width, look);
    add_ticks(block, part.ticks, width, look);
    add_lines(block, left_out(part), body, width, look);
    return block;
}

// Two parts beside each other, or one alone across the page. Each has half of it, unless the table of
// one needs more.
Block beside(const CardPart* left, const CardPart* right, double width, const Look& look) {
    if (!left || !right) return block_of(left ? *left : *right, width, look);
    const double room = width - gutter;
    const double first = std::max(std::min(room / 2.0, room - least_width(*right, look)),
                                  least_width(*left, look));
    Block block = block_of(*left, first, look);
    Block other = block_of(*right, room - first, look);
    move(other.sheet, first + gutter, 0.0);
    add(block.sheet, other.sheet);
    block.height = std::max(block.height, other.height);
    return block;
}

// The sign of the program: an upright candle marked in hours.
void add_candle(Block& block, double tall) {
    const double wide = 13.0;
    const double top = 0.38 * tall;
    const double middle = 1.0 + wide / 2.0;
    block.sheet.boxes.append({1.0, top, wide, tall - top});
    for (int mark = 1; mark < 5; ++mark) {
        const double y = top + (tall - top) * mark / 5.0;
        block.sheet.strokes.append({{1.0, y, middle, y}, 1.2});
    }
    block.sheet.strokes.append({{middle, top - 4.0, middle, top}, 1.2});
    const double low = top - 3.0;
    block.sheet.shapes.append({QPolygonF({{middle, 0.0},
                                          {middle + 3.4, 0.5 * low},
                                          {middle + 3.0, 0.82 * low},
                                          {middle, low},
                                          {middle - 3.0, 0.82 * low},
                                          {middle - 3.4, 0.5 * low}})});
}

Block head(const LidCard& card, double width, const Look& look) {
    Block block;
    const double candle = 24.0;
    const QString made = in_qt(card.made);
    const double made_width = width_of(made, body);
    const QStringList lines =
        broken(look(card.title), title, width - candle - made_width - cell_gap);
    put(block, made, body, 0.0, width, (line_height_of(title) - line_height_of(body)) / 2.0,
        Align::right);
    for (const QString& line : lines) {
        put(block, line, title, candle, width, block.height);
        block.height += line_height_of(title);
    }
    add_lines(block, card.answer, {.size = 30.0, .bold = true}, width - candle, look, candle);
    add_candle(block, block.height - 2.0);
    for (const auto& line : card.basis)
        add_lines(block, line, body, width, look);
    return block;
}

const CardPart* part_named(const LidCard& card, std::string_view name) {
    const auto part = std::ranges::find(card.parts, name, &CardPart::name);
    return part == card.parts.end() ? nullptr : &*part;
}

QList<Block> blocks_of(const LidCard& card, double width, const Look& look) {
    QList<Block> blocks{head(card, width, look)};
    const auto row = [&](std::string_view left, std::string_view right) {
        const CardPart* one = part_named(card, left);
        const CardPart* other = part_named(card, right);
        if (one || other) blocks << beside(one, other, width, look);
    };
    row("ration", "");
    row("voltmeter", "fuses");
    row("plug_in", "cold");
    row("storage", "");
    row("cautions", "");
    Block foot;
    add_lines(foot, card.closing, body, width, look);
    blocks << foot;
    return blocks;
}

double height_of(const QList<Block>& blocks) {
    double height = least_gap * static_cast<double>(blocks.size() - 1);
    for (const Block& block : blocks)
        height += block.height;
    return height;
}

// The next row to leave out: from whatever is longest among those that can spare one.
bool cut_longest(LidCard& card, const words::Language& language) {
    // Long cautions give way before any row of a table does.
    for (CardPart& part : card.parts)
        if (!part.brief.empty() && answers::cut_one(part, language)) return true;
    std::vector<CardPart*> parts;
    for (CardPart& part : card.parts)
        parts.push_back(&part);
    std::ranges::stable_sort(parts, std::ranges::greater(), [](const CardPart* part) {
        return part->table.rows.size() + part->ticks.size() / 2;
    });
    return std::ranges::any_of(
        parts, [&language](CardPart* part) { return answers::cut_one(*part, language); });
}

// What is wanted in a garage and not in the dark goes when all else is as short as it may be; the
// card then says where it stands.
bool leave_out_storage(LidCard& card) {
    const auto storage = std::ranges::find(card.parts, "storage", &CardPart::name);
    if (storage == card.parts.end()) return false;
    card.parts.erase(storage);
    card.closing = words::together(
        {faces::paper::when_to_top_up(), std::move(card.closing)});
    return true;
}

// At the very last one row of what goes off, and of the circuits, still stands.
bool cut_to_one(LidCard& card) {
    for (CardPart& part : card.parts) {
        if (part.name != "ration" && part.name != "fuses") continue;
        if (part.table.rows.size() < 2) continue;
        part.table.rows.pop_back();
        ++part.cut;
        return true;
    }
    return false;
}

}  // namespace

QSizeF size_of(Paper paper) {
    // ISO 216: 210 mm x 297 mm; US Letter: 8.5 in x 11 in; 72 points an inch
    return paper == Paper::a4 ? QSizeF(210.0 / 25.4 * 72.0, 297.0 / 25.4 * 72.0)
                              : QSizeF(612.0, 792.0);
}

Sheet lay_out(LidCard card, Paper paper, const words::Language& language) {
    Sheet sheet{.size = size_of(paper)};
    const double width = sheet.size.width() - 2.0 * margin;
    const double room = sheet.size.height() - 2.0 * margin;
    const Look tight{.language = language};
    QList<Block> blocks = blocks_of(card, width, tight);
    while (height_of(blocks) > room &&
           (cut_longest(card, language) || leave_out_storage(card) || cut_to_one(card)))
        blocks = blocks_of(card, width, tight);
    for (double air = 1.0; air <= most_air; air += 1.0) {
        const QList<Block> airy = blocks_of(card, width, {.language = language, .air = air});
        if (height_of(airy) <= room) blocks = airy;
    }
    const double spare = room - height_of(blocks);
    sheet.fits = spare >= 0.0;
    const double gap = least_gap + std::clamp(spare / static_cast<double>(blocks.size() - 1), 0.0,
                                              most_gap - least_gap);
    double top = margin;
    for (Block& block : blocks) {
        move(block.sheet, margin, top);
        add(sheet, block.sheet);
        top += block.height + gap;
    }
    return sheet;
}

}  // namespace printing
