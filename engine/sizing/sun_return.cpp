#include "sizing/sun_return.hpp"

#include <algorithm>
#include <cmath>

#include "outage/clock/banks.hpp"
#include "outage/clock/clock.hpp"
#include "outage/clock/serving.hpp"
#include "outage/clock/work.hpp"
#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;

// Energies need each outage to its end, and are told to two digits: as many members as take part of
// a second for a dozen counts of panels.
int members_to_run(const chance::Members& members) {
    constexpr double most_steps = 4e6;
    constexpr double counts = 12.0;
    const double reached = most_steps / (outage::steps_of_a_run(members.world().ready()) * counts);
    const int most = std::min(members.count(), 2 * chance::lanes);
    return static_cast<int>(std::clamp(reached, 8.0, double(most)));
}

struct OfMember {
    SunShares shares;
    std::vector<outage::SunOfDay> days;
};

// Whether any pack may be charged on the day that begins so long after the start.
bool may_be_charged(const outage::Unit& unit, Duration from) {
    std::size_t day = 0;
    while (day + 1 < unit.days.size() && unit.days[day + 1].from <= from)
        ++day;
    for (std::size_t bank = 0; bank <= unit.others.size(); ++bank)
        if (outage::on_day(unit, bank, day).setup.charging.allowed) return true;
    return false;
}

// Sun and chargers have equal parts in what is taken, and so in what charging loses.
Energy lost_of_the_sun(const outage::Ledger& ledger) {
    const Energy of_sun = ledger.sun_used + ledger.sun_stored;
    const Energy all = of_sun + ledger.charger_taken;
    return all > Energy{} ? (of_sun / all) * ledger.charging_loss : Energy{};
}

OfMember run_member(const chance::Members& members, int number, int panels) {
    const auto& world = members.world();
    const auto& ready = world.ready();
    const auto lived = world.lived(members.values(number));
    const auto sun = panels == world.panels() ? lived.sun : world.sun(lived.light, panels);
    std::vector<outage::SunOfDay> days;
    const auto course = world.run(lived, world.packs(), sun, {.trace = false}, &days);
    const auto unit =
        outage::unit_of(outage::with_count(lived.kinds, world.packs()), ready.main_path);
    OfMember member{.shares = {.used = course.ledger.sun_used,
                               .stored = course.ledger.sun_stored,
                               .lost = lost_of_the_sun(course.ledger),
                               .clipped = course.ledger.sun_clipped}};
    for (std::size_t i = 0; i < days.size(); ++i) {
        const Duration from = i == 0 ? Duration{} : ready.midnight + double(i - 1) * day;
        (may_be_charged(unit, from) ? member.shares.full : member.shares.too_cold) +=
            days[i].unused;
    }
    member.days = std::move(days);
    return member;
}

solar::DayRange range_of(std::vector<Energy> energies) {
    std::ranges::sort(energies);
    const auto rank = [&](double share) {
        const auto nearest = std::size_t(std::ceil(share * double(energies.size()) - 1e-9));
        return energies[std::clamp<std::size_t>(nearest, 1, energies.size()) - 1];
    };
    Energy sum{};
    for (const Energy& energy : energies)
        sum += energy;
    return {.low = rank(0.10),
            .likely = rank(0.50),
            .high = rank(0.90),
            .mean = sum / double(energies.size())};
}

template <class Of>
solar::DayRange range_over(const std::vector<OfMember>& all, Of of) {
    std::vector<Energy> energies;
    for (const auto& member : all)
        energies.push_back(of(member));
    return range_of(std::move(energies));
}

SunShares mean_of(const std::vector<OfMember>& all) {
    SunShares mean;
    for (const auto& [shares, days] : all)
        for (const auto part : {&SunShares::used, &SunShares::stored, &SunShares::lost,
                                &SunShares::too_cold, &SunShares::full, &SunShares::clipped})
            mean.*part += shares.*part / double(all.size());
    return mean;
}

}  // namespace

SunReturn sun_return(const chance::Members& members, int panels, unsigned threads) {
    const auto& ready = members.world().ready();
    SunReturn sun{.kept = {}, .offered = {}, .days = {}, .mean = {}};
    if (panels < 1 || !ready.sky) return sun;
    sun.members = members_to_run(members);
    std::vector<OfMember> all(std::size_t(sun.members));
    outage::for_each_number(sun.members, threads, [&](int number) {
        all[std::size_t(number)] = run_member(members, number, panels);
    });
    sun.kept = range_over(all, [](const OfMember& one) { return one.shares.kept(); });
    sun.offered = range_over(all, [](const OfMember& one) { return one.shares.offered(); });
    sun.mean = mean_of(all);
    auto midnight = midnight_before(ready.outage.starts);
    for (std::size_t i = 0; midnight < ready.outage.starts + ready.outage.lasts;
         ++i, midnight = midnight + day) {
        const auto of_day = [&](Energy outage::SunOfDay::*part) {
            return range_over(all, [i, part](const OfMember& one) {
                return i < one.days.size() ? one.days[i].*part : Energy{};
            });
        };
        sun.days.push_back({.midnight = midnight,
                            .offered = of_day(&outage::SunOfDay::offered),
                            .taken = of_day(&outage::SunOfDay::taken)});
    }
    return sun;
}

}  // namespace sizing
