#include "models/file/folder_model.hpp"

#include <algorithm>

#include <QCollator>
#include <QDateTime>
#include <QDir>
#include <QFileDialog>
#include <QLocale>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QVariantMap>

#include "models/file/file_name.hpp"
#include "units/quote.hpp"

namespace touch {

namespace {

// On one line, with marks that turn the writing made visible.
QString name_on_a_row(const QString& name) {
    constexpr int longest = 255;  // what a file system takes at most
    return QString::fromStdString(units::quote(name.toStdString(), longest));
}

// "Scenario files (*.toml *.txt)" has "*.toml" and "*.txt".
QStringList patterns_of(const QStringList& filters) {
    static const QRegularExpression inside(QStringLiteral("\\(([^)]*)\\)\\s*$"));
    QStringList patterns;
    for (const QString& filter : filters)
        patterns += inside.match(filter).captured(1).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return patterns;
}

QString detail_of(const QFileInfo& entry) {
    if (entry.isDir()) return FolderModel::tr("folder");
    const QLocale locale;
    return FolderModel::tr("%1, saved %2")
        .arg(locale.formattedDataSize(entry.size(), 1, QLocale::DataSizeSIFormat),
             locale.toString(entry.lastModified(), QLocale::ShortFormat));
}

void put_in_order(QList<QFileInfo>& entries) {
    // The locale of programs knows no numbers within names.
    const QLocale own = QLocale::system();
    QCollator by_name(own.language() == QLocale::C ? QLocale(QLocale::English) : own);
    by_name.setNumericMode(true);
    by_name.setCaseSensitivity(Qt::CaseInsensitive);
    std::stable_sort(entries.begin(), entries.end(),
                     [&](const QFileInfo& left, const QFileInfo& right) {
                         if (left.isDir() != right.isDir()) return left.isDir();
                         return by_name.compare(left.fileName(), right.fileName()) < 0;
                     });
}

}  // namespace

FolderModel::FolderModel(QObject* parent) : QAbstractListModel(parent), path_(folder_of_papers()) {}

bool FolderModel::platformHasDialog() {
    // Without a dialog of the system, Qt's own makes its parts at once.
    static const bool has = QFileDialog().findChild<QWidget*>() == nullptr;
    return has;
}

void FolderModel::goUp() {
    QDir dir(path_);
    if (dir.cdUp()) set_folder(QUrl::fromLocalFile(dir.absolutePath()));
}

void FolderModel::look() {
    beginResetModel();
    const QDir dir(path_);
    trouble_.clear();
    entries_ = dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot);
    const QStringList patterns = patterns_of(filters_);
    entries_ += patterns.isEmpty() ? dir.entryInfoList(QDir::Files)
                                   : dir.entryInfoList(patterns, QDir::Files);
    put_in_order(entries_);
    if (!dir.isReadable())
        trouble_ = tr("This folder cannot be looked into.");
    else if (entries_.size() > most_shown)
        trouble_ = tr("Only the first %1 of %2 are shown.").arg(most_shown).arg(entries_.size());
    entries_ = entries_.mid(0, most_shown);
    endResetModel();
    emit listed();
}

QUrl FolderModel::urlAt(int row) const {
    return row >= 0 && row < count() ? QUrl::fromLocalFile(entries_[row].absoluteFilePath())
                                     : QUrl();
}

bool FolderModel::isFolderAt(int row) const {
    return row >= 0 && row < count() && entries_[row].isDir();
}

QUrl FolderModel::fileNamed(const QString& name) const {
    const QString plain = name.trimmed();
    const bool is_name = !plain.isEmpty() && plain != QStringLiteral(".") &&
                         plain != QStringLiteral("..") && !plain.contains(QLatin1Char('/')) &&
                         !plain.contains(QChar(0));
    return is_name ? QUrl::fromLocalFile(QDir(path_).absoluteFilePath(plain)) : QUrl();
}

QString FolderModel::nameOf(const QUrl& file) {
    return QFileInfo(file.toLocalFile()).fileName();
}

QUrl FolderModel::folderOf(const QUrl& file) {
    const QString path = file.toLocalFile();
    return QUrl::fromLocalFile(path.isEmpty() ? folder_of_papers()
                                              : QFileInfo(path).absolutePath());
}

void FolderModel::set_folder(const QUrl& folder) {
    const QString path = folder.toLocalFile();
    path_ = QFileInfo(path).isDir() ? QDir::cleanPath(QFileInfo(path).absoluteFilePath())
                                    : folder_of_papers();
    look();
}

QString FolderModel::path() const {
    return name_on_a_row(path_);
}

void FolderModel::set_filters(const QStringList& filters) {
    filters_ = filters;
    emit filtersChanged();
    look();
}

bool FolderModel::can_go_up() const {
    return !QDir(path_).isRoot();
}

bool FolderModel::writable() const {
    return QFileInfo(path_).isWritable();
}

QVariantList FolderModel::places() const {
    QVariantList places;
    const auto add = [&](const QString& name, const QString& path) {
        if (path.isEmpty() || !QFileInfo(path).isDir()) return;
        for (const QVariant& one : places)
            if (one.toMap()[QStringLiteral("url")].toUrl() == QUrl::fromLocalFile(path)) return;
        places << QVariantMap{{QStringLiteral("name"), name},
                              {QStringLiteral("url"), QUrl::fromLocalFile(path)},
                              {QStringLiteral("here"), path == path_}};
    };
    const auto usual = [](QStandardPaths::StandardLocation which) {
        return QStandardPaths::writableLocation(which);
    };
    add(tr("Home"), QDir::homePath());
    add(tr("Documents"), usual(QStandardPaths::DocumentsLocation));
    add(tr("Desktop"), usual(QStandardPaths::DesktopLocation));
    add(tr("Downloads"), usual(QStandardPaths::DownloadLocation));
    // Where sticks and cards are found.
    for (const QString& below : {QStringLiteral("/media/") + qEnvironmentVariable("USER"),
                                 QStringLiteral("/run/media/") + qEnvironmentVariable("USER")})
        for (const QFileInfo& one :
             QDir(below).entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name))
            add(name_on_a_row(one.fileName()), one.absoluteFilePath());
    add(tr("Everything"), QDir::rootPath());
    return places;
}

int FolderModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant FolderModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const QFileInfo& entry = entries_[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case NameRole:
            return name_on_a_row(entry.fileName());
        case DetailRole:
            return detail_of(entry);
        case SpokenRole:
            return QStringLiteral("%1, %2").arg(name_on_a_row(entry.fileName()), detail_of(entry));
        case UrlRole:
            return urlAt(index.row());
        case FolderRole:
            return entry.isDir();
        default:
            return {};
    }
}

QHash<int, QByteArray> FolderModel::roleNames() const {
    return {{NameRole, "name"},
            {DetailRole, "detail"},
            {SpokenRole, "spoken"},
            {UrlRole, "url"},
            {FolderRole, "isFolder"}};
}

}  // namespace touch
