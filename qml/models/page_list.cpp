#include "models/page_list.hpp"

#include <array>

#include <QCoreApplication>
#include <QFile>

#include "models/ask_question.hpp"

namespace touch {

namespace {

struct PageLine {
    const char* group;
    const char* key;
    const char* name;
    const char* file;
    const char* question;  // without an answer to it there is no page; empty: none is needed
};

constexpr const char* group_build = QT_TRANSLATE_NOOP("PageList", "Build");
constexpr const char* group_plan = QT_TRANSLATE_NOOP("PageList", "Plan");
constexpr const char* group_live = QT_TRANSLATE_NOOP("PageList", "Live");
constexpr const char* group_after = QT_TRANSLATE_NOOP("PageList", "After");
constexpr const char* group_paper = QT_TRANSLATE_NOOP("PageList", "Paper and file");

constexpr std::array page_lines{
    PageLine{group_build, "packs", QT_TRANSLATE_NOOP("PageList", "Packs"), "PacksPage.qml", "join"},
    PageLine{group_build, "builds", QT_TRANSLATE_NOOP("PageList", "How many"), "BuildsPage.qml",
             "packs"},
    PageLine{group_build, "start", QT_TRANSLATE_NOOP("PageList", "Starting"), "StartPage.qml",
             "start"},
    PageLine{group_build, "wiring", QT_TRANSLATE_NOOP("PageList", "Wiring"), "WiringPage.qml",
             "wiring"},
    PageLine{group_plan, "days", QT_TRANSLATE_NOOP("PageList", "Days"), "DaysPage.qml", "outage"},
    PageLine{group_plan, "loads", QT_TRANSLATE_NOOP("PageList", "Loads"), "LoadsPage.qml",
             "outage"},
    PageLine{group_plan, "sun", QT_TRANSLATE_NOOP("PageList", "Sun"), "SunPage.qml", "sun"},
    PageLine{group_live, "now", QT_TRANSLATE_NOOP("PageList", "Now"), "NowPage.qml", ""},
    PageLine{group_after, "storage", QT_TRANSLATE_NOOP("PageList", "Storage"), "StoragePage.qml",
             "storage"},
    PageLine{group_paper, "print", QT_TRANSLATE_NOOP("PageList", "Print"), "PrintPage.qml",
             "outage"},
    PageLine{group_paper, "file", QT_TRANSLATE_NOOP("PageList", "File"), "FilePage.qml", "read"},
};

bool is_there(const PageLine& line) {
    const QString question = QString::fromLatin1(line.question);
    return QFile::exists(QStringLiteral(":/qt/qml/Candlemark/") + QLatin1String(line.file)) &&
           (question.isEmpty() || is_question(question));
}

// The key that opens it: 1 to 9, then 0.
QString digit_of(qsizetype place) {
    return place < 10 ? QString::number((place + 1) % 10) : QString();
}

}  // namespace

QStringList page_keys() {
    QStringList keys;
    for (const PageLine& line : page_lines)
        if (is_there(line)) keys << QString::fromLatin1(line.key);
    return keys;
}

void PageList::set_language(const QString& language) {
    language_ = language;
    emit told();
}

QVariantList PageList::pages() const {
    QVariantList pages;
    const char* group = nullptr;
    for (const PageLine& line : page_lines) {
        if (!is_there(line)) continue;
        pages.append(QVariantMap{{"key", line.key},
                                 {"name", QCoreApplication::translate("PageList", line.name)},
                                 {"group", QCoreApplication::translate("PageList", line.group)},
                                 {"first", line.group != group},
                                 {"file", line.file},
                                 {"digit", digit_of(pages.size())}});
        group = line.group;
    }
    return pages;
}

}  // namespace touch
