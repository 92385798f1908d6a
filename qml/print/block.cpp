#include "print/block.hpp"

namespace printing {

QString in_qt(const std::string& text) {
    return QString::fromStdString(text);
}

QString in_qt(const words::Language& language, const words::Said& said) {
    return in_qt(words::in(language, said));
}

QString in_qt(const words::Language& language, const words::Amount& amount) {
    return in_qt(words::in(language, amount));
}

void put(Block& block, const QString& text, Type type, double left, double width, double top,
         Align align) {
    const double wide = width_of(text, type);
    const double x = align == Align::left ? left : left + width - wide;
    block.sheet.words.append({{x, top, wide, line_height_of(type)}, text, type});
}

void add_lines(Block& block, const QString& text, Type type, double width, double left) {
    for (const QString& line : broken(text, type, width)) {
        put(block, line, type, left, width, block.height);
        block.height += line_height_of(type);
    }
}

}  // namespace printing
