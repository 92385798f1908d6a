#include "models/file/templates.hpp"

#include <array>

#include <QCoreApplication>
#include <QFile>

#include "models/words/scenario_text.hpp"

namespace touch {

namespace {

struct TemplateLine {
    const char* key;  // the name of its file
    const char* name;
    const char* detail;
};

constexpr std::array template_lines{
    TemplateLine{"ice_storm", QT_TRANSLATE_NOOP("Templates", "Ice storm, four nights"),
                 QT_TRANSLATE_NOOP("Templates",
                                   "Winter: freezer, furnace blower, light. One lithium pack, "
                                   "three more to plug in, three panels.")},
    TemplateLine{"summer_storm", QT_TRANSLATE_NOOP("Templates", "Summer storm, three hot days"),
                 QT_TRANSLATE_NOOP("Templates",
                                   "Refrigerator and fans in the heat. Two sealed lead "
                                   "batteries, four panels laid flat.")},
    TemplateLine{"precautionary_shutoff",
                 QT_TRANSLATE_NOOP("Templates", "Two-day precautionary shut-off"),
                 QT_TRANSLATE_NOOP("Templates",
                                   "Refrigerator, desk and phones, announced beforehand. "
                                   "Three gel batteries, two panels.")},
    TemplateLine{"breathing_at_night",
                 QT_TRANSLATE_NOOP("Templates", "Breathing machine, five nights"),
                 QT_TRANSLATE_NOOP("Templates",
                                   "A machine fed from the 12 V outlet at night. Two lithium "
                                   "packs, one panel.")},
    TemplateLine{"saw_and_pump", QT_TRANSLATE_NOOP("Templates", "Saw and pump at a remote place"),
                 QT_TRANSLATE_NOOP("Templates",
                                   "Work where no line goes. Two wet deep-cycle pairs, three "
                                   "panels.")},
};

QString template_words(const char* english) {
    return QCoreApplication::translate("Templates", english);
}

}  // namespace

QList<Template> templates() {
    QList<Template> all;
    for (const TemplateLine& line : template_lines)
        all.append({.key = QString::fromLatin1(line.key),
                    .name = template_words(line.name),
                    .detail = template_words(line.detail)});
    return all;
}

std::optional<QString> text_of_template(const QString& key) {
    for (const Template& one : templates()) {
        if (one.key != key) continue;
        QFile file(QStringLiteral(":/qt/qml/Candlemark/%1.toml").arg(key));
        if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
        const QString text = QString::fromUtf8(file.readAll());
        if (counts_in(text).title == one.name) return text;
        return with_value(text, QStringLiteral("title"), one.name).text;
    }
    return std::nullopt;
}

}  // namespace touch
