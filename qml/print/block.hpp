// A piece of a page under construction.
#pragma once

#include <string>

#include "print/sheet.hpp"
#include "words/language.hpp"

namespace printing {

// Grows downwards from 0; its left edge is 0.
struct Block {
    Sheet sheet = {};
    double height = 0.0;
};

enum class Align { left, right };

[[nodiscard]] QString in_qt(const std::string& text);
[[nodiscard]] QString in_qt(const words::Language& language, const words::Said& said);
[[nodiscard]] QString in_qt(const words::Language& language, const words::Amount& amount);

// One line at a place of its own; the block does not grow.
void put(Block& block, const QString& text, Type type, double left, double width, double top,
         Align align = Align::left);

// Text broken into lines below what is there.
void add_lines(Block& block, const QString& text, Type type, double width, double left = 0.0);

}  // namespace printing
