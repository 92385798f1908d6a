#include "models/words/told.hpp"

#include <mutex>

namespace touch {

namespace {

// Plans are told on threads of their own.
struct Wished {
    std::mutex lock;
    words::Language language = words::english();
};

Wished& wished() {
    static Wished one;
    return one;
}

}  // namespace

words::Language language_wished() {
    const std::scoped_lock held(wished().lock);
    return wished().language;
}

void set_language_wished(const words::Language& language) {
    const std::scoped_lock held(wished().lock);
    wished().language = language;
}

QString told(const words::Said& said) {
    return QString::fromStdString(words::in(language_wished(), said));
}

QString told(const words::Amount& amount) {
    return QString::fromStdString(words::in(language_wished(), amount));
}

QString told(const words::Number& number) {
    return QString::fromStdString(words::in(language_wished(), number));
}

}  // namespace touch
