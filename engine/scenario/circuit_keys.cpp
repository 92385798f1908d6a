// The keys of [[circuit]]: what it feeds, and its links from the bus outwards. Limits without a
// source are common practice.
#include "scenario/tables.hpp"

namespace scenario {
namespace {

QuantityForm<units::Current> rating(std::string_view example) {
    return positive_to(10'000.0 * units::ampere, example);
}

// A link is told by its first key: fuse, switch, wire, connector or outlet.
struct LinkForm {
    using Value = Link;

    [[nodiscard]] std::string example() const { return "{fuse = \"7.5 A\"}"; }
    [[nodiscard]] std::optional<Link> read(Reading& reading, const Spot& spot) const;
    [[nodiscard]] std::string print(const Link& link) const {
        return std::visit([](const auto& part) { return print_inside(part); }, link);
    }
};

std::optional<Link> LinkForm::read(Reading& reading, const Spot& spot) const {
    constexpr std::string_view remedy =
        "give each link one of fuse, switch, wire, connector, outlet";
    if (spot.node->kind != Node::Kind::table) {
        refuse_no_table(reading, spot, example());
        return std::nullopt;
    }
    std::vector<std::string_view> parts;
    for (const std::string_view part : {"fuse", "switch", "wire", "connector", "outlet"}) {
        if (spot.node->find(part) != nullptr) {
            parts.push_back(part);
        }
    }
    if (parts.size() != 1) {
        reading.refuse(spot,
                       parts.empty()
                           ? std::string("found a link that is none of the parts of a circuit")
                           : fmt::format("found {} in one link", fmt::join(parts, " and ")),
                       std::string(remedy));
        return std::nullopt;
    }
    switch (parts.front().front()) {
        case 'f':
            return read_table<Fuse>(reading, spot);
        case 's':
            return read_table<Switch>(reading, spot);
        case 'w':
            return read_table<Wire>(reading, spot);
        case 'c':
            return read_table<Connector>(reading, spot);
        default:
            return read_table<SocketOutlet>(reading, spot);
    }
}

// The one-way length, absent where the round trip is given instead.
struct LengthOfWire {
    [[nodiscard]] const units::Length* get(const Wire& wire) const {
        return wire.length > units::Length() ? &wire.length : nullptr;
    }
    void set(Wire& wire, units::Length length) const { wire.length = length; }
};

AKey<Wire> length_key() {
    using Form = QuantityForm<units::Length>;
    return std::make_unique<const KeyOfForm<Wire, Form, LengthOfWire>>(
        KeyWords{.name = "length", .silent = "half the round trip"},
        positive_to(1000.0 * units::metre, "3 ft"), LengthOfWire());
}

void check_wire(Reading& reading, const Spot& spot, const Wire&) {
    const bool one_way = spot.node->find("length") != nullptr;
    const bool round_trip = spot.node->find("round_trip") != nullptr;
    if (one_way && round_trip) {
        reading.refuse(spot, "found both length and round_trip",
                       "give length, one way, or round_trip, out and back");
    }
    if (!one_way && !round_trip) {
        reading.demand(spot, "length", "\"3 ft\" (one way)");
    }
}

}  // namespace

template <>
const Description<Fuse>& describe<Fuse>() {
    static const Description<Fuse> description = {
        .silent = "taken by the wiring part, and told there",
        .keys = keys_of(
            key<&Fuse::rating>({.name = "fuse", .demand = Demand::required}, rating("7.5 A")),
            key<&Fuse::family>({.name = "family"}, WordsForm{.sample = "blade"}),
            key<&Fuse::interrupts>({.name = "interrupts"},
                                   positive_to(1e6 * units::ampere, "1 kA")))};
    return description;
}

template <>
const Description<Switch>& describe<Switch>() {
    static const Description<Switch> description = {
        .silent = "taken by the wiring part, and told there",
        .keys = keys_of(
            key<&Switch::rating>({.name = "switch", .demand = Demand::required}, rating("10 A")),
            key<&Switch::rated_for>({.name = "rated_for"}, OneTextForm{{"dc", "ac", "both"}}))};
    return description;
}

template <>
const Description<Wire>& describe<Wire>() {
    using units::celsius;
    static const Description<Wire> description = {
        .silent = "taken by the wiring part, and told there",
        .keys =
            keys_of(key<&Wire::size>({.name = "wire", .demand = Demand::required}, WireSizeForm()),
                    length_key(),
                    key<&Wire::round_trip>({.name = "round_trip", .silent = "twice the length"},
                                           positive_to(2000.0 * units::metre, "6 ft")),
                    key<&Wire::insulation>({.name = "insulation"},
                                           from_to(celsius(40.0), celsius(300.0), "105 degC"))),
        .check = check_wire};
    return description;
}

template <>
const Description<Connector>& describe<Connector>() {
    static const Description<Connector> description = {
        .silent = "taken by the wiring part, and told there",
        .keys = keys_of(key<&Connector::rating>({.name = "connector", .demand = Demand::required},
                                                rating("50 A")),
                        key<&Connector::resistance>(
                            {.name = "resistance"},
                            from_to(units::Resistance(), 1.0 * units::ohm, "0.5 mohm")))};
    return description;
}

template <>
const Description<SocketOutlet>& describe<SocketOutlet>() {
    static const Description<SocketOutlet> description = {
        .silent = "",
        .keys = keys_of(key<&SocketOutlet::rating>({.name = "outlet", .demand = Demand::required},
                                                   rating("10 A")))};
    return description;
}

template <>
const Description<Circuit>& describe<Circuit>() {
    static const Description<Circuit> description = {
        .silent = "nothing",
        .keys = keys_of(key<&Circuit::name>({.name = "name", .demand = Demand::required},
                                            WordsForm{.sample = "cabin lights"}),
                        key<&Circuit::feeds>({.name = "feeds"},
                                             list_of(WordsForm{.sample = "cabin lights"}, 200)),
                        key<&Circuit::links>({.name = "links", .demand = Demand::required},
                                             list_of(LinkForm(), 64)))};
    return description;
}

}  // namespace scenario
