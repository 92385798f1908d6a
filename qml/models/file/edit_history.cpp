#include "models/file/edit_history.hpp"

namespace touch {

void EditHistory::begin(const QString& text) {
    texts_ = {text};
    now_ = 0;
}

void EditHistory::record(const QString& text) {
    if (texts_.isEmpty()) {
        begin(text);
        return;
    }
    if (texts_[now_] == text) return;
    texts_.resize(now_ + 1);
    texts_.append(text);
    if (texts_.size() > most) texts_.removeFirst();
    now_ = texts_.size() - 1;
}

QString EditHistory::undo() {
    if (can_undo()) --now_;
    return texts_.value(now_);
}

QString EditHistory::redo() {
    if (can_redo()) ++now_;
    return texts_.value(now_);
}

void EditHistory::resume(const QStringList& texts, qsizetype now) {
    texts_ = texts;
    now_ = now;
}

}  // namespace touch
