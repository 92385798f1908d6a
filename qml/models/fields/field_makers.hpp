// How the fields of a table are made from what its part of the file says.
#pragma once

#include <optional>
#include <string_view>

#include <QMap>

#include "models/fields/fields.hpp"

namespace touch::making {

// The value at keys parted by full stops below a table; null where there is none.
[[nodiscard]] const scenario::Node* node_at(const scenario::Node* node, const QString& path);

// One table with the start of its keys.
struct Table {
    const scenario::Node* node = nullptr;  // null where the file has no such table yet
    QString path;                          // "load[2]"
    const scenario::Node* document = nullptr;

    [[nodiscard]] bool has(const QString& key) const;
    [[nodiscard]] QString text(const QString& key) const;
    [[nodiscard]] QString key(const QString& key) const;
    // As the reference names it: "circuit.links", and of a link its kind, "fuse".
    [[nodiscard]] QString described() const;
    [[nodiscard]] QString kind() const;
};

// The field of a key as the reference describes it: its label, form, limits, units or options,
// example, and what holds where the file is silent; a field for which nothing is told there cannot
// be taken out. The keys of a table inside the table are hidden until the file has that.
//   takes  key: "count", "metered.energy"
//   gives  nothing where the screens do not show that key by itself
[[nodiscard]] std::optional<Field> described(const Table& table, const QString& key);

// Fields that stand in the place of a key, or for more than one.
using Own = QMap<QString, Field>;

// The fields of a table: first those of these names, in this order, then all others that have a
// label, in the order of the format.
//   takes  own: fields of a page's own making, which may have names of their own
[[nodiscard]] QList<Field> fields_in(const Table& table, const QStringList& first = {},
                                     const Own& own = {});

// A number for each of twelve months.
[[nodiscard]] QList<Field> months_of(const Table& table, const QString& key);
// Several out of a few names.
[[nodiscard]] Field several(const Table& table, const QString& key, const QStringList& names);

}  // namespace touch::making
