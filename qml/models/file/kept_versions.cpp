#include "models/file/kept_versions.hpp"

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>

#include "models/file/window_lock.hpp"
#include "models/words/saved_words.hpp"

namespace touch {

namespace {

constexpr int digits = 8;         // of the number that orders them
constexpr int key_digits = 32;    // of 64
constexpr qint64 an_hour = 3600;  // s

const QString stamp_form = QStringLiteral("yyyyMMdd-HHmmss");

QDir place_of(const QString& folder, const QString& path) {
    return QDir(folder + QStringLiteral("/versions/") + key_of(path));
}

// The newest last.
QStringList names_in(const QDir& place) {
    return place.entryList({QStringLiteral("*.toml")}, QDir::Files, QDir::Name);
}

}  // namespace

QString key_of(const QString& path) {
    if (path.isEmpty()) return QString(key_digits, QLatin1Char('0'));
    const QFileInfo file(path);
    const QString real = file.canonicalFilePath();
    const QString folder = QFileInfo(file.absolutePath()).canonicalFilePath();
    const QString whole = !real.isEmpty()     ? real
                          : !folder.isEmpty() ? folder + QLatin1Char('/') + file.fileName()
                                              : file.absoluteFilePath();
    return QString::fromLatin1(
        QCryptographicHash::hash(QFile::encodeName(whole), QCryptographicHash::Sha256)
            .toHex()
            .left(key_digits));
}

QList<KeptVersion> versions_of(const QString& folder, const QString& path) {
    const QDir place = place_of(folder, path);
    QList<KeptVersion> versions;
    for (const QString& name : names_in(place)) {
        QDateTime saved =
            QDateTime::fromString(name.mid(digits + 1, stamp_form.size()), stamp_form);
        saved.setTimeSpec(Qt::UTC);
        versions.prepend({.path = place.filePath(name),
                          .shown = QLocale().toString(saved.toLocalTime(), QLocale::ShortFormat)});
    }
    return versions.mid(0, most_versions);
}

bool keep_version(const QString& folder, const QString& path, const QByteArray& bytes) {
    const QDir place = place_of(folder, path);
    if (!QDir().mkpath(place.path())) return false;
    clear_halves(place.path());
    QStringList names = names_in(place);
    if (!names.isEmpty() && bytes_in_file(place.filePath(names.constLast())) == bytes) return true;
    const int number = names.isEmpty() ? 1 : names.constLast().left(digits).toInt() + 1;
    const QString name = QStringLiteral("%1-%2-%3.toml")
                             .arg(number, digits, 10, QLatin1Char('0'))
                             .arg(QDateTime::currentDateTimeUtc().toString(stamp_form), new_name());
    if (!save_to(place.filePath(name), bytes).saved()) return false;
    // Only now, so that a version that cannot be written costs none.
    names << name;
    while (names.size() > most_versions)
        QFile::remove(place.filePath(names.takeFirst()));
    return true;
}

void clear_halves(const QString& folder) {
    const QDir place(folder);
    const QFileInfoList halves =
        place.entryInfoList({QStringLiteral(".*")}, QDir::Files | QDir::Hidden);
    for (const QFileInfo& half : halves)
        if (half.lastModified().secsTo(QDateTime::currentDateTime()) > an_hour)
            QFile::remove(half.filePath());
}

}  // namespace touch
