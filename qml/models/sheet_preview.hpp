// One page of what is to be printed, drawn as the printer would, on white whatever the theme.
#pragma once

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "models/print_desk.hpp"

namespace touch {

class SheetPreview : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::PrintDesk* desk READ desk WRITE set_desk NOTIFY deskChanged)
    Q_PROPERTY(int page READ page WRITE set_page NOTIFY deskChanged)  // 0 is the first
    // Height over width of that page.
    Q_PROPERTY(double shape READ shape NOTIFY drawn)
    // All its words, for those who cannot see it.
    Q_PROPERTY(QString spoken READ spoken NOTIFY drawn)

  public:
    explicit SheetPreview(QQuickItem* parent = nullptr);

    [[nodiscard]] PrintDesk* desk() const { return desk_; }
    void set_desk(PrintDesk* desk);
    [[nodiscard]] int page() const { return page_; }
    void set_page(int page);
    [[nodiscard]] double shape() const;
    [[nodiscard]] QString spoken() const;
    void paint(QPainter* painter) override;

  signals:
    void deskChanged();
    void drawn();

  private:
    [[nodiscard]] const printing::Sheet* sheet() const;

    PrintDesk* desk_ = nullptr;
    int page_ = 0;
};

}  // namespace touch
