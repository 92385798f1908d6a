#include "print/block.hpp"

namespace printing {

QString in_qt(const std::string& text) {
    return QString::fromStdString(text);
}

void put(Block& block, const QString& text, Type type, double left, double width, double top,
         Align align) {
    const double wide = width_of(text, type);
    const double x = align == Align::left ? left : left + width - wide;
    block.sheet.words.append({{x, top, wide, line_height_of(type)}, text, type});
}

void add_lines(Block& block, const std::string& text, Type type, double width, double left) {
    for (const QString& line : broken(in_qt(text), type, width)) {
        put(block, line, type, left, width, block.height);
        block.height += line_height_of(type);
    }
}

}  // namespace printing
