// What all items of the screen that are told to a screen reader here have in common.
#pragma once

#include <QAccessible>
#include <QQuickItem>
#include <QRect>
#include <QString>
#include <QVariant>

namespace touch {

// An object as an item, when it is asked for by its own class; Qt asks for it by each of the classes
// it is made from, its own first. Null for what is no item.
[[nodiscard]] QQuickItem* heard_first_as(const QString& class_name, QObject* object);

// What the screen says of it by Accessible, such as "name" or "role"; invalid when nothing.
[[nodiscard]] QVariant said_of(const QQuickItem& item, const char* name);

// Empty while it does not show.
[[nodiscard]] QRect place_on_screen(const QQuickItem& item);

// The nearest around it that is told as well; the window where there is none.
[[nodiscard]] QAccessibleInterface* heard_around(const QQuickItem& item);

// Whether it shows, and where the keyboard is.
[[nodiscard]] QAccessible::State seen_state(const QQuickItem& item);

}  // namespace touch
