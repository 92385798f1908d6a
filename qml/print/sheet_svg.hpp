// A sheet as a drawing that any program opens.
#pragma once

#include <QByteArray>

#include "print/sheet.hpp"

namespace printing {

// Letters stay letters; widths are told, so that another font is fitted to its place.
[[nodiscard]] QByteArray in_svg(const Sheet& sheet, const QString& title);

}  // namespace printing
