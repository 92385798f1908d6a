#include "print/card_layout.hpp"

#include <algorithm>
#include <string_view>

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
constexpr double least_gap = 5.0;  // between parts
constexpr double most_gap = 14.0;
constexpr double most_air = 3.0;  // within a row of a table

// All columns but the first are as wide as they need to be; the first takes the rest and breaks.
QList<double> column_widths(const answers::CardTable& table, double width) {
    QList<double> widths;
    double taken = 0.0;
    for (std::size_t column = 0; column < table.headings.size(); ++column) {
        double wide = width_of(in_qt(table.headings[column]), body);
        for (const auto& row : table.rows)
            wide = std::max(wide,
                            width_of(in_qt(row[column]), table.answers == column ? answer : body));
        widths << wide;
        taken += column == 0 ? 0.0 : wide + cell_gap;
    }
    if (!widths.isEmpty()) widths[0] = std::max(width - taken, 0.2 * width);
    return widths;
}

void add_row(Block& block, const std::vector<std::string>& cells, const QList<double>& widths,
             std::optional<std::size_t> answers, double air) {
    const QStringList first = broken(in_qt(cells.front()), body, widths.front());
    const double line = line_height_of(body);
    const double tall = answers ? line_height_of(answer) : line;
    const double height = std::max(tall, line * static_cast<double>(first.size())) + air;
    double top = block.height + (height - line * static_cast<double>(first.size())) / 2.0;
    for (const QString& each : first) {
        put(block, each, body, 0.0, widths.front(), top);
        top += line;
    }
    double left = widths.front() + cell_gap;
    for (qsizetype column = 1; column < widths.size(); ++column) {
        const auto index = static_cast<std::size_t>(column);
        const Type type = answers == index ? answer : body;
        put(block, in_qt(cells[index]), type, left, widths[column],
            block.height + (height - line_height_of(type)) / 2.0, Align::right);
        left += widths[column] + cell_gap;
    }
    block.height += height;
}

void add_table(Block& block, const answers::CardTable& table, double width, double air) {
    if (table.rows.empty()) return;
    const QList<double> widths = column_widths(table, width);
    add_row(block, table.headings, widths, {}, 0.0);
    for (const auto& row : table.rows) {
        block.sheet.strokes.append({{0.0, block.height, width, block.height}, 0.5});
        add_row(block, row, widths, table.answers, air);
    }
}

void add_ticks(Block& block, const std::vector<std::string>& ticks, double width) {
    const double side = 12.0;
    const double line = line_height_of(body);
    double left = 0.0;
    for (const auto& tick : ticks) {
        const double wide = side + 6.0 + width_of(in_qt(tick), body);
        if (left > 0.0 && left + wide > width) {
            left = 0.0;
            block.height += line + 2.0;
        }
        block.sheet.boxes.append({left, block.height + (line - side) / 2.0, side, side});
        put(block, in_qt(tick), body, left + side + 6.0, width, block.height);
        left += wide + 16.0;
    }
    if (!ticks.empty()) block.height += line;
}

Block block_of(const CardPart& part, double width, double air) {
    Block block;
    block.sheet.strokes.append({{0.0, 1.0, width, 1.0}, 2.0});
    block.height = 3.0;
    add_lines(block, part.heading, strong, width);
    for (const auto& line : part.lines)
        add_lines(block, line, body, width);
    add_table(block, part.table, width, air);
    for (const auto& line : part.after)
        add_lines(block, line, strong, width);
    add_ticks(block, part.ticks, width);
    add_lines(block, left_out(part), body, width);
    return block;
}

// Two parts beside each other, or one alone across the page.
Block beside(const CardPart* left, const CardPart* right, double width, double air) {
    if (!left || !right) return block_of(left ? *left : *right, width, air);
    const double half = (width - gutter) / 2.0;
    Block block = block_of(*left, half, air);
    Block other = block_of(*right, half, air);
    move(other.sheet, half + gutter, 0.0);
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

Block head(const LidCard& card, double width) {
    Block block;
    const double candle = 24.0;
    const QString made = in_qt(card.made);
    const double made_width = width_of(made, body);
    const QStringList lines =
        broken(in_qt(card.title), title, width - candle - made_width - cell_gap);
    put(block, made, body, 0.0, width, (line_height_of(title) - line_height_of(body)) / 2.0,
        Align::right);
    for (const QString& line : lines) {
        put(block, line, title, candle, width, block.height);
        block.height += line_height_of(title);
    }
    add_lines(block, card.answer, {.size = 30.0, .bold = true}, width - candle, candle);
    add_candle(block, block.height - 2.0);
    for (const auto& line : card.basis)
        add_lines(block, line, body, width);
    return block;
}

const CardPart* part_named(const LidCard& card, std::string_view name) {
    const auto part = std::ranges::find(card.parts, name, &CardPart::name);
    return part == card.parts.end() ? nullptr : &*part;
}

QList<Block> blocks_of(const LidCard& card, double width, double air) {
    QList<Block> blocks{head(card, width)};
    const auto row = [&](std::string_view left, std::string_view right) {
        const CardPart* one = part_named(card, left);
        const CardPart* other = part_named(card, right);
        if (one || other) blocks << beside(one, other, width, air);
    };
    row("ration", "");
    row("voltmeter", "fuses");
    row("plug_in", "cold");
    row("storage", "");
    row("cautions", "");
    Block foot;
    add_lines(foot, card.closing, body, width);
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
bool cut_longest(LidCard& card) {
    // Long cautions give way before any row of a table does.
    for (CardPart& part : card.parts)
        if (!part.brief.empty() && answers::cut_one(part)) return true;
    std::vector<CardPart*> parts;
    for (CardPart& part : card.parts)
        parts.push_back(&part);
    std::ranges::stable_sort(parts, std::ranges::greater(), [](const CardPart* part) {
        return part->table.rows.size() + part->ticks.size() / 2;
    });
    return std::ranges::any_of(parts, [](CardPart* part) { return answers::cut_one(*part); });
}

}  // namespace

QSizeF size_of(Paper paper) {
    // ISO 216: 210 mm x 297 mm; US Letter: 8.5 in x 11 in; 72 points an inch
    return paper == Paper::a4 ? QSizeF(210.0 / 25.4 * 72.0, 297.0 / 25.4 * 72.0)
                              : QSizeF(612.0, 792.0);
}

Sheet lay_out(LidCard card, Paper paper) {
    Sheet sheet{.size = size_of(paper)};
    const double width = sheet.size.width() - 2.0 * margin;
    const double room = sheet.size.height() - 2.0 * margin;
    QList<Block> blocks = blocks_of(card, width, 0.0);
    while (height_of(blocks) > room && cut_longest(card))
        blocks = blocks_of(card, width, 0.0);
    for (double air = 1.0; air <= most_air; air += 1.0) {
        const QList<Block> airy = blocks_of(card, width, air);
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
