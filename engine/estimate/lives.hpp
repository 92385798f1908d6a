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

    // After the last change of the packs, how it ends: times after the start of the outage.
    //   values   one a member; each has a value for every name of the world
    //   gives    one a member, the same for any number of threads
    [[nodiscard]] std::vector<chance::MemberEnd> ends(
        const std::vector<std::vector<double>>& values, unsigned threads = 0) const;

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

    [[nodiscard]] chance::MemberEnd end_with_changes(chance::Values values) const;
    void ends_of_block(const std::vector<std::vector<double>>& values, std::size_t first,
                       std::span<chance::MemberEnd> ends) const;
};

}  // namespace estimate
