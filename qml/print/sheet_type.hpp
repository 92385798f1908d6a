// Type on paper: all lengths are points, whatever the paper or screen is drawn with.
#pragma once

#include <QFont>
#include <QString>
#include <QStringList>

namespace printing {

// A word is measured in twentieths of a point, so that paper and screen break lines alike.
inline constexpr double grain = 20.0;

struct Type {
    double size = 14.0;  // points
    bool bold = false;
};

// The font in grains: paint it under a scale of points divided by `grain`.
[[nodiscard]] QFont font_of(Type type);

[[nodiscard]] double width_of(const QString& text, Type type);
[[nodiscard]] double ascent_of(Type type);
[[nodiscard]] double line_height_of(Type type);

// Words that stay on one line; a number and its unit are one.
[[nodiscard]] QStringList words_in(const QString& text);

// Lines no wider than that; a word wider than a line is broken.
[[nodiscard]] QStringList broken(const QString& text, Type type, double width);

}  // namespace printing
