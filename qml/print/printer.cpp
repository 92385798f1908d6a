#include "print/printer.hpp"

#include <algorithm>

#include <QPageLayout>
#include <QPageSize>
#include <QPrinter>
#include <QPrinterInfo>

#include "command_line/made_by.hpp"

namespace printing {

QList<PrinterFound> printers_found() {
    QList<PrinterFound> found;
    const auto all = QPrinterInfo::availablePrinters();
    for (const QPrinterInfo& printer : all) {
        QStringList about{printer.description(), printer.location()};
        about.removeAll(QString());
        about.removeAll(printer.printerName());
        found.append({printer.printerName(), about.join(QStringLiteral(", ")), printer.isDefault()});
    }
    std::ranges::stable_partition(found, &PrinterFound::usual);
    return found;
}

bool paint_pages(QPagedPaintDevice& device, const QList<Sheet>& sheets) {
    QPainter painter;
    for (const Sheet& sheet : sheets) {
        const bool lying = sheet.size.width() > sheet.size.height();
        device.setPageSize(QPageSize(lying ? sheet.size.transposed() : sheet.size, QPageSize::Point,
                                     {}, QPageSize::FuzzyMatch));
        device.setPageOrientation(lying ? QPageLayout::Landscape : QPageLayout::Portrait);
        device.setPageMargins({});
        if (painter.isActive() ? !device.newPage() : !painter.begin(&device)) return false;
        painter.save();
        painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
        paint(painter, sheet);
        painter.restore();
    }
    return true;
}

bool print_on(QPrinter& printer, const QList<Sheet>& sheets, const QString& title) {
    printer.setDocName(title);
    printer.setCreator(QString::fromStdString(command_line::name_and_version()));
    // Ours keep off the edge by more than what home printers leave white.
    printer.setFullPage(true);
    return paint_pages(printer, sheets);
}

bool print_on(const QString& name, const QList<Sheet>& sheets, const QString& title) {
    const QPrinterInfo known = QPrinterInfo::printerInfo(name);
    if (known.isNull() || sheets.isEmpty()) return false;
    QPrinter printer(known, QPrinter::HighResolution);
    return print_on(printer, sheets, title);
}

}  // namespace printing
