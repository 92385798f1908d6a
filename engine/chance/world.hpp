// A scenario with all that is not known of it: what one value of every unknown makes of its unit,
// its loads and its sun. method.md (3) and (4)
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "chance/unknowns.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "unit/built.hpp"
#include "units/result.hpp"

namespace chance {

// The names of all unknowns, each once; its place is where its value is found.
class Names {
  public:
    // The place of a name, which is added where it is not there yet.
    std::size_t place_of(const std::string& name);
    [[nodiscard]] const std::vector<std::string>& all() const { return all_; }

  private:
    std::vector<std::string> all_;
    std::map<std::string, std::size_t> places_;
};

// Where the values are of, one a name: 0 < value < 1, the greater the hungrier.
using Values = std::span<const double>;

// The draw of one load on one local day.
//   load    in ready.demand.loads
struct DayDraw {
    std::size_t load = 0;
    std::size_t draw = 0;  // place of its value
    std::size_t day = 0;   // likewise
    double day_deviation = 0.0;
};

// Each load once for each day on which it runs, and whose draw each of them has.
struct ByDay {
    demand::Demand demand;
    std::vector<DayDraw> draws;
};

// When the cycle of one load begins.
struct CyclePhase {
    std::size_t load = 0;   // in ready.demand.loads
    std::size_t place = 0;  // of its value
};

// How full a kind of pack may be at the start.
//   told_full    at most two hundredths less
//   above, below standard deviations, of the charge, otherwise
struct StartSpread {
    bool told_full = true;
    double above = 0.0;
    double below = 0.0;
};

// Of one kind.
//   index   of its first pack in the scenario
struct PackUnknowns {
    std::size_t index = 0;
    std::size_t capacity = 0;
    std::size_t resistance = 0;
    std::size_t charging = 0;
    std::size_t start = 0;
    std::optional<std::size_t> softness = {};  // where nothing tells it
    double capacity_deviation = 0.0;
    StartSpread start_spread;
};

// The loads that are switched off throughout, by their place in ready.demand.loads; empty: none. An
// inverter that feeds nothing for it is off as well.
using SwitchedOff = std::vector<bool>;

// What falls on the panels.
//   scale       of what they make of it
//   one_panel   at each step, before the controller, where any number gives so many times that;
//               else empty
struct Light {
    double scale = 1.0;
    solar::Sky sky = {};
    std::vector<units::Power> one_panel = {};
};

// The outage of one value of everything, with the scenario's panels.
//   kinds   all that may be built; with_count takes as many as there are to be
//   light   for any number of panels
struct Lived {
    outage::PackKinds kinds;
    std::optional<inverter::Model> inverter;
    std::vector<demand::DemandStep> steps;
    Light light;
    std::vector<outage::SunChange> sun;
    std::optional<outage::Parts> guarded = {};  // where a fuse of a 12 V circuit may open
};

// What was worked out of other values, to take from it what they have in common.
//   off   as it was asked for with
struct LivedBefore {
    const Lived& lived;
    Values values;
    const SwitchedOff& off;
};

class PanelsLit;
class KindsByWarmth;
class PatternsByLoads;

class World {
  public:
    World(const World& other);
    World(World&& other) noexcept;
    World& operator=(const World& other);
    World& operator=(World&& other) noexcept;
    ~World();

    //   scenario, folder  what `ready` was made of
    //   fails             where `like` names nothing; never where `ready` could be made
    [[nodiscard]] static units::Result<World> of(const scenario::Scenario& scenario,
                                                 const std::string& folder,
                                                 std::shared_ptr<const outage::Ready> ready);

    [[nodiscard]] const outage::Ready& ready() const { return *ready_; }
    [[nodiscard]] const std::vector<std::string>& names() const { return names_.all(); }

    // Something is off, there is an inverter, and nothing that is on hangs on it.
    [[nodiscard]] bool feeds_nothing(const SwitchedOff& off) const;

    // Loads that cycle may ask for more together than the unit gives: each member has its own
    // phases.
    [[nodiscard]] bool may_meet() const { return !phases_.empty(); }

    // Of a load while it runs, by its place in ready.demand.loads.
    [[nodiscard]] const Sides& draw_of(std::size_t load) const { return draws_[load]; }

    // As the scenario has them.
    [[nodiscard]] int packs() const;
    [[nodiscard]] int panels() const;

    [[nodiscard]] Lived lived(Values values, const SwitchedOff& off = {}) const;
    // The same, to the last bit.
    [[nodiscard]] Lived lived(Values values, const SwitchedOff& off,
                              const LivedBefore& before) const;

    // The same for any number of panels.
    [[nodiscard]] Light light(Values values) const;

    //   panels  as outage::with_panels takes it
    [[nodiscard]] std::vector<outage::SunChange> sun(const Light& light, int panels) const;
    [[nodiscard]] std::vector<outage::SunChange> sun(Values values, int panels) const;

    //   packs   all kinds together, as outage::with_count takes it
    //   sun     of these values
    //   days    as outage::run takes it
    [[nodiscard]] outage::Course run(const Lived& lived, int packs,
                                     const std::vector<outage::SunChange>& sun, outage::Keep keep,
                                     std::vector<outage::SunOfDay>* days = nullptr) const;

    // Every unknown so many standard deviations on its hungry side at once, each day of a load as
    // it mostly is. method.md (14)
    [[nodiscard]] std::vector<double> corner(double score) const;

    // Of a weather file, from 0; nothing without one.
    [[nodiscard]] std::optional<int> start_date(Values values) const;

  private:
    World();

    // Where a day's snow stands among the unknowns.
    //   falls   absent where a weather file tells it
    struct SnowPlaces {
        std::optional<std::size_t> falls = {};
        std::size_t goes = 0;
    };

    scenario::Scenario scenario_;  // each `like` applied
    std::shared_ptr<const outage::Ready> ready_;
    Names names_;
    std::vector<Sides> draws_;                         // by load
    std::vector<std::vector<DayDraw>> draws_of_days_;  // by load, by local day
    std::vector<CyclePhase> phases_;  // of loads whose meeting may overstep a limit
    ByDay by_day_;                    // with the phases of the likely course
    std::shared_ptr<PatternsByLoads> patterns_ = {};
    std::size_t idle_ = 0;
    double idle_deviation_ = 0.0;
    std::vector<PackUnknowns> packs_;  // by kind
    std::size_t warmth_ = 0;
    units::TemperatureDifference warmth_deviation_{};
    std::shared_ptr<KindsByWarmth> kinds_;
    std::size_t panels_ = 0;
    std::size_t climate_ = 0;
    std::vector<std::size_t> skies_;  // by local day
    std::vector<SnowPlaces> snow_;    // by local day; empty: no snow is counted
    std::size_t file_start_ = 0;
    std::vector<int> dates_;  // of a weather file, brightest first
    std::shared_ptr<PanelsLit> lit_;
    // What an unknown has a part in, by place.
    enum class Part : char { loads, inverter, packs, light };
    std::vector<Part> part_of_;

    [[nodiscard]] bool alike(Part part, Values one, Values other) const;
    [[nodiscard]] std::optional<inverter::Model> inverter_of(Values values) const;
    void take_steps(Lived& made, Values values, const SwitchedOff& off) const;
    void note_parts();
    void take_loads();
    void take_phases();
    [[nodiscard]] ByDay by_day(const demand::Demand& demand) const;
    [[nodiscard]] ByDay by_day_with(Values values) const;
    void take_packs();
    void take_sun();
    void take_snow(bool falls_are_drawn);
    [[nodiscard]] Light sky_of(Values values) const;
    [[nodiscard]] std::vector<units::Power> of_one_panel(const solar::Sky& sky) const;
    [[nodiscard]] int warmth_level(Values values) const;
    [[nodiscard]] outage::PackKinds varied_kinds(Values values) const;
    [[nodiscard]] units::Power drawn(const DayDraw& draw, units::Power likely, Values values) const;
    [[nodiscard]] demand::Demand switched(ByDay all, const SwitchedOff& off) const;
    [[nodiscard]] demand::Demand demand(Values values, const SwitchedOff& off) const;
    [[nodiscard]] std::optional<std::vector<demand::DemandStep>> steps_by_pattern(
        Values values, const SwitchedOff& off) const;
};

}  // namespace chance
