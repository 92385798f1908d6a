// The rail of pages: by when they are wanted, each group once, each page with its key.
#include "models/page_list.hpp"

#include <set>

#include <QFile>
#include <QVariantMap>
#include <gtest/gtest.h>

namespace {

TEST(page_list, has_each_group_once_and_each_page_with_a_key_of_its_own) {
    const touch::PageList list;
    std::set<QString> keys;
    std::set<QString> groups;
    std::set<QString> digits;
    QString group;
    for (const QVariant& one : list.pages()) {
        const QVariantMap page = one.toMap();
        EXPECT_TRUE(keys.insert(page["key"].toString()).second);
        EXPECT_EQ(page["first"].toBool(), page["group"].toString() != group);
        group = page["group"].toString();
        if (page["first"].toBool()) EXPECT_TRUE(groups.insert(group).second);
        const QString digit = page["digit"].toString();
        if (keys.size() <= 10) EXPECT_TRUE(digits.insert(digit).second);
        if (keys.size() > 10) EXPECT_TRUE(digit.isEmpty());
        EXPECT_TRUE(QFile::exists(":/qt/qml/Candlemark/" + page["file"].toString()));
    }
    EXPECT_EQ(keys.size(), static_cast<std::size_t>(touch::page_keys().size()));
    for (const char* key :
         {"packs", "start", "wiring", "days", "loads", "sun", "storage", "print", "file"})
        EXPECT_TRUE(keys.contains(key)) << key;
}

TEST(page_list, stands_in_the_order_in_which_pages_are_wanted) {
    const QStringList keys = touch::page_keys();
    EXPECT_LT(keys.indexOf("packs"), keys.indexOf("days"));
    EXPECT_LT(keys.indexOf("days"), keys.indexOf("storage"));
    EXPECT_EQ(keys.last(), "file");
}

}  // namespace
