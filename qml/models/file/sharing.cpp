#include "models/file/sharing.hpp"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>

#include "answers/answer_of.hpp"
#include "faces/sheet.hpp"
#include "models/fields/weather_choices.hpp"
#include "models/file/file_name.hpp"
#include "models/words/told.hpp"
#include "models/words/saved_words.hpp"
#include "models/words/scenario_text.hpp"
#include "questions/outage.hpp"

namespace touch {

namespace {

SharedPage page_of(const QString& text, const QString& file) {
    const auto read = read_shown(text, file);
    if (!read) return {.html = {}, .trouble = in_words(read.error())};
    const auto found = questions::find(*read, questions::OutageAsked{}, questions::How{});
    if (!found) return {.html = {}, .trouble = in_words(found.error())};
    return {.html = QByteArray::fromStdString(
                faces::in_html(answers::answer_of(*found), language_wished())),
            .trouble = {}};
}

}  // namespace

Sharing::Sharing(QObject* parent)
    : QObject(parent),
      making_(
          [this](std::shared_ptr<const SharedPage> page) {
              if (page->trouble.isEmpty())
                  write(page->html, path_);
              else
                  tell(page->trouble, true);
          },
          [this] { emit busyChanged(); },
          [this](const QString& what) { tell(fault_in_words(what), true); }) {}

void Sharing::set_document(ScenarioDocument* document) {
    document_ = document;
    emit documentChanged();
}

QUrl Sharing::suggested(const QString& kind) const {
    const QString path = document_ ? document_->path() : QString();
    const QString folder = path.isEmpty() ? folder_of_papers() : QFileInfo(path).absolutePath();
    const QString name = path.isEmpty() && document_ ? file_name_of(document_->title())
                                                     : QFileInfo(path).completeBaseName();
    return QUrl::fromLocalFile(folder + QLatin1Char('/') + name + QLatin1Char('.') + kind);
}

void Sharing::savePage(const QUrl& file) {
    if (!document_) return;
    path_ = file.toLocalFile();
    tell(QString(), false);
    making_.request(
        [text = document_->text(), from = document_->path()] { return page_of(text, from); });
}

bool Sharing::savePicture(const QVariant& image, const QUrl& file) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    const bool made =
        buffer.open(QIODevice::WriteOnly) && image.value<QImage>().save(&buffer, "png");
    return made ? write(bytes, file.toLocalFile()) : tell(tr("No picture could be made."), true);
}

bool Sharing::write(const QByteArray& bytes, const QString& path) {
    const scenario::Saving saving = save_to(path, bytes);
    const QString name = QFileInfo(path).fileName();
    if (!saving.saved())
        return tell(tr("%1 was not saved: %2.").arg(name, reason_in_words(saving)), true);
    return tell(tr("Saved as %1. Whoever gets it needs nothing else.").arg(name), false);
}

bool Sharing::tell(const QString& words, bool failed) {
    told_ = words;
    failed_ = failed;
    emit toldChanged();
    return !failed;
}

}  // namespace touch
