#include "motor/source_voltage.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::ohm;
using units::volt;
using units::watt;

const Drawn stalled{115.0 * volt, 46.0 * ampere, units::PowerFactor(0.8)};  // 48 A at 120 V

TEST(source_voltage, a_stiff_source_does_not_give_way) {
    EXPECT_EQ(holding(120.0 * volt)(stalled), 120.0 * volt);
}

TEST(source_voltage, a_source_that_folds_back_carries_exactly_its_limit) {
    const auto voltage = folding_back(120.0 * volt, 30.0 * ampere, 12.0 * ampere)(stalled);
    EXPECT_NEAR(voltage / volt, 60.0, 1e-9);
    const double others = 12.0 * 60.0 / 120.0;
    EXPECT_NEAR(current_at(stalled, voltage) / ampere + others, 30.0, 1e-9);
}

TEST(source_voltage, a_source_below_its_limit_does_not_fold_back) {
    EXPECT_EQ(folding_back(120.0 * volt, 61.0 * ampere, 12.0 * ampere)(stalled), 120.0 * volt);
}

TEST(source_voltage, a_source_limited_by_its_bank_settles_where_both_agree) {
    const auto bank = [](units::Power real) -> std::optional<units::Voltage> {
        return 13.0 * volt - real / (1000.0 * watt) * volt;  // falls 1 V for 1 kW
    };
    const auto voltage = limited_by_direct_voltage(120.0 * volt, 10.5, 200.0 * watt, bank)(stalled);
    EXPECT_LT(voltage, 120.0 * volt);
    const auto real = real_power_at(stalled, voltage) + 200.0 * watt;
    EXPECT_NEAR(voltage / volt, 10.5 * (*bank(real) / volt), 1e-6);
}

TEST(source_voltage, a_strong_bank_holds_the_nominal_voltage) {
    const auto bank = [](units::Power) { return std::optional(13.0 * volt); };
    EXPECT_EQ(limited_by_direct_voltage(120.0 * volt, 10.5, 0.0 * watt, bank)(stalled),
              120.0 * volt);
}

TEST(source_voltage, a_bank_that_collapses_gives_no_voltage) {
    const auto bank = [](units::Power) { return std::optional<units::Voltage>(); };
    EXPECT_EQ(limited_by_direct_voltage(120.0 * volt, 10.5, 0.0 * watt, bank)(stalled), 0.0 * volt);
}

TEST(source_voltage, behind_a_soft_start_device_the_motor_and_the_source_both_see_less) {
    const auto half =
        softened(folding_back(120.0 * volt, 30.0 * ampere, 0.0 * ampere), units::Share(0.5));
    EXPECT_NEAR(half(stalled) / volt, 60.0, 1e-9);  // 24 A through it: no fold-back
}

}  // namespace
