// The outage of one value of everything, lived through as the log has it: what it would have shown
// at each reading, and how it ends. method.md (10) and (11)
#pragma once

#include <memory>
#include <span>
#include <string>
#include <vector>

#include "chance/members.hpp"
#include "chance/world.hpp"
#include "estimate/story.hpp"
#include "outage/course.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace estimate {

// What one member has at one moment.
//   charge      of all packs that are joined
//   rested      voltage after a long rest
//   unloaded    voltage were nothing drawn at this moment
//   loaded      at the bus, with what runs then
//   resistance  of packs and leads together; of it inside the packs
//   sun_taken   since the last midnight, or the start
struct State {
    units::StateOfCharge charge;
    units::Voltage rested{};
    units::Voltage unloaded{};
    units::Voltage loaded{};
    units::Resistance resistance{};
    units::Resistance inside{};
    units::Energy sun_taken{};
};

// When a member is looked at.
//   voltages   of what it has, unloaded and loaded are wanted as well, which ask for the bus of that
//              moment
struct Moment {
    units::Duration at{};
    bool voltages = true;
};

class Lives {
  public:
    //   ready    made of the scenario
    //   off      times at which loads are off beside those of the story, by load; may be empty
    //   fails    never where `ready` could be made and its packs have names
    [[nodiscard]] static units::Result<Lives> of(const scenario::Scenario& scenario,
                                                 const std::string& folder,
                                                 std::shared_ptr<const outage::Ready> ready,
                                                 const Story& story,
                                                 const std::vector<demand::Spans>& off = {});

    [[nodiscard]] const chance::World& world() const { return *world_; }

    // At each of these times, in order, none after the outage.
    [[nodiscard]] std::vector<State> states(chance::Values values,
                                            std::span<const units::Duration> at) const;

    // The whole outage of one member by the clock's own account, through every change of the packs.
    //   every   length of an interval, above 0; one that ends at a change may be shorter
    //   gives   intervals that follow one another; events and the first failure of each stretch
    [[nodiscard]] outage::Course account(chance::Values values, units::Duration every) const;

    // After the last change of the packs, how it ends: times after the start of the outage.
    //   values   one a member; each has a value for every name of the world
    //   before   likewise, of the same members by name, where they were worked out for other loads
    //            of the same scenario; empty: not yet
    //   gives    one a member, the same for any number of threads
    [[nodiscard]] std::vector<chance::MemberEnd> ends(
        const std::vector<std::vector<double>>& values, unsigned threads = 0,
        std::span<const chance::Lived> before = {}) const;

    // Both of so many members at once.
    //   states   one at each of the moments
    //   end      as `ends` gives it, but for rounding: the moments are changes of their own
    struct Life {
        std::vector<State> states;
        chance::MemberEnd end;
    };
    [[nodiscard]] std::vector<Life> whole(const std::vector<std::vector<double>>& values,
                                          std::span<const Moment> at, unsigned threads = 0) const;

    // Their states alone: none is run further than the last of the moments.
    [[nodiscard]] std::vector<std::vector<State>> states(
        const std::vector<std::vector<double>>& values, std::span<const Moment> at,
        unsigned threads = 0) const;

    // What these values make of the unit, its loads and its sun, one a member.
    [[nodiscard]] std::vector<chance::Lived> lived(const std::vector<std::vector<double>>& values,
                                                   unsigned threads = 0) const;

  private:
    // Packs of one kind that have stood alike so far.
    //   charge   nothing: as the member has it at the start
    struct Group {
        std::size_t kind = 0;
        std::size_t pack = 0;
        int count = 0;
        std::optional<units::StateOfCharge> charge = {};
    };
    struct Stretch;
    class Walk;

    std::shared_ptr<const chance::World> world_;
    std::vector<std::size_t> kind_of_;  // of each pack of the scenario; empty without changes
    Story story_;

    [[nodiscard]] std::vector<State> seen_at(const chance::Lived& lived,
                                             const std::vector<units::Duration>& moments) const;
    [[nodiscard]] std::vector<State> states_of(const chance::Lived& lived,
                                               std::span<const units::Duration> at) const;
    [[nodiscard]] chance::MemberEnd end_with_changes(const chance::Lived& lived) const;
    void ends_of_block(std::span<const chance::Lived> lived,
                       std::span<chance::MemberEnd> ends) const;
    void whole_of_block(std::span<const chance::Lived> lived, std::span<const Moment> at,
                        units::Duration until, std::span<Life> whole) const;
    [[nodiscard]] std::vector<Life> whole_until(const std::vector<std::vector<double>>& values,
                                                std::span<const Moment> at, units::Duration until,
                                                unsigned threads) const;
};

}  // namespace estimate
