#include "models/file/kept_work.hpp"

#include <algorithm>

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QStandardPaths>

#include "models/file/kept_versions.hpp"
#include "models/words/saved_words.hpp"

namespace touch {

namespace {

// A piece is two lines: what can be told of it, and the work itself.
QByteArray in_bytes(const Work& work, bool unsaved, int starts) {
    const QJsonObject head{
        {"path", work.path}, {"example", work.example}, {"unsaved", unsaved}, {"starts", starts}};
    const QJsonObject body{{"saved", work.saved},
                           {"texts", QJsonArray::fromStringList(work.texts)},
                           {"now", static_cast<int>(work.now)}};
    return QJsonDocument(head).toJson(QJsonDocument::Compact) + '\n' +
           QJsonDocument(body).toJson(QJsonDocument::Compact) + '\n';
}

struct Head {
    QString path;
    bool known = false;  // it could be read; what could not is neither offered nor taken away
    bool unsaved = true;
    int starts = 0;  // of the program with this work that did not come far
};

QJsonObject object_in(const QByteArray& line) {
    return QJsonDocument::fromJson(line).object();
}

Head head_of(const QString& place) {
    QFile file(place);
    const QJsonObject head =
        file.open(QIODevice::ReadOnly) ? object_in(file.readLine()) : QJsonObject();
    return {.path = head["path"].toString(),
            .known = !head.isEmpty(),
            .unsaved = head["unsaved"].toBool(true),
            .starts = head["starts"].toInt()};
}

std::optional<Work> work_in(const QString& place) {
    QFile file(place);
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const QJsonObject head = object_in(file.readLine());
    const QJsonObject body = object_in(file.readAll());
    Work work{.path = head["path"].toString(),
              .example = head["example"].toBool(),
              .saved = body["saved"].toString(),
              .texts = {},
              .now = body["now"].toInt()};
    for (const QJsonValue text : body["texts"].toArray())
        work.texts << text.toString();
    if (work.now < 0 || work.now >= work.texts.size()) return std::nullopt;
    return work;
}

QString shown_time(const QString& place) {
    return QLocale().toString(QFileInfo(place).lastModified(), QLocale::ShortFormat);
}

// Nothing when the file is not there or is not text.
std::optional<QString> text_in_file(const QString& path) {
    const std::optional<QByteArray> bytes = bytes_in_file(path);
    return bytes ? text_of(*bytes) : std::nullopt;
}

// The work of a piece, beside what its file holds now. Nothing where others changed or took away
// the file since: that is opened as it is now, and the work is offered beside it. A file that holds
// a text of this work was saved just before the end.
std::optional<Work> work_over_its_file(const QString& place) {
    std::optional<Work> work = work_in(place);
    if (!work || work->path.isEmpty()) return work;
    const std::optional<QString> in_file = text_in_file(work->path);
    if (!in_file || (*in_file != work->saved && !work->texts.contains(*in_file)))
        return std::nullopt;
    work->saved = *in_file;
    return work;
}

QString name_of(const QString& path) {
    return path.isEmpty() ? QObject::tr("a scenario without a file") : QFileInfo(path).fileName();
}

}  // namespace

KeptWork::KeptWork(QObject* parent) : QObject(parent) {
    timer_.setSingleShot(true);
    timer_.setInterval(at_most_after);
    connect(&timer_, &QTimer::timeout, this, [this] {
        if (!keep()) timer_.start(again_after);
    });
}

KeptWork::~KeptWork() {
    keep_at_the_end();
    if (document_) {
        document_->set_version_keeper({});
        document_->set_leaver({});
    }
}

QString KeptWork::usualFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
}

QString KeptWork::work_folder() const {
    return folder_ + QStringLiteral("/work");
}

QString KeptWork::place(const QString& file) const {
    return work_folder() + QLatin1Char('/') + file;
}

void KeptWork::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) {
        document_->disconnect(this);
        document_->set_version_keeper({});
        document_->set_leaver({});
    }
    document_ = document;
    if (document_) {
        // Not begun anew by further changes: the first of them waits no longer than the others.
        const auto soon = [this] {
            if ((!timer_.isActive() || timer_.interval() != at_most_after) && !folder_.isEmpty())
                timer_.start(at_most_after);
        };
        connect(document_, &ScenarioDocument::textChanged, this, soon);
        connect(document_, &ScenarioDocument::faultChanged, this, soon);
        connect(document_, &ScenarioDocument::fileChanged, this, soon);
        // So that what is saved is known as this work's, whenever the program ends.
        connect(document_, &ScenarioDocument::aboutToSave, this, &KeptWork::keep);
        connect(document_, &ScenarioDocument::opened, this, &KeptWork::look_for_left);
        document_->set_version_keeper([this](const QString& path, const QByteArray& bytes) {
            return folder_.isEmpty() || keep_version(folder_, path, bytes);
        });
        document_->set_leaver([this] { return folder_.isEmpty() || leave(); });
        // The window's parts go one after the other, the document perhaps before this.
        connect(document_, &ScenarioDocument::leaving, this, [this] {
            keep_at_the_end();
            document_ = nullptr;
        });
    }
    emit changed();
}

void KeptWork::set_folder(const QString& folder) {
    if (folder_ == folder) return;
    folder_ = folder;
    own_.clear();
    name_.let_go();
    emit changed();
    emit leftChanged();
}

void KeptWork::keep_at_the_end() {
    const bool due = timer_.isActive() || starts_ > 0;
    starts_ = 0;
    if (due) keep();
    timer_.stop();
}

bool KeptWork::hold_a_name() {
    if (folder_.isEmpty() || !QDir().mkpath(work_folder())) return false;
    return !name_.name().isEmpty() || name_.take(work_folder());
}

bool KeptWork::keep() {
    return document_ && keep_as(document_->work(), document_->changed());
}

bool KeptWork::keep_as(const Work& work, bool unsaved) {
    if (folder_.isEmpty()) return false;
    if (!hold_a_name()) {
        set_trouble(tr("Unsaved work cannot be kept in %1. Save it in a file.").arg(folder_));
        return false;
    }
    const QString file = QStringLiteral("%1.%2.json").arg(key_of(work.path), name_.name());
    const scenario::Saving saving = save_to(place(file), in_bytes(work, unsaved, starts_));
    if (!saving.saved()) {
        set_trouble(tr("Unsaved work cannot be kept in %1: %2. Save it in a file.")
                        .arg(folder_, reason_in_words(saving)));
        return false;
    }
    if (!own_.isEmpty() && own_ != file) QFile::remove(place(own_));
    own_ = file;
    set_trouble({});
    return true;
}

QList<KeptWork::Piece> KeptWork::all_pieces() const {
    QList<Piece> pieces;
    const QDir folder(work_folder());
    for (const QString& file :
         folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
        const QStringList parts = file.split(QLatin1Char('.'));
        if (parts.size() == 3) pieces.append({.file = file, .key = parts[0], .window = parts[1]});
    }
    return pieces;
}

QList<KeptWork::Piece> KeptWork::left_behind() const {
    QList<Piece> left;
    for (const Piece& piece : all_pieces())
        if (piece.window != name_.name() && !WindowLock::is_held(work_folder(), piece.window))
            left.append(piece);
    return left;
}

bool KeptWork::is_on_another_window(const QString& path) const {
    const QString key = key_of(path);
    return std::ranges::any_of(all_pieces(), [&](const Piece& piece) {
        return piece.key == key && piece.window != name_.name() &&
               WindowLock::is_held(work_folder(), piece.window);
    });
}

bool KeptWork::claim(const Piece& piece) {
    if (!hold_a_name()) return false;
    const QString mine = QStringLiteral("%1.%2.json").arg(piece.key, name_.name());
    if (!QFile::rename(place(piece.file), place(mine))) return false;
    own_ = mine;
    return true;
}

void KeptWork::take_up(const Work& work, const QString& shown) {
    document_->resume(work);
    if (!document_->changed()) return;
    tell(tr("Unsaved work on %1, kept %2, was taken up again. The way back through its changes "
            "stays open.")
             .arg(name_of(work.path), shown));
}

// Until it has settled, it counts among those that may have ended the program.
void KeptWork::go_on_with(const Work& work, int starts, const QString& shown) {
    starts_ = starts;
    keep_as(work, work.texts[work.now] != work.saved);
    take_up(work, shown);
    QTimer::singleShot(settled_after, this, [this] {
        starts_ = 0;
        keep();
    });
}

bool KeptWork::resume(const QUrl& url) {
    if (!document_ || folder_.isEmpty()) return false;
    const QString asked = url.toLocalFile();
    clear_halves(work_folder());
    bool taken = false;
    bool more = false;
    QList<Piece> pieces = left_behind();
    std::ranges::stable_partition(
        pieces, [this](const Piece& piece) { return head_of(place(piece.file)).unsaved; });
    for (const Piece& piece : pieces) {
        const Head head = head_of(place(piece.file));
        // What ended the program time and again is offered, not taken up unasked.
        const bool wanted =
            !taken && head.starts < most_starts && (url.isEmpty() || piece.key == key_of(asked));
        const auto work = wanted ? work_over_its_file(place(piece.file)) : std::nullopt;
        const QString shown = shown_time(place(piece.file));
        if (work && claim(piece)) {
            taken = true;
            go_on_with(*work, head.starts + 1, shown);
        } else if (head.unsaved && head.known) {
            more = more || !told_of_all_ || piece.key == key_of(asked);
        } else if (head.known && (wanted || url.isEmpty())) {
            QFile::remove(place(piece.file));  // its text is in its file
        }
    }
    told_of_all_ = true;
    if (more) tell(tr("Unsaved work of earlier is kept: it is listed on the File page."));
    if (taken) tell_of_other_windows();
    emit leftChanged();
    return taken;
}

void KeptWork::tell_of_other_windows() {
    const QString path = document_->path();
    if (!path.isEmpty() && is_on_another_window(path))
        tell(tr("%1 is open in another window as well. Whoever saves second is asked.")
                 .arg(name_of(path)));
}

void KeptWork::look_for_left() {
    if (!document_ || folder_.isEmpty()) return;
    heard();
    if (!resume(QUrl::fromLocalFile(document_->path()))) tell_of_other_windows();
    keep();
}

// Work that is not saved stays as a piece of no window; other work is in its file.
bool KeptWork::leave() {
    if (!document_ || document_->text().isEmpty()) return true;
    timer_.stop();
    starts_ = 0;
    heard();
    if (document_->changed()) {
        if (!keep()) return false;
        const QString left = QStringLiteral("%1.%2.json").arg(own_.section('.', 0, 0), new_name());
        if (!QFile::rename(place(own_), place(left))) return false;
    } else if (!own_.isEmpty()) {
        QFile::remove(place(own_));
    }
    own_.clear();
    const QList<Piece> left = left_behind();
    for (const Piece& oldest : left.mid(std::min<qsizetype>(most_left, left.size())))
        put_away(oldest.file);
    emit leftChanged();
    return true;
}

bool KeptWork::takeUp(const QString& piece) {
    const QStringList parts = piece.split(QLatin1Char('.'));
    const std::optional<Work> work = work_in(place(piece));
    if (!document_ || parts.size() != 3 || !work || !leave() ||
        !claim({.file = piece, .key = parts[0], .window = parts[1]})) {
        emit leftChanged();
        return false;
    }
    take_up(*work, shown_time(place(own_)));
    emit leftChanged();
    return true;
}

bool KeptWork::put_away(const QString& piece) {
    const std::optional<Work> work = work_in(place(piece));
    return work && keep_version(folder_, work->path, bytes_of(work->texts[work->now])) &&
           QFile::remove(place(piece));
}

bool KeptWork::putAway(const QString& piece) {
    const bool away = put_away(piece);
    emit leftChanged();
    return away;
}

QVariantList KeptWork::left() const {
    QVariantList all;
    if (folder_.isEmpty()) return all;
    for (const Piece& piece : left_behind()) {
        const Head head = head_of(place(piece.file));
        if (!head.unsaved || !head.known) continue;
        all << QVariantMap{
            {"piece", piece.file},
            {"name", name_of(head.path)},
            {"detail", head.path.isEmpty() ? shown_time(place(piece.file))
                                           : tr("%1, in %2")
                                                 .arg(shown_time(place(piece.file)),
                                                      QFileInfo(head.path).absolutePath())}};
    }
    return all;
}

QVariantList KeptWork::versionsKept() const {
    QVariantList kept;
    if (!document_ || folder_.isEmpty()) return kept;
    for (const KeptVersion& version : versions_of(folder_, document_->path()))
        kept << QVariantMap{{"path", version.path}, {"shown", version.shown}};
    return kept;
}

void KeptWork::heard() {
    if (told_.isEmpty()) return;
    told_.clear();
    emit toldChanged();
}

void KeptWork::tell(const QString& words) {
    if (told_.contains(words)) return;
    told_ += (told_.isEmpty() ? QString() : QStringLiteral("\n")) + words;
    emit toldChanged();
}

void KeptWork::set_trouble(const QString& trouble) {
    if (trouble_ == trouble) return;
    trouble_ = trouble;
    emit troubleChanged();
}

}  // namespace touch
