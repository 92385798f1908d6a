#include "models/file/scenario_document.hpp"

#include <exception>
#include <optional>

#include <QClipboard>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include "models/file/file_name.hpp"
#include "models/file/templates.hpp"
#include "models/words/saved_words.hpp"
#include "models/words/scenario_text.hpp"
#include "models/words/told.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/saving.hpp"
#include "scenario/file/syntax.hpp"
#include "scenario/keys/most.hpp"
#include "units/quote.hpp"

namespace touch {

namespace {

using scenario::most_days;
using scenario::most_packs;
using scenario::most_panels;

// On one line, with marks that turn the writing made visible.
QString name_to_show(const QString& path) {
    constexpr int longest = 255;  // what a file system takes at most
    return QString::fromStdString(units::quote(QFileInfo(path).fileName().toStdString(), longest));
}

// What can be shown as a text: the words of a refusal are those of the command line.
units::Result<std::string> bytes_to_show(const QUrl& url) {
    const std::string path = url.toLocalFile().toStdString();
    if (path.empty())
        return units::fail({.where = "",
                            .found = "only a file of this computer can be opened",
                            .remedy = "save it here and open that",
                            .file = url.toDisplayString().toStdString()});
    auto bytes = scenario::bytes_of_file(path);
    if (!bytes) return bytes;
    if (bytes->empty()) return units::fail(scenario::read_scenario(*bytes, path).error());
    if (auto unfit = scenario::unfit_to_parse(*bytes)) {
        unfit->file = path;
        return units::fail(std::move(*unfit));
    }
    return bytes;
}

CountStep::State state_of(const std::optional<Turn>& turn, const QString& label,
                          const QString& detail, int least, int most) {
    if (!turn) return {};
    return {.label = label,
            .detail = detail,
            .present = true,
            .shown = turn->shown,
            .value = turn->value,
            .below = turn->below,
            .above = turn->above,
            .least = least,
            .most = most};
}

}  // namespace

ScenarioDocument::ScenarioDocument(QObject* parent)
    : QObject(parent),
      packs_([this](int count) { put(pack_key_, QString::number(count)); }),
      panels_([this](int count) { put(QStringLiteral("panel[0].count"), QString::number(count)); }),
      days_([this](int count) {
          put(QStringLiteral("outage.lasts"), QStringLiteral("%1 d").arg(count));
      }) {}

ScenarioDocument::~ScenarioDocument() {
    emit leaving();
}

void ScenarioDocument::openExample() {
    openTemplate(QStringLiteral("ice_storm"));
}

void ScenarioDocument::openTemplate(const QString& key) {
    const std::optional<QString> text = text_of_template(key);
    if (!text) {
        tell(tr("The example is missing from this program."));
        return;
    }
    if (!may_leave(tr("The example"))) return;
    take_file(QString(), *text, true);
}

bool ScenarioDocument::begin(const QString& text) {
    if (!may_leave(tr("A new plan"))) return false;
    take_file(QString(), text, false);
    return true;
}

bool ScenarioDocument::open(const QUrl& url) {
    const auto bytes = bytes_to_show(url);
    if (!bytes) {
        tell(tr("Not opened: %1").arg(touch::told(units::in_words(bytes.error().front()))));
        return false;
    }
    const QByteArray read = QByteArray::fromStdString(*bytes);
    const QString name = name_to_show(url.toLocalFile());
    const std::optional<QString> text = text_of(read);
    if (!text) {
        tell(tr("%1 is not opened, for saving it would change more than you do: line %2 is not "
                "UTF-8. Let an editor save it as UTF-8.")
                 .arg(name)
                 .arg(line_that_is_no_text(read)));
        return false;
    }
    if (!may_leave(name)) return false;
    take_file(QFileInfo(url.toLocalFile()).absoluteFilePath(), *text, false);
    emit opened();
    return true;
}

bool ScenarioDocument::save() {
    return write(path_, false);
}

bool ScenarioDocument::saveAs(const QUrl& url) {
    return write(url.toLocalFile(), true);
}

bool ScenarioDocument::keepMine() {
    return write(path_, true);
}

bool ScenarioDocument::takeTheirs() {
    const QString name = file_name();
    const std::optional<QByteArray> there = bytes_in_file(path_);
    const std::optional<QString> theirs = there ? text_of(*there) : std::nullopt;
    if (!theirs) {
        tell(tr("%1 cannot be read as text any more.").arg(name));
        return false;
    }
    if (version_keeper_ && !version_keeper_(path_, bytes_of(text_))) {
        tell(tr("What you changed cannot be kept as a version, so it stays on the screen."));
        return false;
    }
    if (!take_text(*theirs, name)) return false;
    saved_text_ = *theirs;
    emit fileChanged();
    emit changedChanged();
    return true;
}

bool ScenarioDocument::write(const QString& path, bool agreed) {
    emit aboutToSave();
    const QByteArray mine = bytes_of(text_);
    const QFileInfo file(path);
    const bool is_there = file.exists();
    const std::optional<QByteArray> read = bytes_in_file(path);
    if (is_there && !file.isFile()) return not_saved(path, tr("it is no plain file"));
    if (is_there && !read) return not_saved(path, tr("what it holds now cannot be read"));
    const QByteArray there = read.value_or(QByteArray());
    // What gives way is kept first, and then only that gives way.
    const bool gives_way = !there.isEmpty() && there != mine;
    const bool kept = !gives_way || !version_keeper_ || version_keeper_(path, there);
    if (!kept && agreed)
        return not_saved(path, tr("what it holds now cannot be kept as a version"));
    const bool known = !is_there || agreed || there == mine || there == bytes_of(saved_text_) ||
                       (there == bytes_of(unsettled_text_) && !unsettled_text_.isNull());
    if (!known) {
        emit changedOutside();
        return false;
    }
    const scenario::Saving saving = scenario::save_bytes_over(
        QFile::encodeName(path).toStdString(), there.toStdString(), mine.toStdString());
    if (saving.end == scenario::SaveEnd::changed_outside && !agreed) {
        emit changedOutside();
        return false;
    }
    // It is there, and is ours, though it does not count as saved.
    if (saving.end == scenario::SaveEnd::unsettled) unsettled_text_ = text_;
    if (!saving.saved()) return not_saved(path, reason_in_words(saving));
    path_ = file.absoluteFilePath();
    example_ = false;
    saved_text_ = text_;
    tell(kept ? QString() : tr("Saved, but what was there before could not be kept as a version."));
    emit fileChanged();
    emit changedChanged();
    return true;
}

bool ScenarioDocument::not_saved(const QString& path, const QString& reason) {
    tell(tr("%1 was not saved: %2. What you changed is still here.")
             .arg(QFileInfo(path).fileName(), reason));
    return false;
}

bool ScenarioDocument::may_leave(const QString& name) {
    if (!leaver_ || leaver_()) return true;
    tell(tr("%1 is not opened: what you changed here is not saved and cannot be kept. Save it "
            "first.")
             .arg(name));
    return false;
}

void ScenarioDocument::backToGood() {
    if (!has_good()) return;
    tell(QString());
    set_text(last_good());
}

QString ScenarioDocument::last_good() const {
    return good_text_ == text_ ? good_before_ : good_text_;
}

void ScenarioDocument::leavePage() {
    if (fault_.isEmpty() || fault_of_plan_) return;
    fault_.clear();
    emit faultChanged();
}

void ScenarioDocument::tell_fault(const QString& what, bool of_plan) {
    fault_ = what.isEmpty() ? tr("no further words") : what;
    fault_of_plan_ = fault_of_plan_ || of_plan;
    emit faultChanged();
}

void ScenarioDocument::note_good(const QString& text) {
    if (text == good_text_) return;
    good_before_ = good_text_;
    good_text_ = text;
}

bool ScenarioDocument::without_fault(const std::function<void()>& work) {
    try {
        work();
        return true;
    } catch (const std::exception& fault) {
        tell_fault(QString::fromUtf8(fault.what()), true);
    } catch (...) {
        tell_fault({}, true);
    }
    return false;
}

// Others may ask the engine at once as they hear of it.
void ScenarioDocument::tell_all() {
    without_fault([this] { emit textChanged(); });
}

QUrl ScenarioDocument::folder() const {
    return QUrl::fromLocalFile(path_.isEmpty() ? folder_of_papers()
                                               : QFileInfo(path_).absolutePath());
}

QUrl ScenarioDocument::suggestedFile() const {
    if (!path_.isEmpty()) return QUrl::fromLocalFile(path_);
    return QUrl::fromLocalFile(folder().toLocalFile() + QLatin1Char('/') + file_name_of(title_) +
                               QStringLiteral(".toml"));
}

bool ScenarioDocument::isThere(const QUrl& file) {
    return file.isLocalFile() && QFileInfo::exists(file.toLocalFile());
}

QUrl ScenarioDocument::withEnding(const QUrl& file, const QString& ending) {
    const QString path = file.toLocalFile();
    const QString end = QLatin1Char('.') + ending;
    if (ending.isEmpty() || path.isEmpty() || path.endsWith(end, Qt::CaseInsensitive)) return file;
    return QUrl::fromLocalFile(path + end);
}

bool ScenarioDocument::put(const QString& key, const QString& value) {
    TextOrTrouble changed;
    if (!without_fault([&] { changed = with_value(text_, key, value); })) return false;
    tell(changed.trouble);
    if (!changed.trouble.isEmpty()) return false;
    set_text(changed.text);
    return true;
}

QString ScenarioDocument::change(const Edit& edit) {
    TextOrTrouble changed;
    if (!without_fault([&] { changed = with_edit(text_, edit); }))
        return tr("A fault of this program: %1").arg(fault_);
    if (changed.trouble.isEmpty()) {
        tell(QString());
        set_text(changed.text);
    }
    return changed.trouble;
}

void ScenarioDocument::copyText() const {
    QGuiApplication::clipboard()->setText(text_);
}

bool ScenarioDocument::pasteText() {
    return take_text(QGuiApplication::clipboard()->text(), tr("What was copied"));
}

bool ScenarioDocument::takeTextOf(const QString& path) {
    const auto bytes = bytes_to_show(QUrl::fromLocalFile(path));
    if (!bytes) {
        tell(tr("Not opened: %1").arg(touch::told(units::in_words(bytes.error().front()))));
        return false;
    }
    const std::optional<QString> text = text_of(QByteArray::fromStdString(*bytes));
    if (!text) {
        tell(tr("%1 cannot be read as text any more.").arg(name_to_show(path)));
        return false;
    }
    return take_text(*text, name_to_show(path));
}

bool ScenarioDocument::take_text(const QString& text, const QString& called) {
    QString why_not;
    const bool worked = without_fault([&] {
        const auto read = scenario::read_scenario(text.toStdString(), std::string());
        if (!read) why_not = in_words(read.error());
    });
    if (!worked) return false;
    if (!why_not.isEmpty()) {
        tell(tr("%1 is not a scenario that can be read: %2").arg(called, why_not));
        return false;
    }
    tell(QString());
    set_text(text);
    return true;
}

void ScenarioDocument::putLine(int line, const QString& words) {
    if (line == 0) {
        const bool ended = text_.isEmpty() || text_.endsWith(QLatin1Char('\n'));
        tell(QString());
        set_text(text_ + (ended ? QString() : QStringLiteral("\n")) + words + QLatin1Char('\n'));
        return;
    }
    QStringList lines = text_.split(QLatin1Char('\n'));
    if (line < 1 || line > lines.size()) return;
    QString& changed = lines[line - 1];
    const bool ends_with_return = changed.endsWith(QLatin1Char('\r'));
    changed = words + (ends_with_return ? QStringLiteral("\r") : QString());
    tell(QString());
    set_text(lines.join(QLatin1Char('\n')));
}

void ScenarioDocument::tellAgain() {
    if (text_.isEmpty()) return;
    take_counts();
    tell_all();
}

void ScenarioDocument::undo() {
    tell(QString());
    show_text(history_.undo());
}

void ScenarioDocument::redo() {
    tell(QString());
    show_text(history_.redo());
}

void ScenarioDocument::set_text(const QString& text) {
    history_.record(text);
    show_text(text);
}

void ScenarioDocument::show_text(const QString& text) {
    if (text == text_) return;
    text_ = text;
    fault_.clear();
    fault_of_plan_ = false;
    emit faultChanged();
    take_counts();
    tell_all();
    emit changedChanged();
}

Work ScenarioDocument::work() const {
    return {.path = path_,
            .example = example_,
            .saved = saved_text_,
            .texts = history_.texts(),
            .now = history_.now()};
}

void ScenarioDocument::resume(const Work& work) {
    path_ = work.path;
    example_ = work.example;
    saved_text_ = work.saved;
    good_text_.clear();
    good_before_.clear();
    history_.resume(work.texts, work.now);
    tell(QString());
    show_text(work.texts.value(work.now));
    emit fileChanged();
    emit changedChanged();
}

QString ScenarioDocument::file_name() const {
    return path_.isEmpty() ? QString() : name_to_show(path_);
}

void ScenarioDocument::tell(const QString& trouble) {
    if (trouble == trouble_) return;
    trouble_ = trouble;
    emit troubleChanged();
}

void ScenarioDocument::take_counts() {
    Counts counts;
    if (!without_fault([&] { counts = counts_in(text_); })) return;
    broken_ = !counts.readable;
    if (broken_ && title_of_ != path_) title_ = file_name();  // not that of another file
    if (broken_) return;  // the steps stay as they were until the text can be read again
    title_ = counts.title;
    title_of_ = path_;
    pack_key_ = counts.pack_key;
    packs_.set_state(state_of(counts.packs, counts.only_pack ? tr("Packs") : tr("Expansion packs"),
                              counts.pack_detail, counts.only_pack ? 1 : 0, most_packs));
    panels_.set_state(state_of(counts.panels, tr("Panels"), counts.panel_detail, 0, most_panels));
    days_.set_state(state_of(counts.days, tr("Outage days"), counts.days_detail, 1, most_days));
}

void ScenarioDocument::take_file(const QString& path, const QString& text, bool example) {
    path_ = path;
    example_ = example;
    saved_text_ = text;
    good_text_.clear();
    good_before_.clear();
    history_.begin(text);
    tell(QString());
    show_text(text);
    emit fileChanged();
    emit changedChanged();
}

}  // namespace touch
