#include "print/print_file.hpp"

#include <QBuffer>
#include <QObject>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "command_line/card_answers.hpp"
#include "report/lid_card.hpp"

namespace print {

namespace {

constexpr int dots_per_inch = 1200;

QString made_on(QDate today) {
    return QStringLiteral("%1, %2").arg(QString::fromStdString(command_line::name_and_version()),
                                        today.toString(Qt::ISODate));
}

units::Result<QList<Sheet>> card_of(const scenario::ReadScenario& read, Paper paper,
                                    const QString& made) {
    Sheet sheet = lay_out(
        report::lid_card(read.scenario, command_line::card_answers(read), made.toStdString()),
        paper);
    if (!sheet.fits)
        return units::fail({.where = "card",
                            .found = "the names in this file are too long for one page",
                            .remedy = "shorten the names of loads and circuits, or print the "
                                      "report"});
    return QList<Sheet>{sheet};
}

}  // namespace

units::Result<QList<Sheet>> sheets_of(const scenario::ReadScenario& read, Kind, Paper paper,
                                      QDate today) {
    return card_of(read, paper, made_on(today));
}

QString write_pdf(const QList<Sheet>& sheets, const QString& title, const QString& path) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(dots_per_inch);
        writer.setTitle(title);
        writer.setCreator(QString::fromStdString(command_line::name_and_version()));
        QPainter painter;
        for (const Sheet& sheet : sheets) {
            writer.setPageSize(QPageSize(sheet.size, QPageSize::Point));
            writer.setPageMargins({});
            if (!painter.isActive())
                painter.begin(&writer);
            else
                writer.newPage();
            painter.save();
            painter.scale(dots_per_inch / 72.0, dots_per_inch / 72.0);
            paint(painter, sheet);
            painter.restore();
        }
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return QObject::tr("%1 could not be written: %2.").arg(path, file.errorString());
    return {};
}

}  // namespace print
