#include "models/file/file_name.hpp"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStandardPaths>

namespace touch {

QString file_name_of(const QString& title) {
    constexpr int longest = 60;  // letters; a name to be read
    static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{N}]+"));
    static const QRegularExpression at_ends(QStringLiteral("^_+|_+$"));
    QString name = title.toLower().replace(between, QStringLiteral("_")).left(longest);
    name.remove(at_ends);
    return name.isEmpty() ? QStringLiteral("plan") : name;
}

QString folder_of_papers() {
    const QString papers = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(papers).isDir() ? papers : QDir::homePath();
}

}  // namespace touch
