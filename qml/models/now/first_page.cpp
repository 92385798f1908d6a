#include "models/now/first_page.hpp"

#include <QTimer>

#include "models/now/now_clock.hpp"

namespace touch {

namespace {

bool& page_is_asked() {
    static bool asked = false;
    return asked;
}

}  // namespace

void FirstPage::keep_to_the_page_asked() {
    page_is_asked() = true;
}

void FirstPage::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        connect(document_, &ScenarioDocument::opened, this, &FirstPage::look);
        // Work that is taken up again comes without a file being opened; saving is neither.
        connect(document_, &ScenarioDocument::fileChanged, this, [this] {
            if (begun_) return;
            look();
            QTimer::singleShot(0, this, [this] { begun_ = true; });
        });
    }
    emit documentChanged();
}

void FirstPage::look() {
    if (page_is_asked() && !begun_) return;
    NowClock clock;
    clock.set_document(document_);
    if (clock.within()) emit nowWanted();
}

}  // namespace touch
