// The last ten texts that a file held before it was saved over, by the whole path of the file and
// in the order in which they were saved, whatever the clock said.
#pragma once

#include <QByteArray>
#include <QList>
#include <QString>

namespace touch {

constexpr int most_versions = 10;

struct KeptVersion {
    QString path;
    QString shown;  // when it was saved over, for people
};

// Of a file's whole path, a name that any folder can hold.
[[nodiscard]] QString key_of(const QString& path);

// The newest first.
[[nodiscard]] QList<KeptVersion> versions_of(const QString& folder, const QString& path);

// False when it cannot be written. The newest that is there already is not kept twice.
[[nodiscard]] bool keep_version(const QString& folder, const QString& path,
                                const QByteArray& bytes);

// Takes away what a process that was ended left half written an hour ago or more.
void clear_halves(const QString& folder);

}  // namespace touch
