#include "models/kept_work.hpp"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QSaveFile>
#include <QStandardPaths>

namespace touch {

namespace {

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// For one more version: first, so that there are never too many, whenever the program ends. What an
// earlier end left half written goes as well.
void make_room(QDir& kept, const QString& name) {
    for (const QString& half : kept.entryList({name + QStringLiteral(".*.toml.*")}, QDir::Files))
        kept.remove(half);
    QStringList older = kept.entryList({name + QStringLiteral(".*.toml")}, QDir::Files, QDir::Name);
    while (older.size() >= KeptWork::versions)
        kept.remove(older.takeFirst());
}

}  // namespace

KeptWork::KeptWork(QObject* parent) : QObject(parent) {
    timer_.setSingleShot(true);
    timer_.setInterval(at_most_after);
    connect(&timer_, &QTimer::timeout, this, &KeptWork::keep);
}

KeptWork::~KeptWork() {
    if (timer_.isActive()) keep();
}

QString KeptWork::usualFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
}

QString KeptWork::work_path() const {
    return folder_ + QStringLiteral("/work.json");
}

void KeptWork::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        // Not begun anew by further changes: the first of them waits no longer than the others.
        const auto soon = [this] {
            if (!timer_.isActive() && !folder_.isEmpty()) timer_.start();
        };
        connect(document_, &ScenarioDocument::textChanged, this, soon);
        connect(document_, &ScenarioDocument::fileChanged, this, soon);
        connect(document_, &ScenarioDocument::aboutToSave, this, &KeptWork::keep_version);
        // The window's parts go one after the other, the document perhaps before this.
        connect(document_, &ScenarioDocument::leaving, this, [this] {
            if (timer_.isActive()) keep();
            timer_.stop();
            document_ = nullptr;
        });
    }
    emit changed();
}

void KeptWork::set_folder(const QString& folder) {
    if (folder_ == folder) return;
    folder_ = folder;
    emit changed();
}

bool KeptWork::keep() {
    if (!document_ || folder_.isEmpty() || !QDir().mkpath(folder_)) return false;
    const Work work = document_->work();
    const QJsonObject object{{"path", work.path},
                             {"example", work.example},
                             {"saved", work.saved},
                             {"texts", QJsonArray::fromStringList(work.texts)},
                             {"now", static_cast<int>(work.now)}};
    QSaveFile file(work_path());
    return file.open(QIODevice::WriteOnly) &&
           file.write(QJsonDocument(object).toJson(QJsonDocument::Compact)) >= 0 && file.commit();
}

bool KeptWork::resume(const QUrl& url) {
    if (!document_ || folder_.isEmpty()) return false;
    const QJsonObject object = QJsonDocument::fromJson(bytes_of(work_path())).object();
    Work work{.path = object["path"].toString(),
              .example = object["example"].toBool(),
              .saved = object["saved"].toString(),
              .texts = {},
              .now = object["now"].toInt()};
    for (const QJsonValue text : object["texts"].toArray())
        work.texts << text.toString();
    if (work.now < 0 || work.now >= work.texts.size()) return false;
    const bool of_a_file = !work.path.isEmpty();
    // A file that others changed or took away since is opened as it is now. One that holds a text
    // of this work was saved just before the program ended.
    if (of_a_file) {
        const QString in_file = QString::fromUtf8(bytes_of(work.path));
        if (in_file != work.saved && !work.texts.contains(in_file)) return false;
        work.saved = in_file;
    }
    if (!url.isEmpty() &&
        QFileInfo(url.toLocalFile()).absoluteFilePath() != QFileInfo(work.path).absoluteFilePath())
        return false;
    document_->resume(work);
    return true;
}

QVariantList KeptWork::versionsKept() const {
    QVariantList kept;
    if (!document_ || folder_.isEmpty() || document_->path().isEmpty()) return kept;
    const QString name = QFileInfo(document_->path()).completeBaseName();
    const QDir versions_folder(folder_ + QStringLiteral("/versions"));
    const QStringList found = versions_folder.entryList({name + QStringLiteral(".*.toml")},
                                                        QDir::Files, QDir::Name | QDir::Reversed);
    for (const QString& file : found) {
        const QString stamp = file.mid(name.size() + 1, 15);
        QDateTime saved = QDateTime::fromString(stamp, QStringLiteral("yyyyMMdd-HHmmss"));
        saved.setTimeSpec(Qt::UTC);
        kept << QVariantMap{
            {"path", versions_folder.filePath(file)},
            {"shown", QLocale().toString(saved.toLocalTime(), QLocale::ShortFormat)}};
    }
    return kept;
}

void KeptWork::keep_version(const QString& path) {
    keep();  // so that what is saved is known as this work's, whenever the program ends
    const QByteArray bytes = bytes_of(path);
    QDir kept(folder_ + QStringLiteral("/versions"));
    if (folder_.isEmpty() || bytes.isEmpty() || !kept.mkpath(QStringLiteral("."))) return;
    const QFileInfo info(path);
    const QString stamp =
        QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMdd-HHmmss-zzz"));
    make_room(kept, info.completeBaseName());
    QSaveFile file(kept.filePath(QStringLiteral("%1.%2.toml").arg(info.completeBaseName(), stamp)));
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size()) file.commit();
}

}  // namespace touch
