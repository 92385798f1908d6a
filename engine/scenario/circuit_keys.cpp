// The keys of [[circuit]]: what it feeds, and how its links are told apart. The keys of each link
// are in link_keys.cpp. Limits without a source are common practice.
#include "scenario/tables.hpp"

namespace scenario {
namespace {

// A link is told by its first key: fuse, switch, wire, connector or outlet.
struct LinkForm {
    using Value = Link;

    [[nodiscard]] std::string example() const { return "{fuse = \"7.5 A\"}"; }
    [[nodiscard]] std::string limits() const { return "a fuse, switch, wire, connector or outlet"; }
    [[nodiscard]] Ends ends() const {
        Ends ends;
        const auto as_it_is = [](const std::string& value) { return value; };
        for (const Ends& part : {ends_inside<Fuse>(), ends_inside<Switch>(), ends_inside<Wire>(),
                                 ends_inside<Connector>(), ends_inside<SocketOutlet>()}) {
            ends.add(part, as_it_is);
        }
        return ends;
    }
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::table}; }
    [[nodiscard]] ToldKeys inside() const;
    [[nodiscard]] std::optional<Link> read(Reading& reading, const Spot& spot) const;
    [[nodiscard]] std::string print(const Link& link) const {
        return std::visit([](const auto& part) { return print_inside(part); }, link);
    }
};

// The keys of each kind of part, which are told apart by the first.
ToldKeys LinkForm::inside() const {
    ToldKeys all;
    for (ToldKeys part : {told_keys<Fuse>(), told_keys<Switch>(), told_keys<Wire>(),
                          told_keys<Connector>(), told_keys<SocketOutlet>()}) {
        const std::string kind = part.front().key;
        for (ToldKey& key : part) {
            key.of = kind;
            all.push_back(std::move(key));
        }
    }
    return all;
}

std::optional<Link> LinkForm::read(Reading& reading, const Spot& spot) const {
    constexpr std::string_view remedy =
        "give each link one of fuse, switch, wire, connector, outlet";
    if (spot.node->kind != Node::Kind::table) {
        refuse_no_table(reading, spot, example(), {});
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

}  // namespace

template <>
const Description<Circuit>& describe<Circuit>() {
    static const Description<Circuit> description = {
        .silent = "nothing",
        .keys = keys_of(
            key<&Circuit::name>({.name = "name",
                                 .means = "what the answers call it",
                                 .demand = Demand::required,
                                 .on_screen = {.label = on_screen("Name")}},
                                WordsForm{.sample = "cabin lights"}),
            key<&Circuit::from>(
                {.name = "from",
                 .means = "where it begins: bus, inverter, or the name of another circuit",
                 .silent = "the inverter for AC loads, else the bus",
                 .on_screen = {.label = on_screen("Begins at"),
                               .silent = on_screen("as usual for what it feeds"),
                               .picks = {{"bus", on_screen("the bus")},
                                         {"inverter", on_screen("the inverter's outlets")}}}},
                WordsForm{.sample = "bus"}),
            key<&Circuit::feeds>({.name = "feeds",
                                  .means = "names of what it feeds",
                                  .on_screen = {.label = on_screen("Feeds")}},
                                 list_of(WordsForm{.sample = "cabin lights"}, 200)),
            key<&Circuit::links>({.name = "links",
                                  .means = "its parts in order, from where it begins outwards",
                                  .demand = Demand::required},
                                 list_of(LinkForm(), 64)),
            key<&Circuit::joints>({.name = "joints",
                                   .means = "all lugs and bolts of both conductors together",
                                   .silent = "0.05 mohm for each lug"},
                                  from_to(units::Resistance(), 1.0 * units::ohm, "0.4 mohm")),
            key<&Circuit::drop_limit>({.name = "drop_limit",
                                       .means = "share of the voltage that it may lose",
                                       .silent = "by what it feeds",
                                       .on_screen = {.label = on_screen("Voltage it may lose"),
                                                     .units = {"%"},
                                                     .silent = on_screen("by what it feeds")}},
                                      from_to(units::Share(0.001), units::Share(0.5), "3 %")),
            key<&Circuit::neutral>(
                {.name = "neutral",
                 .means = "how the neutral stands to ground",
                 .silent = "unknown",
                 .on_screen = {.label = on_screen("Neutral"), .silent = "unknown"}},
                OneTextForm{{"unknown", "bonded", "floating", "switched", "split"},
                            {on_screen("not known"), on_screen("bonded to ground"),
                             on_screen("floating"), on_screen("switched"), on_screen("split")}}),
            key<&Circuit::weight>(
                {.name = "weight", .means = "of all its parts", .silent = "left out"},
                from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "1 kg")),
            key<&Circuit::price>({.name = "price",
                                  .means = "of all its parts, in the money of the packs",
                                  .silent = "left out"},
                                 from_to(units::Price(), units::Price(1e6), "40")))};
    return description;
}

}  // namespace scenario
