#include "models/scenario_document.hpp"

#include "models/scenario_text.hpp"
#include <QClipboard>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QSaveFile>

#include "scenario/read.hpp"

namespace touch {

namespace {

constexpr int most_packs = 40;
constexpr int most_panels = 40;
constexpr int most_days = 30;

QString example_path() {
    return QStringLiteral(":/qt/qml/Candlemark/ice_storm.toml");
}

CountStep::State state_of(const std::optional<Turn>& turn, const QString& label,
                          const QString& detail, int least, int most) {
    if (!turn) return {};
    return {.label = label,
            .detail = detail,
            .present = true,
            .shown = turn->shown,
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
    QFile file(example_path());
    if (!file.open(QIODevice::ReadOnly)) {
        tell(tr("The example is missing from this program."));
        return;
    }
    take_file(QString(), QString::fromUtf8(file.readAll()), true);
}

bool ScenarioDocument::open(const QUrl& url) {
    QFile file(url.toLocalFile());
    if (!file.open(QIODevice::ReadOnly)) {
        tell(tr("%1 cannot be opened: %2.").arg(QFileInfo(file).fileName(), file.errorString()));
        return false;
    }
    take_file(file.fileName(), QString::fromUtf8(file.readAll()), false);
    return true;
}

bool ScenarioDocument::save() {
    return saveAs(QUrl::fromLocalFile(path_));
}

bool ScenarioDocument::saveAs(const QUrl& url) {
    emit aboutToSave(url.toLocalFile());
    QSaveFile file(url.toLocalFile());
    if (!file.open(QIODevice::WriteOnly) || file.write(text_.toUtf8()) < 0 || !file.commit()) {
        tell(tr("%1 was not saved: %2.")
                 .arg(QFileInfo(file.fileName()).fileName(), file.errorString()));
        return false;
    }
    path_ = file.fileName();
    example_ = false;
    saved_text_ = text_;
    tell(QString());
    emit fileChanged();
    emit changedChanged();
    return true;
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
    const TextOrTrouble changed = with_value(text_, key, value);
    tell(changed.trouble);
    if (!changed.trouble.isEmpty()) return false;
    set_text(changed.text);
    return true;
}

QString ScenarioDocument::change(const Edit& edit) {
    const TextOrTrouble changed = with_edit(text_, edit);
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
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        tell(tr("%1 cannot be opened: %2.").arg(QFileInfo(file).fileName(), file.errorString()));
        return false;
    }
    return take_text(QString::fromUtf8(file.readAll()), QFileInfo(file).fileName());
}

bool ScenarioDocument::take_text(const QString& text, const QString& called) {
    const auto read = scenario::read_scenario(text.toStdString(), std::string());
    if (!read) {
        tell(tr("%1 is not a scenario that can be read: %2").arg(called, in_words(read.error())));
        return false;
    }
    tell(QString());
    set_text(text);
    return true;
}

void ScenarioDocument::tellAgain() {
    if (text_.isEmpty()) return;
    take_counts();
    emit textChanged();
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
    take_counts();
    emit textChanged();
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
    history_.resume(work.texts, work.now);
    tell(QString());
    show_text(work.texts.value(work.now));
    emit fileChanged();
    emit changedChanged();
}

QString ScenarioDocument::file_name() const {
    return path_.isEmpty() ? QString() : QFileInfo(path_).fileName();
}

void ScenarioDocument::tell(const QString& trouble) {
    if (trouble == trouble_) return;
    trouble_ = trouble;
    emit troubleChanged();
}

void ScenarioDocument::take_counts() {
    const Counts counts = counts_in(text_);
    if (!counts.readable) return;  // the steps stay as they were until the text can be read again
    title_ = counts.title;
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
    history_.begin(text);
    tell(QString());
    show_text(text);
    emit fileChanged();
    emit changedChanged();
}

}  // namespace touch
