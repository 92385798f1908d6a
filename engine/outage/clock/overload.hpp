// How long a pack stands more than it bears forever: its protection as long as its stated pulses
// allow, its fuse until the earliest moment at which it may open. method.md (13)
#pragma once

#include <limits>
#include <optional>
#include <vector>

#include "outage/course.hpp"
#include "outage/unit.hpp"
#include "units/quantities.hpp"
#include "wiring/fuse.hpp"

namespace outage {

class Overload {
  public:
    Overload() = default;  // bears everything
    explicit Overload(const Bank& bank);
    explicit Overload(const MainFuse& fuse);
    // The same bank on another day: what it has stood so far goes on counting.
    Overload(const Bank& bank, const Overload& before);

    // The fuse alone, which does not ask which way the current goes: for what charges a pack.
    // Bears everything where the pack takes no more than its fuse bears forever.
    [[nodiscard]] static Overload of_charging(const Bank& bank);
    // Keeps what it stood before, on another day.
    [[nodiscard]] Overload after(const Overload& before) const;

    // Whether anything is stood for a time rather than not at all.
    [[nodiscard]] bool timed() const { return timed_; }
    // Whether a time is running, or a fuse is still warm from one.
    [[nodiscard]] bool running() const { return passed_ > 0 || warmed_ > 0.0; }

    [[nodiscard]] std::size_t levels() const { return levels_.size(); }
    [[nodiscard]] std::size_t passed() const { return passed_; }
    // The current at which the next time begins to run; nothing beyond the last.
    [[nodiscard]] std::optional<units::Current> watched() const { return watched(passed_); }
    [[nodiscard]] std::optional<units::Current> watched(std::size_t passed) const;

    void rise() { ++passed_; }  // the current has come to what is watched
    // Rises above all that the current is beyond.
    void rise_to(units::Current now);
    void settle(units::Current now);  // forgets what the current has fallen below
    void forget();                    // switched off for long

    // From now, at this current, until something opens; infinite where nothing does.
    struct Standing {
        units::Duration still = std::numeric_limits<double>::infinity() * units::second;
        bool fuse = false;        // what opens then
        units::Duration since{};  // how long its time has been running
        units::Current above{};   // from which current on
    };
    [[nodiscard]] Standing standing(units::Current current) const;
    // So long at most this current.
    void pass(units::Current current, units::Duration time);

    [[nodiscard]] const Strain& strain() const { return strain_; }

  private:
    struct Level {
        units::Current above{};
        bool fuse = false;
        units::Duration stands{};  // of the protection
        units::Duration spent{};
    };
    std::vector<Level> levels_;  // rising
    std::size_t passed_ = 0;
    bool timed_ = false;
    units::Current rating_{};  // of the fuse, as warm as it is
    wiring::Envelope opens_;
    double warmed_ = 0.0;       // part of its opening time that has passed
    units::Duration cooled_{};  // since it carried too much last
    Strain strain_;

    [[nodiscard]] std::optional<units::Duration> opens_after(units::Current current) const;
};

// How long a current may be taken to stay as it is before what it warms is looked at again.
[[nodiscard]] units::Duration until_looked_at(const Overload::Standing& standing);
inline constexpr units::Duration at_once = 1e-6 * units::second;

}  // namespace outage
