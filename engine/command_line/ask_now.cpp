#include "command_line/ask_now.hpp"

#include <CLI/CLI.hpp>

#include "command_line/moments.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

units::Error outside(units::LocalTime now, const scenario::Outage& outage, bool given) {
    const bool before = now < outage.starts;
    return {.where = "--at",
            .found = (given ? "found " : "this computer's clock says ") + units::print(now) +
                     (before ? ", before the outage starts at " + units::print(outage.starts)
                             : ", after the outage is over at " +
                                   units::print(outage.starts + outage.lasts)),
            .remedy = before
                          ? "give a time within it, such as --at 21:30; before it starts ask "
                            "outage"
                          : "give a time within it, such as --at 21:30, or give outage.lasts the "
                            "length that it takes now"};
}

}  // namespace

void add_now_options(CLI::App& command, Request& request) {
    command
        .add_option("--at", request.at,
                    "The moment that is asked about (now); entries after it do not\n"
                    "count yet")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<questions::Asked> now_asked(const scenario::ReadScenario& read,
                                          const Request& request) {
    const auto& outage = read.scenario.outage;
    const auto now = now_of(request.at, request.clock, outage);
    if (!now) return units::fail(now.error());
    if (*now < outage.starts || !(*now < outage.starts + outage.lasts))
        return units::fail(outside(*now, outage, request.at.has_value()));
    return questions::NowAsked{.at = *now};
}

}  // namespace command_line
