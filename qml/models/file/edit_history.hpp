// The texts a scenario had, so that every change can be taken back and made again.
#pragma once

#include <QString>
#include <QStringList>

namespace touch {

class EditHistory {
  public:
    static constexpr qsizetype most = 200;  // texts kept; the oldest go first

    // Forgets everything and begins with this text.
    void begin(const QString& text);
    // A new text; what had been taken back is forgotten.
    void record(const QString& text);

    [[nodiscard]] bool can_undo() const { return now_ > 0; }
    [[nodiscard]] bool can_redo() const { return now_ + 1 < texts_.size(); }
    // The text before or after the present one, which it then is.
    QString undo();
    QString redo();

    [[nodiscard]] const QStringList& texts() const { return texts_; }
    [[nodiscard]] qsizetype now() const { return now_; }
    //   takes  now: which of the texts is the present one
    void resume(const QStringList& texts, qsizetype now);

  private:
    QStringList texts_;
    qsizetype now_ = 0;
};

}  // namespace touch
