#include "models/findings_model.hpp"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

namespace {

using touch::FindingsModel;
using touch::FindingText;

FindingText finding(const QString& mark, const QString& text) {
    return {.mark = mark,
            .word = mark.toUpper(),
            .where = "pack main",
            .text = text,
            .mend = {},
            .source = {}};
}

TEST(findings_model, keeps_to_the_rules_of_item_models_when_shown_again) {
    FindingsModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show({finding("stop", "a"), finding("note", "b")});
    model.show({});
    model.show({finding("caution", "c")});
    EXPECT_EQ(model.rowCount(), 1);
}

TEST(findings_model, gives_mark_and_word_beside_the_text) {
    FindingsModel model;
    model.show({finding("stop", "The pump will not start.")});
    const QModelIndex first = model.index(0);
    EXPECT_EQ(model.data(first, FindingsModel::MarkRole), "stop");
    EXPECT_EQ(model.data(first, FindingsModel::WordRole), "STOP");
    EXPECT_EQ(model.data(first, FindingsModel::TextRole), "The pump will not start.");
    EXPECT_FALSE(model.data(first, Qt::DecorationRole).isValid());
    EXPECT_FALSE(model.data(model.index(1), FindingsModel::TextRole).isValid());
}

}  // namespace
