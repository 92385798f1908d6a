#include "units/size.hpp"

#include <charconv>

#include "units/quote.hpp"
#include "units/text.hpp"
#include "units/written/plain_letters.hpp"

namespace units {

namespace {

using words::Said;
using words::said;

tl::unexpected<Errors> refuse(Said found) {
    return fail({.where = "",
                 .found = std::move(found),
                 .remedy = said<"give a wire size, such as 12 AWG, 4/0 AWG or 2.5 mm2">()});
}

// The number before AWG: "12", or "4/0" for four noughts.
std::optional<int> gauge_number(std::string_view text) {
    int number = 0;
    const char* const end = text.data() + text.size();
    const std::from_chars_result parsed = std::from_chars(text.data(), end, number);
    if (parsed.ec != std::errc() || number < 0) {
        return std::nullopt;
    }
    if (parsed.ptr == end) {
        return number;
    }
    const bool noughts =
        std::string_view(parsed.ptr, static_cast<std::size_t>(end - parsed.ptr)) == "/0";
    return noughts && number >= 1 && number <= 4 ? std::optional(1 - number) : std::nullopt;
}

std::string print_gauge(AmericanGauge gauge) {
    return gauge.number <= 0 ? fmt::format("{}/0 AWG", 1 - gauge.number)
                             : fmt::format("{} AWG", gauge.number);
}

// What follows the last digit or space before the unit: "mm2" of "2.5 mm2".
std::string_view unit_of(std::string_view text) {
    const std::string_view without_its_power = text.substr(0, text.empty() ? 0 : text.size() - 1);
    return text.substr(without_its_power.find_last_of(" 0123456789") + 1);
}

Result<WireSize> read_gauge(std::string_view whole, std::string_view number) {
    const std::optional<int> gauge = gauge_number(trimmed(number));
    if (!gauge) {
        return refuse(said<"found '{whole}', which is not a gauge">(quote(whole)));
    }
    if (*gauge > thinnest_gauge.number) {
        return refuse(
            said<"found '{whole}'; gauges go from 40 AWG, the thinnest, to 4/0 AWG">(quote(whole)));
    }
    return AmericanGauge{*gauge};
}

}  // namespace

Result<WireSize> read_wire_size(std::string_view text) {
    constexpr std::size_t longest = 200;  // bytes
    if (text.size() > longest) {
        return refuse(said<"'{text}' is too long to be a wire size">(quote(text)));
    }
    constexpr std::string_view system = "AWG";
    const std::string plain = in_plain_letters(text);
    const std::string_view view = plain;
    if (view.ends_with(system)) {
        return read_gauge(view, view.substr(0, view.size() - system.size()));
    }
    if (view.starts_with(system)) {
        return read_gauge(view, view.substr(system.size()));
    }
    if (gauge_number(view)) {
        return refuse(said<"{view} has no unit">(quote(view)));
    }
    const std::string_view unit = unit_of(view);
    if (unit != "mm2" && unit != "mm^2" && unit != "m2") {
        return refuse(said<"found '{view}', which is no wire size">(quote(view)));
    }
    const Result<Area> area = read<Area>(view);
    if (!area) {
        return fail(area.error());
    }
    if (!(*area > Area())) {
        return refuse(said<"found {view}, which leaves no metal">(quote(view)));
    }
    return *area;
}

std::string print(const WireSize& size) {
    const auto* const gauge = std::get_if<AmericanGauge>(&size);
    if (gauge != nullptr) {
        return print_gauge(*gauge);
    }
    return print_in(std::get<Area>(size), "mm2");
}

std::string show(const WireSize& size) {
    const auto* const gauge = std::get_if<AmericanGauge>(&size);
    return gauge != nullptr ? print_gauge(*gauge) : show(std::get<Area>(size));
}

}  // namespace units
