#include "models/number_entry.hpp"

#include <gtest/gtest.h>

namespace {

using touch::NumberEntry;

QVariantMap energy(const QString& value = {}) {
    return {{"key", "load[0].metered.energy"},
            {"label", "Energy metered"},
            {"value", value},
            {"example", "1.9 kWh"},
            {"units", QStringList{"kWh", "Wh"}},
            {"dimension", static_cast<int>(units::Dimension::energy)},
            {"optional", false}};
}

void type(NumberEntry& entry, const QString& signs) {
    for (const QChar sign : signs)
        entry.press(sign);
}

TEST(number_entry, types_a_number_with_the_usual_unit) {
    NumberEntry entry;
    entry.begin(energy());
    EXPECT_FALSE(entry.usable());
    EXPECT_TRUE(entry.trouble().isEmpty());
    type(entry, "1.9");
    EXPECT_EQ(entry.value(), "1.9 kWh");
    EXPECT_EQ(entry.reads_as(), "1.9 kWh");
    EXPECT_TRUE(entry.usable());
}

TEST(number_entry, a_decimal_comma_is_a_decimal_point) {
    NumberEntry entry;
    entry.begin(energy());
    type(entry, "1,5");
    EXPECT_EQ(entry.reads_as(), "1.5 kWh");
}

TEST(number_entry, another_unit_is_another_amount) {
    NumberEntry entry;
    entry.begin(energy());
    type(entry, "900");
    entry.choose("Wh");
    EXPECT_EQ(entry.reads_as(), "900 Wh");
    EXPECT_EQ(entry.value(), "900 Wh");
}

TEST(number_entry, the_first_digit_takes_the_place_of_what_stood_there) {
    NumberEntry entry;
    entry.begin(energy("820 Wh"));
    EXPECT_EQ(entry.typed(), "820");
    EXPECT_EQ(entry.unit(), "Wh");
    type(entry, "5");
    EXPECT_EQ(entry.value(), "5 Wh");
}

TEST(number_entry, a_digit_can_be_taken_away_from_what_stood_there) {
    NumberEntry entry;
    entry.begin(energy("820 Wh"));
    entry.back();
    EXPECT_EQ(entry.value(), "82 Wh");
}

TEST(number_entry, what_does_not_read_is_told_in_words) {
    NumberEntry entry;
    entry.begin(energy());
    type(entry, "1.2.3");
    EXPECT_FALSE(entry.usable());
    EXPECT_FALSE(entry.trouble().isEmpty());
}

TEST(number_entry, takes_a_pasted_text_with_its_unit) {
    NumberEntry entry;
    entry.begin(energy());
    entry.paste("  1,9kWh ");
    EXPECT_EQ(entry.reads_as(), "1.9 kWh");
    entry.paste("12 A");
    EXPECT_FALSE(entry.usable());
    EXPECT_TRUE(entry.trouble().contains("energy")) << entry.trouble().toStdString();
}

TEST(number_entry, half_a_horsepower_may_be_a_fraction) {
    NumberEntry entry;
    QVariantMap power = energy();
    power["units"] = QStringList{"W", "hp"};
    power["dimension"] = static_cast<int>(units::Dimension::power);
    entry.begin(power);
    type(entry, "1/2");
    entry.choose("hp");
    EXPECT_EQ(entry.value(), "1/2 hp");
    EXPECT_TRUE(entry.usable());
}

}  // namespace
