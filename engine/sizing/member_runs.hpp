// How the outage ends for the members of a chance: the one place that runs them, whoever asks.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "abreast/own.hpp"
#include "chance/members.hpp"

namespace sizing {

// One member of a block with one build.
//   lane    0 to 63
//   packs, panels   as chance::Asked takes them
struct MemberJob {
    int lane = 0;
    int packs = 1;
    int panels = 0;
};

// One outage of a world, with its unknowns at some value.
//   lived, needs, sun, unit   must outlive the run
//   needs, most, pattern      of lived: needs_of, and as abreast::Outage takes them
//   sun                       of the panels asked for
//   unit                      with so many packs, where it is made already
struct LivedJob {
    const chance::Lived* lived = nullptr;
    std::span<const abreast::Need> needs = {};
    std::optional<abreast::MostNeeded> most = {};
    const void* pattern = nullptr;
    int packs = 1;
    std::span<const outage::SunChange> sun = {};
    const outage::Unit* unit = nullptr;
};

// What its loads ask of any number of packs.
[[nodiscard]] std::vector<abreast::Need> needs_of(const chance::World& world,
                                                  const chance::Lived& lived);

// Side by side, one end a job: that of chance::World::run to the first failure, to the last bit.
[[nodiscard]] std::vector<chance::MemberEnd> ends_of(const chance::World& world,
                                                     std::span<const LivedJob> jobs);

// So many outages of this world may be held at once by each of a few threads, at least one.
[[nodiscard]] std::size_t held_at_once(const chance::World& world);

class CountsOfKinds;

// All members with the same loads on: what does not depend on packs and panels is made once for
// each, and kept while it is not too much.
class MemberRuns {
  public:
    //   members   must outlive it
    explicit MemberRuns(const chance::Members& members, chance::SwitchedOff off = {});
    // With these loads off; packs and light are taken from here, while they are kept.
    //   gives   what must not outlive this, nor be run while this is
    [[nodiscard]] MemberRuns with_off(chance::SwitchedOff off) const;

    [[nodiscard]] const chance::Members& members() const { return members_; }

    // One end a job: that of Members::end_of, to the last bit, whatever else is asked with it.
    // Different blocks may be run at once.
    [[nodiscard]] std::vector<chance::MemberEnd> run(int block, std::span<const MemberJob> jobs);

    // Until it is let go of, what the members of a block are made of is kept from run to run, where
    // that is not too much.
    void keep(int block);
    void let_go(int block);

    // One end a member.
    //   threads   0 takes as many as the machine has; the same ends for any number
    [[nodiscard]] std::vector<chance::MemberEnd> ends(int packs, int panels, unsigned threads = 0);

    // As the scenario has them.
    [[nodiscard]] std::vector<chance::MemberEnd> ends(unsigned threads = 0);

  private:
    //   pattern   shared by those of a block that switch together
    //   packs     that `unit` has; 0 while it is not made
    struct Lane {
        chance::Lived lived;
        std::vector<abreast::Need> needs;
        abreast::MostNeeded most = {};
        std::shared_ptr<const char> pattern = {};
        int panels = 0;
        std::vector<outage::SunChange> sun = {};  // with these panels
        int packs = 0;
        outage::Unit unit = {};
    };

    const chance::Members& members_;
    chance::SwitchedOff off_;
    const MemberRuns* like_ = nullptr;  // with other loads off
    std::shared_ptr<CountsOfKinds> counts_;
    bool all_kept_;
    bool blocks_kept_;
    std::vector<char> kept_;                  // by block, those that are asked for
    std::vector<std::optional<Lane>> lanes_;  // by member

    [[nodiscard]] LivedJob lived_of(int block, const MemberJob& job);
    [[nodiscard]] Lane made(int number) const;
    void take_packs(Lane& lane, int packs) const;
};

// The fewest packs in all that last to the end for as many members as the goal asks for. A member
// that lasts with fewer is taken to last with more. Where nobody knows how long the outage lasts
// every member is run with every number that is looked at, for its time counts.
//   packs   0: not even the most do
//   of      chance with them; with the most, where none are enough
struct PacksEnough {
    int packs = 0;
    units::Probability of{};
};
[[nodiscard]] PacksEnough fewest_packs(MemberRuns& runs, units::Probability goal, int most,
                                       unsigned threads = 0);

// The same number, where it is known how they end with the packs that are there.
//   enough   by member, packs that are enough for more loads than these; then for these. Empty:
//            not known
//   gives    0: not even the most do
[[nodiscard]] int fewest_packs(MemberRuns& runs, const std::vector<chance::MemberEnd>& ends,
                               units::Probability goal, int most, std::vector<int>& enough,
                               unsigned threads = 0);

// The same, beside those that are there.
//   more   0: none of those tried does
//   of, interval   chance with them; with all that were tried, where none does
struct MorePacks {
    int more = 0;
    int tried = 0;
    units::Probability of{};
    chance::Interval interval = {};
};

//   ends   of the packs as they are
//   most   packs more that are tried
[[nodiscard]] MorePacks more_packs(MemberRuns& runs, const std::vector<chance::MemberEnd>& ends,
                                   units::Probability goal, int most, unsigned threads = 0);

}  // namespace sizing
