#include "models/words/number_entry.hpp"

#include <gtest/gtest.h>

#include "models/words/told.hpp"
#include "models/words/typed_amount.hpp"
#include "models/words/unit_words.hpp"
#include "scenario/keys/reference.hpp"

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

class InGerman : public testing::Test {
  protected:
    void SetUp() override { touch::set_language_wished(*words::language("de")); }
    void TearDown() override { touch::set_language_wished(words::english()); }
};

TEST_F(InGerman, a_number_is_typed_shown_and_read_back_with_a_comma) {
    NumberEntry entry;
    entry.begin(energy("1.5 kWh"));
    EXPECT_EQ(entry.typed(), "1,5");
    EXPECT_EQ(entry.example(), "1,9 kWh");
    EXPECT_EQ(entry.reads_as(), "1,5 kWh");
    type(entry, "2,25");
    EXPECT_EQ(entry.typed(), "2,25");
    EXPECT_EQ(entry.reads_as(), "2,25 kWh");
    EXPECT_EQ(entry.value(), "2.25 kWh");  // as the file has it
}

// The key of a numeric keypad gives a point whatever the language.
TEST_F(InGerman, the_point_of_a_keyboard_is_a_comma) {
    NumberEntry entry;
    entry.begin(energy());
    type(entry, "1.9");
    EXPECT_EQ(entry.typed(), "1,9");
    EXPECT_EQ(entry.value(), "1.9 kWh");
}

// Elsewhere it would read two ways.
TEST_F(InGerman, three_digits_behind_the_comma_are_no_thousands) {
    NumberEntry entry;
    entry.begin(energy());
    type(entry, "1,234");
    EXPECT_TRUE(entry.usable());
    EXPECT_EQ(entry.value(), "1.234 kWh");
}

TEST_F(InGerman, what_does_not_read_is_told_in_german) {
    NumberEntry entry;
    entry.begin(energy());
    entry.paste("12 A");
    EXPECT_FALSE(entry.usable());
    EXPECT_TRUE(entry.trouble().contains("Energie")) << entry.trouble().toStdString();
}

TEST_F(InGerman, a_field_shows_the_amount_of_the_file_with_a_comma) {
    using touch::amount_in_field;
    EXPECT_EQ(amount_in_field("1.50 kWh", units::Dimension::energy), "1,50 kWh");
    EXPECT_EQ(amount_in_field("2 d 6 h", units::Dimension::duration), "2 d 6 h");
    EXPECT_EQ(touch::for_the_file("1,5 W"), "1.5 W");
}

// 5 °C are 41 °F, 20 kg are 44.09 lb and 1 m is 3.28 ft [NIST SP 811].
TEST(amount_in_field, has_units_of_the_united_states_beside_the_metric_ones) {
    using units::Dimension;
    touch::set_language_wished({.us_units = true});
    const auto field = touch::amount_in_field;
    EXPECT_EQ(field("5 degC", Dimension::temperature), QStringLiteral("5 °C (41 °F)"));
    EXPECT_EQ(field("41 degF", Dimension::temperature), QStringLiteral("41 °F"));
    EXPECT_EQ(field("20 kg", Dimension::mass), "20 kg (44 lb)");
    EXPECT_EQ(field("1 m", Dimension::length), "1 m (3.3 ft)");
    EXPECT_EQ(field("3 ft", Dimension::length), "3 ft");
    EXPECT_EQ(field("5 mm2", Dimension::area), "5 mm2");
    touch::set_language_wished(words::english());
    EXPECT_EQ(field("5 degC", Dimension::temperature), QStringLiteral("5 °C"));
}

// A sign such as "%" is read out as nothing or letter by letter.
TEST(unit_words, every_unit_that_a_field_offers_is_read_out_as_a_word) {
    int offered = 0;
    for (const auto& key : scenario::reference())
        for (const std::string_view name : key.on_screen.units) {
            const QString unit = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
            EXPECT_GT(touch::spoken_unit(unit).size(), unit.size()) << unit.toStdString();
            ++offered;
        }
    EXPECT_GT(offered, 30);
    EXPECT_EQ(touch::spoken_unit("furlong"), "furlong");
}

TEST(unit_words, signs_stand_for_what_a_file_writes) {
    EXPECT_EQ(touch::with_signs_of_units("-8 degC"), QStringLiteral("-8 °C"));
    EXPECT_EQ(touch::with_signs_of_units("60 deg"), QStringLiteral("60°"));
    EXPECT_EQ(touch::with_signs_of_units("1.2 mOhm"), QStringLiteral("1.2 mΩ"));
    EXPECT_EQ(touch::with_signs_of_units("degrees"), "degrees");
}

}  // namespace
