#include "models/about_program.hpp"

#include <array>

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QVariantMap>

namespace touch {

namespace {

struct MadeWith {
    const char* name;
    const char* licence;  // as SPDX names it
    const char* use;
};

// As their packages state them.
constexpr std::array made_with{
    MadeWith{"Qt", "LGPL-3.0-only, GPL-3.0-only", QT_TRANSLATE_NOOP("AboutProgram", "the screens")},
    MadeWith{"Qt Charts", "GPL-3.0-only", QT_TRANSLATE_NOOP("AboutProgram", "the plots")},
    MadeWith{"Boost.Units", "BSL-1.0", QT_TRANSLATE_NOOP("AboutProgram", "quantities with units")},
    MadeWith{"toml++", "MIT", QT_TRANSLATE_NOOP("AboutProgram", "reading scenario files")},
    MadeWith{"{fmt}", "MIT", QT_TRANSLATE_NOOP("AboutProgram", "writing numbers")},
    MadeWith{"tl::expected", "CC0-1.0", QT_TRANSLATE_NOOP("AboutProgram", "errors as values")},
    MadeWith{"JSON for Modern C++", "MIT", QT_TRANSLATE_NOOP("AboutProgram", "answers as JSON")},
    MadeWith{"CLI11", "BSD-3-Clause", QT_TRANSLATE_NOOP("AboutProgram", "the command's arguments")},
};

}  // namespace

QString AboutProgram::version() {
    return QCoreApplication::applicationVersion();
}

QVariantList AboutProgram::parts() {
    QVariantList all;
    for (const MadeWith& part : made_with)
        all << QVariantMap{{"name", part.name},
                           {"licence", part.licence},
                           {"use", QCoreApplication::translate("AboutProgram", part.use)}};
    return all;
}

QStringList AboutProgram::licence() {
    QFile file(QStringLiteral(":/qt/qml/Candlemark/LICENSE"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    static const QRegularExpression between(QStringLiteral("\\n\\s*\\n"));
    QStringList paragraphs = QString::fromUtf8(file.readAll()).split(between, Qt::SkipEmptyParts);
    for (QString& paragraph : paragraphs)
        paragraph = paragraph.simplified();
    return paragraphs;
}

}  // namespace touch
