// What a person asked for on the command line of candlemark-touch.
#pragma once

#include <variant>

#include <QSize>
#include <QString>
#include <QStringList>
#include <QUrl>

#include "print/headless.hpp"

namespace touch {

struct Wishes {
    QUrl file;
    QString picture;   // where to save a picture of the window, which then closes
    QString theme;     // dark, light or system; empty: as it was left
    QString language;  // "en", "de"; empty: as it was left
    QString units;     // "metric", "us"; empty: as they were left
    QString clock;     // "24", "12"; empty: as it was left
    QString page;
    bool page_asked = false;  // and not the usual one
    QSize size;
    double text_scale = 1.0;
    bool text_scale_asked = false;  // over what was kept of an earlier start
    QStringList weather_from;       // folders in which a weather file may lie as well
    bool prints = false;            // to paper, without a window
    printing::Wishes print;
};

// What to print instead of opening a window: help, the version, or what is wrong.
struct Notice {
    QString text;
    bool is_error = false;
};

//   takes  the arguments with the program's name first
[[nodiscard]] std::variant<Wishes, Notice> read_wishes(const QStringList& arguments);

}  // namespace touch
