#include "answers/exhibits.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;

TEST(exhibits, pictures_come_before_tables_and_each_is_there_once) {
    Answer answer;
    answer.series = {{.name = "hours"}, {.name = "events"}};
    answer.account = Account{};
    answer.bars = {{.name = "recharge"}};
    answer.days = DaysChart{};
    answer.builds = BuildsChart{.views = {{.name = "weight"}, {.name = "price"}}};
    const auto exhibits = exhibits_of(answer);
    ASSERT_EQ(exhibits.size(), 7U);
    EXPECT_EQ(std::get<const DaysChart*>(exhibits[0]), &*answer.days);
    EXPECT_EQ(std::get<const BuildsView*>(exhibits[2])->name, "price");
    EXPECT_EQ(std::get<const BarChart*>(exhibits[3]), &answer.bars[0]);
    EXPECT_EQ(std::get<const Account*>(exhibits[4]), &*answer.account);
    EXPECT_EQ(std::get<const Series*>(exhibits[6])->name, "events");
    EXPECT_TRUE(exhibits_of(Answer{}).empty());
}

}  // namespace
