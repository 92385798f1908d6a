// The sweep over packs, panels and weathers: its cost by width of the processor, by lanes, by
// threads, by days, weathers and cells, and against running every cell. All figures are of one run
// and of processor time unless it says otherwise; compare ratios, not times of different days.
#include "sizing/builds/sweep.hpp"

#include <atomic>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <string>
#include <sys/resource.h>
#include <thread>

#include "outage/clock/clock.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

template <class Work>
double processor_ms(const Work& work, int turns = 3) {
    double best = 1e12;
    for (int turn = 0; turn < turns; ++turn) {
        const auto begins = std::clock();
        work();
        best = std::min(best, 1e3 * double(std::clock() - begins) / CLOCKS_PER_SEC);
    }
    return best;
}

template <class Work>
double wall_ms(const Work& work, int turns = 5) {
    double best = 1e12;
    for (int turn = 0; turn < turns; ++turn) {
        const auto begins = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double, std::milli>(
                                  std::chrono::steady_clock::now() - begins)
                                  .count());
    }
    return best;
}

// Without circuits the packs of a scenario are alike.
enum class Leads { none, as_built };

sizing::Design design_of(const std::string& file, int days, int packs, int panels,
                         Leads leads = Leads::none) {
    const auto overrides = scenario::Overrides{
        *scenario::read_override("outage.lasts=\"" + std::to_string(days) + " d\"")};
    auto read = scenario::read_scenario_file(file, overrides);
    if (!read) throw std::runtime_error(print(read.error().front()));
    auto scenario = read->scenario;
    if (leads == Leads::none) scenario.circuits.clear();
    auto design = sizing::make_design(scenario, {}, packs, panels);
    if (!design) throw std::runtime_error(print(design.error().front()));
    return std::move(*design);
}

double sweep_ms(const sizing::Design& design, int weathers, int timed = 0, unsigned threads = 1) {
    return processor_ms([&] {
        (void)sizing::sweep(design, {.sequences = weathers, .timed = timed, .threads = threads});
    });
}

// What two threads can do here at this moment: twice the work of one in the same time is 2.
double capacity() {
    const auto spin = [] {
        volatile double sum = 0.0;
        for (int i = 0; i < 100'000'000; ++i)
            sum = sum + 1.0;
    };
    const double one = wall_ms(spin, 2);
    const double two = wall_ms(
        [&] {
            const std::jthread other(spin);
            spin();
        },
        2);
    return 2.0 * one / two;
}

// Packs on leads that differ: in the lanes over alike ones, and by the clock.
void on_unlike_leads(const std::string& file) {
    for (const int days : {4, 14}) {
        const auto of = [&](Leads leads) {
            const auto design = design_of(file, days, 9, 6, leads);
            const auto suns = sizing::suns_in(design, 6, 0, 1024, 1);
            return processor_ms([&] { (void)sizing::endings_under(design, 9, suns, 1); }, 7) / 1024;
        };
        const double alike = of(Leads::none);
        const double unlike = of(Leads::as_built);
        const auto design = design_of(file, days, 9, 6, Leads::as_built);
        const auto suns = sizing::suns_in(design, 6, 0, 32, 1);
        const double clock =
            processor_ms([&] {
                for (const auto& sun : suns) {
                    std::vector<outage::SunChange> changes;
                    for (std::size_t i = 0; i < sun.size(); ++i)
                        changes.push_back(
                            {.from = design.skies.from()[i], .offered = sun[i] * watt});
                    (void)outage::run(design.units[8], design.ready->steps[1], changes,
                                      design.ready->outage.lasts, design.ready->midnight,
                                      {.trace = false, .after_failure = false});
                }
            }) /
            32;
        std::printf(
            "%d days, a weather of 9 alike packs %.1f us, of 9 on two kinds of lead %.1f "
            "us: %.2f times; by the clock %.0f us\n",
            days, 1e3 * alike, 1e3 * unlike, unlike / alike, 1e3 * clock);
    }
}

void by_width(const sizing::Design& design) {
    std::vector<abreast::LaneJob> jobs;
    std::vector<std::vector<double>> suns(abreast::lanes);
    for (int i = 0; i < abreast::lanes; ++i) {
        design.skies.offered(design.skies.weather(1, i), 6, suns[std::size_t(i)]);
        jobs.push_back({.packs = 16, .sun = suns[std::size_t(i)]});
    }
    std::vector<abreast::LaneEnding> endings(jobs.size());
    const auto ns = [&](std::size_t count, std::optional<abreast::Width> width) {
        abreast::LaneCost cost;
        const double time = processor_ms([&] {
            cost = {};
            abreast::run_lanes(design.lit, std::span(jobs).first(count),
                               std::span(endings).first(count), &cost, width);
        });
        return 1e6 * time / double(cost.steps);
    };
    const auto& ready = *design.ready;
    std::vector<outage::SunChange> sun;
    for (std::size_t i = 0; i < suns.front().size(); ++i)
        sun.push_back({.from = design.skies.from()[i], .offered = suns.front()[i] * watt});
    const double clock =
        1e6 * processor_ms([&] {
            (void)outage::run(design.units.back(), ready.steps[1], sun, ready.outage.lasts,
                              ready.midnight, {.trace = false, .after_failure = false});
        }) /
        double(design.lit.segments.all.size());
    const double alone = ns(1, abreast::Width::two);
    std::printf("a step of one outage: by the clock with its ledger %.1f ns, in one lane %.1f ns\n",
                clock, alone);
    constexpr const char* names[] = {"2", "4", "8"};
    for (const auto width : abreast::widths_here()) {
        const double wide = ns(abreast::lanes, width);
        std::printf("  64 lanes, %s at once: %.2f ns a lane step, %.1f times one lane\n",
                    names[int(width)], wide, alone / wide);
    }
}

}  // namespace

int main(int count, char** arguments) {
    const std::string file = count > 1 ? arguments[1] : "scenarios/ice_storm.toml";
    const auto design = design_of(file, 14, 16, 12);
    std::printf("14 days, 16 x 13 builds: %zu changes with panels, %zu without\n",
                design.lit.segments.all.size(), design.dark.segments.all.size());
    by_width(design);
    on_unlike_leads(file);

    sizing::Sweep last;
    const double staircase = processor_ms(
        [&] { last = *sizing::sweep(design, {.sequences = 1000, .timed = 0, .threads = 1}); });
    std::printf("1,000 weathers: %.0f ms, %zu outages of %d, %.2f %% of lane steps alone\n",
                staircase, last.outages_run, 16 * 13 * 1000,
                100.0 * double(last.cost.one_by_one) / double(last.cost.steps));
    std::printf("  with 256 of them timed in every cell: %.0f ms\n", sweep_ms(design, 1000, 256));
    const double all = processor_ms(
        [&] {
            for (int packs = 1; packs <= 16; ++packs)
                for (int panels = 1; panels <= 12; ++panels)
                    (void)sizing::lasted_in(design, packs, panels, 0, 256, 1, 1);
        },
        1);
    const double walk = sweep_ms(design, 256);
    std::printf("256 weathers: every cell %.0f ms, the walk %.0f ms, %.1f times\n", all, walk,
                all / walk);
    const double first =
        wall_ms([&] { (void)sizing::sweep(design, {.sequences = 64, .timed = 0, .threads = 0}); });
    std::printf("first picture, 64 weathers, wall: %.0f ms\n", first);
    const double ready = wall_ms([&] { (void)design_of(file, 14, 16, 12); });
    std::printf("making the scenario ready: %.0f ms\n", ready);

    const double one = wall_ms(
        [&] { (void)sizing::sweep(design, {.sequences = 1000, .timed = 256, .threads = 1}); });
    const double two = wall_ms(
        [&] { (void)sizing::sweep(design, {.sequences = 1000, .timed = 256, .threads = 2}); });
    const double factor = capacity();
    std::printf(
        "wall, 1 thread %.0f ms, 2 threads %.0f ms: %.2f times; the machine gives %.2f: "
        "%.2f of it\n",
        one, two, one / two, factor, one / two / factor);

    std::printf("days 7, 14, 28:");
    for (const int days : {7, 14, 28})
        std::printf(" %.0f ms", sweep_ms(design_of(file, days, 16, 12), 256));
    std::printf("\nweathers 256, 1,024, 4,096:");
    for (const int weathers : {256, 1024, 4096})
        std::printf(" %.0f ms", sweep_ms(design, weathers));
    std::printf("\nbuilds 8 x 6, 16 x 12, 32 x 24:");
    for (const int scale : {1, 2, 4})
        std::printf(" %.0f ms", sweep_ms(design_of(file, 14, 8 * scale, 6 * scale), 256));
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf("\npeak memory %ld MB\n", used.ru_maxrss / 1024);
    return 0;
}
