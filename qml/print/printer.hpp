// Sheets on a printer that the system knows. Nothing is asked of the system before somebody looks
// for a printer.
#pragma once

#include <QList>
#include <QString>

#include "print/sheet.hpp"

class QPagedPaintDevice;
class QPrinter;

namespace printing {

struct PrinterFound {
    QString name;   // by which the system knows it
    QString about;  // what it is and where it stands, in its owner's words; may be empty
    bool usual = false;
};

// The usual one first. May take a while where the system looks about for some.
[[nodiscard]] QList<PrinterFound> printers_found();

// One page of the device for each sheet, upright or across as the sheet is. False where the device
// takes none.
[[nodiscard]] bool paint_pages(QPagedPaintDevice& device, const QList<Sheet>& sheets);

// Handed to the system's printing; false where there is no such printer or it takes nothing.
[[nodiscard]] bool print_on(const QString& printer, const QList<Sheet>& sheets,
                            const QString& title);

// Likewise, on one that is at hand.
[[nodiscard]] bool print_on(QPrinter& printer, const QList<Sheet>& sheets, const QString& title);

}  // namespace printing
