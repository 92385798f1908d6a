#include "models/sheet_preview.hpp"

#include <algorithm>

namespace touch {

SheetPreview::SheetPreview(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setFillColor(Qt::white);
    setAntialiasing(true);
}

void SheetPreview::set_desk(PrintDesk* desk) {
    if (desk_ == desk) return;
    if (desk_) desk_->disconnect(this);
    desk_ = desk;
    if (desk_)
        connect(desk_, &PrintDesk::shown, this, [this] {
            emit drawn();
            update();
        });
    emit deskChanged();
    emit drawn();
    update();
}

void SheetPreview::set_page(int page) {
    if (page_ == page) return;
    page_ = page;
    emit deskChanged();
    emit drawn();
    update();
}

const printing::Sheet* SheetPreview::sheet() const {
    if (!desk_ || desk_->desk()->sheets.isEmpty()) return nullptr;
    const auto& sheets = desk_->desk()->sheets;
    return &sheets[std::clamp<qsizetype>(page_, 0, sheets.size() - 1)];
}

double SheetPreview::shape() const {
    const printing::Sheet* shown = sheet();
    return shown ? shown->size.height() / shown->size.width() : 1.4;
}

QString SheetPreview::spoken() const {
    QStringList words;
    if (const printing::Sheet* shown = sheet())
        for (const printing::Words& each : shown->words)
            words << each.text;
    return words.join(QLatin1Char(' '));
}

void SheetPreview::paint(QPainter* painter) {
    const printing::Sheet* shown = sheet();
    if (!shown) return;
    painter->scale(width() / shown->size.width(), width() / shown->size.width());
    printing::paint(*painter, *shown);
}

}  // namespace touch
