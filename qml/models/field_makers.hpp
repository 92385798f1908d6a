// How the fields of a table are made from what its part of the file says.
#pragma once

#include <utility>

#include "models/fields.hpp"

namespace touch::making {

// The value at keys parted by full stops below a table; null where there is none.
[[nodiscard]] const scenario::Node* node_at(const scenario::Node* node, const QString& path);

// One table with the start of its keys.
struct Table {
    const scenario::Node* node = nullptr;  // null where the file has no such table yet
    QString path;                          // "load[2]"
    const scenario::Node* document = nullptr;

    [[nodiscard]] bool has(const char* key) const;
    [[nodiscard]] QString text(const char* key) const;
    [[nodiscard]] QString key(const char* key) const;
};

//   takes  silent: what holds where the file is silent; a field with none cannot be taken out
[[nodiscard]] Field number(const Table& table, const char* key, const QString& label,
                           units::Dimension dimension, const QStringList& units,
                           const QString& example, const QString& silent = {});
[[nodiscard]] Field words(const Table& table, const char* key, const QString& label,
                          const QString& example, const QString& silent = {});
[[nodiscard]] Field name_of(const Table& table);
[[nodiscard]] Field count(const Table& table, const char* key, const QString& label, int least,
                          int most, int silent);
// What the file says and no option does is an option of its own.
[[nodiscard]] Field choice(const Table& table, const char* key, const QString& label,
                           const QString& silent, QList<FieldOption> options);
[[nodiscard]] Field truth(const Table& table, const char* key, const QString& label);
[[nodiscard]] Field hours(const Table& table, const char* key, const QString& label,
                          const QString& silent);
// A date and a time of day.
[[nodiscard]] Field moment(const Table& table, const char* key, const QString& label);
// Several out of a few names.
[[nodiscard]] Field several(const Table& table, const char* key, const QString& label,
                            const QStringList& names);
[[nodiscard]] Field shown_if(bool shown, Field field);

}  // namespace touch::making
