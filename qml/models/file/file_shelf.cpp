#include "models/file/file_shelf.hpp"

#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QVariantMap>

#include "models/file/templates.hpp"
#include "models/words/saved_words.hpp"
#include "units/quote.hpp"

namespace touch {

namespace {

QString on_one_line(const QString& text) {
    constexpr int longest = 400;
    return QString::fromStdString(units::quote(text.toStdString(), longest));
}

}  // namespace

void FileShelf::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::fileChanged, this, &FileShelf::note_file);
    emit documentChanged();
}

void FileShelf::set_plan(PlanRunner* plan) {
    if (plan_ == plan) return;
    if (plan_) plan_->disconnect(this);
    plan_ = plan;
    if (plan_) connect(plan_, &PlanRunner::planned, this, &FileShelf::note_answer);
    emit documentChanged();
}

void FileShelf::set_folder(const QString& folder) {
    if (folder_ == folder) return;
    folder_ = folder;
    take_up();
    emit changed();
}

void FileShelf::set_language(const QString& language) {
    language_ = language;
    emit told();
}

QVariantList FileShelf::templates_told() const {
    QVariantList all;
    for (const Template& one : templates())
        all << QVariantMap{{"key", one.key}, {"name", one.name}, {"detail", one.detail}};
    return all;
}

QVariantList FileShelf::recent() const {
    QVariantList all;
    for (const Recent& one : recent_) {
        const QFileInfo file(one.path);
        all << QVariantMap{
            {"url", QUrl::fromLocalFile(one.path)},
            {"name", one.title.isEmpty() ? on_one_line(file.fileName()) : on_one_line(one.title)},
            {"answer", on_one_line(one.answer)},
            {"detail", on_one_line(one.path)},
            {"there", file.isFile()}};
    }
    return all;
}

void FileShelf::forget(const QUrl& file) {
    recent_.removeIf([&](const Recent& one) { return one.path == file.toLocalFile(); });
    keep();
    emit changed();
}

// The file that is open goes to the top.
void FileShelf::note_file() {
    if (!document_ || document_->path().isEmpty()) return;
    take_up();  // another window may have opened others since
    Recent now{.path = document_->path(), .title = document_->title(), .answer = {}};
    for (const Recent& one : recent_)
        if (one.path == now.path) now.answer = one.answer;
    recent_.removeIf([&](const Recent& one) { return one.path == now.path; });
    recent_.prepend(now);
    recent_ = recent_.mid(0, most_recent);
    keep();
    emit changed();
}

// Only the answer to what the file holds stands beside it.
void FileShelf::note_answer() {
    if (!document_ || !plan_ || !plan_->answered() || document_->changed()) return;
    for (Recent& one : recent_) {
        if (one.path != document_->path() || one.answer == plan_->sentence()) continue;
        one.title = document_->title();
        one.answer = plan_->sentence();
        keep();
        emit changed();
    }
}

void FileShelf::take_up() {
    if (folder_.isEmpty()) return;
    const auto bytes = bytes_in_file(folder_ + QStringLiteral("/recent.json"));
    if (!bytes) return;
    recent_.clear();
    for (const QJsonValue one : QJsonDocument::fromJson(*bytes).array()) {
        const QJsonObject file = one.toObject();
        const QString path = file[QStringLiteral("path")].toString();
        if (!path.isEmpty() && recent_.size() < most_recent)
            recent_.append({.path = path,
                            .title = file[QStringLiteral("title")].toString(),
                            .answer = file[QStringLiteral("answer")].toString()});
    }
}

// Where this fails the list holds until the program ends; the work itself is kept elsewhere, which
// tells that nothing can be written.
void FileShelf::keep() {
    if (folder_.isEmpty()) return;
    QJsonArray all;
    for (const Recent& one : recent_)
        all.append(QJsonObject{{"path", one.path}, {"title", one.title}, {"answer", one.answer}});
    QDir().mkpath(folder_);
    static_cast<void>(
        save_to(folder_ + QStringLiteral("/recent.json"), QJsonDocument(all).toJson()));
}

}  // namespace touch
