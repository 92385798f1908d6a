#include "outage/panel_counts.hpp"

#include "outage/in_threads.hpp"
#include "outage/ready_sun.hpp"

namespace outage {

namespace {

using namespace units;

std::vector<solar::PanelGroup> groups_of(std::vector<solar::PanelGroup> groups, int panels) {
    int left = panels;
    for (auto& group : groups) {
        group.count = std::min(group.count, left);
        left -= group.count;
    }
    if (!groups.empty()) groups.front().count += left;
    std::erase_if(groups, [](const auto& group) { return group.count == 0; });
    return groups;
}

struct Account {
    Ending ending;
    Energy taken{};
    Energy lost{};
    Energy unused{};
    Energy clipped{};
};

Account account_in(const Ready& ready, std::uint64_t seed, int number) {
    const auto likely = static_cast<std::size_t>(End::likely);
    const auto course =
        run(ready.units[likely], ready.steps[likely], sun_in_weather(ready, seed, number),
            ready.outage.lasts, ready.midnight, {.trace = false});
    return {.ending = {.lasts = course.lasts, .survives = course.survives},
            .taken = course.ledger.sun_used + course.ledger.sun_stored,
            .lost = course.ledger.charging_loss,
            .unused = course.ledger.sun_unused,
            .clipped = course.ledger.sun_clipped};
}

PanelCount count_of(const Ready& ready, int panels, int weathers, std::uint64_t seed,
                    unsigned threads) {
    // Percentiles of a day's yield are cheap; of them there are as many as for one answer.
    constexpr int recharge_weathers = 2000;
    PanelCount count{.panels = panels, .offered = {}, .endings = {}};
    const auto recharge = recharge_of(ready, recharge_weathers, seed);
    if (recharge) count.offered = recharge->whole;
    const int runs = !recharge          ? 1
                     : ready.sky->hours ? std::min(weathers, solar::start_dates)
                                        : weathers;
    std::vector<Account> accounts(static_cast<std::size_t>(runs));
    for_each_number(runs, threads, [&](int number) {
        accounts[static_cast<std::size_t>(number)] = account_in(ready, seed, number);
    });
    for (const auto& account : accounts) {
        count.endings.push_back(account.ending);
        count.taken += account.taken / static_cast<double>(runs);
        count.lost += account.lost / static_cast<double>(runs);
        count.unused += account.unused / static_cast<double>(runs);
        count.clipped += account.clipped / static_cast<double>(runs);
    }
    return count;
}

}  // namespace

Ready with_panels(const Ready& ready, int panels) {
    Ready other = ready;
    other.sun = {};
    other.sky = nullptr;
    if (!ready.sky || panels < 1) return other;
    auto groups = groups_of(ready.sky->groups, panels);
    other.sky = std::make_shared<const SkyModels>(SkyModels{
        .track = solar::SunTrack(*ready.site, groups, ready.outage.starts, ready.outage.lasts),
        .controller = ready.sky->controller,
        .weather = ready.sky->weather,
        .hours = ready.sky->hours,
        .groups = std::move(groups)});
    light(other);
    return other;
}

std::vector<PanelCount> panel_counts(const Ready& ready, int most, int weathers, std::uint64_t seed,
                                     unsigned threads) {
    std::vector<PanelCount> counts;
    for (const int panels : panels_looked_at(ready, most))
        counts.push_back(
            count_of(with_panels(ready, panels), panels, std::max(1, weathers), seed, threads));
    return counts;
}

std::vector<int> panels_looked_at(const Ready& ready, int most) {
    constexpr int each = 16;   // up to here every count
    constexpr int growth = 8;  // then an eighth more at a time
    int now = 0;
    if (ready.sky)
        for (const auto& group : ready.sky->groups)
            now += group.count;
    std::vector<int> counts;
    for (int panels = 0; panels <= most; panels += panels < each ? 1 : panels / growth) {
        if (!counts.empty() && counts.back() < now && now < panels) counts.push_back(now);
        counts.push_back(panels);
    }
    if (counts.back() < now && now < most) counts.push_back(now);
    if (counts.back() < most) counts.push_back(most);
    return counts;
}

std::optional<EnoughPanels> enough_panels(const std::vector<PanelCount>& counts) {
    constexpr double worth_having = 0.2;  // ours
    if (counts.size() < 3) return std::nullopt;
    const auto gained = [&](std::size_t i) {
        const Energy more =
            counts[i].taken - counts[i].lost - (counts[i - 1].taken - counts[i - 1].lost);
        return more / static_cast<double>(counts[i].panels - counts[i - 1].panels);
    };
    for (std::size_t i = 2; i < counts.size(); ++i) {
        if (gained(i) >= worth_having * gained(1)) continue;
        const Energy held_back = counts[i].clipped - counts[i - 1].clipped;
        // What a full lead-acid pack gasses away is refused as well, only later.
        const Energy refused =
            counts[i].unused + counts[i].lost - (counts[i - 1].unused + counts[i - 1].lost);
        return EnoughPanels{
            .panels = counts[i - 1].panels,
            .why = held_back > refused ? PanelLimit::controller : PanelLimit::packs_full};
    }
    return std::nullopt;
}

}  // namespace outage
