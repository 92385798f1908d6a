// What a run tells as it goes along: events, stretches without supply, the first failure, and the
// account. Each is of the moment to which the clock has come.
#pragma once

#include <vector>

#include "outage/clock/clock.hpp"
#include "outage/clock/packs.hpp"
#include "outage/course.hpp"

namespace outage {

// An event's figures, as far as it has any; see Event.
struct Figures {
    units::Power power{};
    units::Power at_most{};
    units::Current current{};
    std::size_t pack = 0;
};

class Telling {
  public:
    //   midnight   from the start to the first local midnight
    //   days       nothing: the sun is not told by days
    Telling(Keep keep, units::Duration midnight, std::vector<SunOfDay>* days);

    [[nodiscard]] units::Duration now() const { return now_; }
    void go_to(units::Duration now) { now_ = now; }
    // Whether events and stretches are kept; where they are not, telling them does nothing.
    [[nodiscard]] bool keeps() const { return keep_.trace; }

    //   gives   the event, for what else it has to say; nothing where none is kept
    Event* note(EventKind kind, const Figures& figures = {}) {
        return note_at(now_, kind, figures);
    }
    Event* note_at(units::Duration when, EventKind kind, const Figures& figures = {});

    // A stretch without supply begins, and ends.
    //   gives   its place in Course::out
    std::size_t from(std::size_t part, LimitedBy why);
    void until(std::size_t told);

    // The supply fails now, wholly or in part; only the first time counts. method.md (2)
    void fails(LimitedBy cause);
    [[nodiscard]] bool failed() const { return failed_; }

    // What a leg that begins now adds to the account.
    void account(const Leg& leg, const Ledger& flows);

    [[nodiscard]] Course& course() { return course_; }

  private:
    Keep keep_;
    units::Duration midnight_;
    std::vector<SunOfDay>* days_;
    units::Duration now_{};
    bool failed_ = false;
    Course course_;

    SunOfDay& day_of(units::Duration when);
};

}  // namespace outage
