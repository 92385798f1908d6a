// The worked scenarios that come with the program, to begin from.
#pragma once

#include <optional>

#include <QList>
#include <QString>

namespace touch {

struct Template {
    QString key;
    QString name;    // in the language of the screen
    QString detail;  // what it asks and what it has
};

[[nodiscard]] QList<Template> templates();

// Its text, with its title in the language of the screen; nothing where there is no such key.
[[nodiscard]] std::optional<QString> text_of_template(const QString& key);

}  // namespace touch
