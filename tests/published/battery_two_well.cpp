// Lifetimes and currents of the two-well model.
#include <cmath>
#include <vector>

#include "battery/cell/two_well.hpp"

namespace {

using namespace battery;
using namespace units;

// [Jongerden 2009 DSN], lifetimes in minutes for the two batteries B1 (5.5 A min) and B2 (11 A
// min), c = 0.166, k = 0.122 / min, recalled as printed to two decimals; the further digits were
// computed from the closed form and, for four of them, by a Runge-Kutta integration outside this
// program.
struct Job {
    double milliampere;
    double idle_minutes;  // after each minute of work
};
struct Lifetime {
    const char* name;
    double ampere_minutes;
    std::vector<Job> jobs;  // repeated in turn
    double printed;
    double computed;
};

Duration lifetime(const Lifetime& row) {
    const Kinetics kinetics{row.ampere_minutes * ampere * minute, Share(0.166), 0.122 / minute};
    const bool continuous = row.jobs.size() == 1 && row.jobs.front().idle_minutes == 0.0;
    Wells wells;
    Duration passed{};
    for (std::size_t job = 0;; job = (job + 1) % row.jobs.size()) {
        const Current current = row.jobs[job].milliampere * 0.001 * ampere;
        const Duration left = *time_to_empty(kinetics, wells, current);
        if (continuous || left <= 1.0 * minute) return passed + left;
        const Duration idle = row.jobs[job].idle_minutes * minute;
        wells = after(kinetics, after(kinetics, wells, current, 1.0 * minute), Current{}, idle);
        passed += 1.0 * minute + idle;
    }
}

TEST(published_two_well, lifetimes_of_two_small_batteries_under_eight_loads) {
    const Lifetime rows[] = {
        {"B1 CL 250", 5.5, {{250, 0}}, 4.53, 4.526198},
        {"B1 CL 500", 5.5, {{500, 0}}, 2.02, 2.016986},
        {"B1 CL alt", 5.5, {{500, 0}, {250, 0}}, 2.58, 2.580592},
        {"B1 ILs 250", 5.5, {{250, 1}}, 10.80, 10.802554},
        {"B1 ILs 500", 5.5, {{500, 1}}, 4.30, 4.304387},
        {"B1 ILl 250", 5.5, {{250, 2}}, 21.86, 21.858122},
        {"B2 CL 250", 11.0, {{250, 0}}, 12.16, 12.160148},
        {"B2 CL 500", 11.0, {{500, 0}}, 4.53, 4.526198},
        {"B2 ILs 250", 11.0, {{250, 1}}, 44.78, 44.775040},
        {"B2 ILs 500", 11.0, {{500, 1}}, 10.80, 10.802554},
        {"B2 ILs alt", 11.0, {{500, 1}, {250, 1}}, 16.93, 16.928596},
        {"B2 ILl 500", 11.0, {{500, 2}}, 21.86, 21.858122},
    };
    for (const Lifetime& row : rows) {
        const double minutes = lifetime(row) / minute;
        EXPECT_NEAR(minutes, row.printed, 0.0051) << row.name;   // two decimals printed
        EXPECT_NEAR(minutes, row.computed, 0.6e-6) << row.name;  // six computed
    }
}

// Computed for this project in closed form outside this program: C = 100 Ah, c = 0.35, k = 1 / h.
// The last digit given is the tolerance.
const Kinetics pack{100.0 * ampere_hour, Share(0.35), 1.0 * per_hour};

TEST(published_two_well, times_from_full_to_empty) {
    const double rows[][2] = {
        {60, 0.716585}, {20, 3.217263}, {5, 18.142857}, {12, 6.479042}, {36, 1.385356}};
    for (const auto& [amperes, hours] : rows)
        EXPECT_NEAR(*time_to_empty(pack, Wells{}, amperes * ampere) / hour, hours, 0.6e-6);
}

TEST(published_two_well, an_hour_of_rest_after_60_amperes) {
    const Duration first = *time_to_empty(pack, Wells{}, 60.0 * ampere);
    const Wells empty = after(pack, Wells{}, 60.0 * ampere, first);
    const Wells rest = after(pack, empty, Current{}, 1.0 * hour);
    EXPECT_NEAR(available_charge(pack, rest) / ampere_hour, 12.611892, 0.6e-6);
    EXPECT_NEAR(bound_charge(pack, rest) / ampere_hour, 44.393020, 0.6e-6);
    EXPECT_NEAR(*time_to_empty(pack, rest, 60.0 * ampere) / hour, 0.257873, 0.6e-6);
}

TEST(published_two_well, twenty_minutes_of_36_amperes_every_hour) {
    Wells wells;
    Duration passed{};
    for (;;) {
        const Duration left = *time_to_empty(pack, wells, 36.0 * ampere);
        if (left <= 20.0 * minute) {
            wells = after(pack, wells, 36.0 * ampere, left);
            passed += left;
            break;
        }
        wells =
            after(pack, after(pack, wells, 36.0 * ampere, 20.0 * minute), Current{}, 40.0 * minute);
        passed += 1.0 * hour;
    }
    EXPECT_NEAR(passed / hour, 5.307362, 0.6e-6);
    EXPECT_NEAR(wells.removed / ampere_hour, 71.0650, 0.6e-4);
    const Duration continuous = *time_to_empty(pack, Wells{}, 36.0 * ampere);
    EXPECT_NEAR(36.0 * ampere * continuous / ampere_hour, 49.8728, 0.6e-4);
}

TEST(published_two_well, largest_currents_from_20_and_50_ampere_hours) {
    const Wells wells = wells_holding(pack, 20.0 * ampere_hour, 50.0 * ampere_hour);
    EXPECT_NEAR(largest_discharge(pack, wells, 0.5 * hour) / ampere, 50.540582, 0.6e-6);
    EXPECT_NEAR(largest_discharge(pack, wells, 2.0 * hour) / ampere, 18.930574, 0.6e-6);
    EXPECT_NEAR(largest_charge(pack, wells, 0.5 * hour) / ampere, 30.712089, 0.6e-6);
    EXPECT_NEAR(largest_charge(pack, wells, 2.0 * hour) / ampere, 8.802477, 0.6e-6);
}

TEST(published_two_well, charging_at_12_amperes_for_three_hours_tapers) {
    const Wells start = wells_holding(pack, 30.0 * ampere_hour, 45.0 * ampere_hour);
    const Duration full_at = *time_to_full(pack, start, -12.0 * ampere);
    EXPECT_NEAR(full_at / hour, 0.703410, 0.6e-6);
    const Wells full = after(pack, start, -12.0 * ampere, full_at);
    EXPECT_NEAR(taper(pack, full, Duration{}).current / ampere, -5.795677, 0.6e-6);
    const Taper end = taper(pack, full, 3.0 * hour - full_at);
    EXPECT_NEAR(end.current / ampere, -2.594272, 0.6e-6);
    EXPECT_NEAR((12.0 * ampere * full_at + end.accepted) / ampere_hour, 17.587795, 1.2e-6);
}

TEST(published_two_well, an_hour_of_20_amperes_and_then_the_cold) {
    const Wells wells = after(pack, Wells{}, 20.0 * ampere, 1.0 * hour);
    EXPECT_NEAR(wells.removed / ampere_hour, 20.0, 1e-12);
    EXPECT_NEAR(wells.head_difference / ampere_hour, 36.121175, 0.6e-6);
    EXPECT_NEAR(available_charge(pack, wells) / ampere_hour, 19.782433, 0.6e-6);
    const double rows[][2] = {{1.0, 2.217263}, {0.8, 1.324539}, {0.6, 0.540711}};
    for (const auto& [reachable, hours] : rows)
        EXPECT_NEAR(*time_to_empty(pack, wells, 20.0 * ampere, Share(reachable)) / hour, hours,
                    0.6e-6);
}

}  // namespace
