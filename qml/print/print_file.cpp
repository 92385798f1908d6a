#include "print/print_file.hpp"

#include <string_view>
#include <utility>

#include <QBuffer>
#include <QFile>
#include <QObject>
#include <QPdfWriter>

#include "answers/answer_of.hpp"
#include "answers/card/lid_card.hpp"
#include "answers/card/parts.hpp"
#include "command_line/made_by.hpp"
#include "command_line/questions.hpp"
#include "faces/paper.hpp"
#include "print/printer.hpp"
#include "questions/card.hpp"
#include "questions/found.hpp"

namespace printing {

namespace {

constexpr int dots_per_inch = 1200;

QString made_on(QDate today) {
    return QStringLiteral("%1, %2").arg(QString::fromStdString(command_line::name_and_version()),
                                        today.toString(Qt::ISODate));
}

units::Result<QList<Sheet>> card_of(const scenario::ReadScenario& read, Paper paper,
                                    const QString& made, const words::Language& language) {
    Sheet sheet = lay_out(
        answers::lid_card(read.scenario, questions::find_for_card(read, {}), made.toStdString()),
        paper, language);
    if (!sheet.fits)
        return units::fail({.where = "card",
                            .found = faces::paper::too_long_for_the_card(),
                            .remedy = faces::paper::shorten_names()});
    return QList<Sheet>{sheet};
}

// compare wants two files, gauge a reading: neither is a question of the file alone.
bool is_of_the_file_alone(const command_line::Question& question) {
    const std::string_view name = question.name;
    return name != "compare" && name != "gauge" && name != "read" && name != "note" &&
           name != "now" && name != "learnt";
}

}  // namespace

Book book_of(const scenario::ReadScenario& read, std::string made) {
    Book book{.title = read.scenario.title, .made = std::move(made), .chapters = {}};
    for (const auto& question : command_line::questions()) {
        if (!is_of_the_file_alone(question)) continue;
        command_line::Request request;
        request.question = &question;
        auto answer = command_line::answer_to(read, request);
        if (answer)
            book.chapters.push_back({question.name, question.asks, std::move(*answer), {}});
        else
            book.chapters.push_back(
                {question.name, question.asks, {}, answers::reason_in(answer.error())});
    }
    return book;
}

namespace {

units::Result<QList<Sheet>> wiring_of(const scenario::ReadScenario& read, Paper paper,
                                      const QString& made, const words::Language& language) {
    const auto found = questions::find(read, questions::Asked{questions::WiringAsked{}}, {});
    if (!found) return units::fail(found.error());
    return lay_out_wiring(answers::answer_of(*found), made.toStdString(), paper, language);
}

}  // namespace

units::Result<QList<Sheet>> sheets_of(const scenario::ReadScenario& read, Kind kind, Paper paper,
                                      QDate today, const words::Language& language) {
    const QString made = made_on(today);
    switch (kind) {
        case Kind::report:
            return lay_out(book_of(read, made.toStdString()), paper, language);
        case Kind::wiring:
            return wiring_of(read, paper, made, language);
        case Kind::card:
            break;
    }
    return card_of(read, paper, made, language);
}

scenario::Saving write_file(const QByteArray& bytes, const QString& path) {
    return scenario::save_bytes(QFile::encodeName(path).toStdString(),
                                {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

QByteArray in_pdf(const QList<Sheet>& sheets, const QString& title) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(dots_per_inch);
        writer.setTitle(title);
        writer.setCreator(QString::fromStdString(command_line::name_and_version()));
        if (!paint_pages(writer, sheets)) return {};
    }
    return bytes;
}

scenario::Saving write_pdf(const QList<Sheet>& sheets, const QString& title, const QString& path) {
    return write_file(in_pdf(sheets, title), path);
}

}  // namespace printing
