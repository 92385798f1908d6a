// A piece of a page under construction.
#pragma once

#include <string>

#include "print/sheet.hpp"

namespace printing {

// Grows downwards from 0; its left edge is 0.
struct Block {
    Sheet sheet = {};
    double height = 0.0;
};

enum class Align { left, right };

[[nodiscard]] QString in_qt(const std::string& text);

// One line at a place of its own; the block does not grow.
void put(Block& block, const QString& text, Type type, double left, double width, double top,
         Align align = Align::left);

// Text broken into lines below what is there.
void add_lines(Block& block, const std::string& text, Type type, double width, double left = 0.0);

}  // namespace printing
