// What the program's own dialog shows of a folder.
#include "models/file/folder_model.hpp"

#include <filesystem>
#include <fstream>

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;
using touch::FolderModel;

class Folder : public testing::Test {
  protected:
    void SetUp() override {
        fs::create_directory(at("old plans"));
        for (const char* name : {"b2.toml", "b10.toml", "A.toml", "card.pdf", ".hidden.toml"})
            std::ofstream(at(name)) << "format = 1\n";
        model.set_filters({"Scenario files (*.toml)"});
        model.set_folder(QUrl::fromLocalFile(folder.path()));
    }
    [[nodiscard]] std::string at(const std::string& name) const {
        return folder.filePath(QString::fromStdString(name)).toStdString();
    }
    [[nodiscard]] QStringList names() const {
        QStringList all;
        for (int row = 0; row < model.count(); ++row)
            all << model.data(model.index(row), FolderModel::NameRole).toString();
        return all;
    }
    QTemporaryDir folder;
    FolderModel model;
};

TEST_F(Folder, shows_folders_first_then_the_files_asked_for_as_people_count) {
    EXPECT_EQ(names(), QStringList({"old plans", "A.toml", "b2.toml", "b10.toml"}));
    EXPECT_TRUE(model.isFolderAt(0));
    EXPECT_FALSE(model.isFolderAt(1));
    EXPECT_TRUE(model.writable());
    model.set_filters({"All files (*)"});
    EXPECT_TRUE(names().contains("card.pdf"));
}

TEST_F(Folder, goes_into_a_folder_and_up_again) {
    model.set_folder(model.urlAt(0));
    EXPECT_EQ(model.count(), 0);
    model.goUp();
    EXPECT_EQ(model.count(), 4);
    model.set_folder(QUrl::fromLocalFile("/"));
    EXPECT_FALSE(model.can_go_up());
}

TEST_F(Folder, takes_no_name_that_is_none) {
    for (const char* name : {"", "  ", ".", "..", "a/b", "/etc/passwd"})
        EXPECT_TRUE(model.fileNamed(name).isEmpty()) << name;
    EXPECT_EQ(model.fileNamed(" storm.toml ").toLocalFile().toStdString(), at("storm.toml"));
}

TEST_F(Folder, shows_a_name_that_would_turn_the_writing_letter_by_letter) {
    std::ofstream(at("a\x1b[1m\xE2\x80\xAE.toml")) << "format = 1\n";
    model.look();
    EXPECT_TRUE(names().contains("a\\x1b[1m\\u{202e}.toml")) << names().join(' ').toStdString();
}

TEST_F(Folder, a_folder_that_is_not_there_leads_to_one_that_is) {
    model.set_folder(QUrl::fromLocalFile("/no/such/folder"));
    EXPECT_TRUE(fs::is_directory(model.folder().toLocalFile().toStdString()));
    bool here = false;
    for (const QVariant& place : model.places())
        here |= place.toMap()["here"].toBool();
    EXPECT_TRUE(here);
}

}  // namespace
