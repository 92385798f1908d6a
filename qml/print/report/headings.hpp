// What a report's line of contents tells.
#pragma once

#include <QList>
#include <QString>

namespace printing {

struct Heading {
    QString name;
    int page = 0;  // from 1

    friend bool operator==(const Heading&, const Heading&) = default;
};

using Headings = QList<Heading>;

}  // namespace printing
