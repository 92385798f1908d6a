// Scenario files are known by their content, other files that end in .toml are not.
#include <QDir>
#include <QFile>
#include <QMimeDatabase>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

TEST(scenario_files, are_known_by_what_stands_in_them) {
    const QTemporaryDir home;
    const QString folder = home.filePath(QStringLiteral("mime/packages"));
    ASSERT_TRUE(QDir().mkpath(folder));
    ASSERT_TRUE(
        QFile::copy(QStringLiteral(CANDLEMARK_SOURCE_DIR "/qml/desktop/candlemark-scenario.xml"),
                    folder + QStringLiteral("/candlemark-scenario.xml")));
    qputenv("XDG_DATA_HOME", home.path().toLocal8Bit());
    const QMimeDatabase types;
    const QString scenario = QStringLiteral("application/x-candlemark-scenario");
    for (const char* name : {"ice_storm", "summer_storm", "breathing_at_night", "saw_and_pump",
                             "precautionary_shutoff", "swap/as_built"})
        EXPECT_EQ(types
                      .mimeTypeForFile(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/%1.toml")
                                           .arg(QLatin1String(name)))
                      .name(),
                  scenario)
            << name;
    QFile other(home.filePath(QStringLiteral("other.toml")));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("[package]\nname = \"something else\"\n");
    other.close();
    EXPECT_NE(types.mimeTypeForData(QByteArray("[package]\nname = \"something else\"\n")).name(),
              scenario);
}

}  // namespace
