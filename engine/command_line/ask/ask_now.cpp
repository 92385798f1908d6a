#include "command_line/ask/ask_now.hpp"

#include <CLI/CLI.hpp>

#include "command_line/ask/moments.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

using words::said;
words::Said found_outside(units::LocalTime now, const scenario::Outage& outage, bool given) {
    const std::string at = units::print(now);
    const std::string starts = units::print(outage.starts);
    const std::string ends = units::print(outage.starts + outage.lasts);
    const bool before = now < outage.starts;
    if (given)
        return before ? said<"found {time}, before the outage starts at {start}">(at, starts)
                      : said<"found {time}, after the outage is over at {end}">(at, ends);
    return before ? said<"this computer's clock says {time}, before the outage starts at {start}">(
                        at, starts)
                  : said<"this computer's clock says {time}, after the outage is over at {end}">(
                        at, ends);
}

units::Error outside(units::LocalTime now, const scenario::Outage& outage, bool given) {
    return {.where = "--at",
            .found = found_outside(now, outage, given),
            .remedy = now < outage.starts
                          ? said<"give a time within it, such as --at 21:30; before it starts ask "
                                 "outage">()
                          : said<"give a time within it, such as --at 21:30, or give outage.lasts "
                                 "the length that it takes now">()};
}

void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--at", request.at,
                    "The moment that is asked about (now); entries after it do not "
                    "count yet")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario& read,
                                         const Request& request) {
    const auto& outage = read.scenario.outage;
    const auto now = now_of(request.at, put_right(request.clock, read.scenario), outage);
    if (!now) return units::fail(now.error());
    if (*now < outage.starts || !(*now < outage.starts + outage.lasts))
        return units::fail(outside(*now, outage, request.at.has_value()));
    return questions::NowAsked{.at = *now};
}

}  // namespace

Question now_question() {
    return {
        .name = "now",
        .asks = words::said<"Until when from now, what goes off next, what should I read next?">(),
        .examples =
            "  candlemark now storm.toml\n"
            "  candlemark now storm.toml --at 21:30",
        .add_options = add_options,
        .asked = asked_of};
}

}  // namespace command_line
