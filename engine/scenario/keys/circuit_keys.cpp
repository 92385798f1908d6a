// The keys of [[circuit]]: what it feeds, and how its links are told apart. The keys of each link
// are in link_keys.cpp. Limits without a source are common practice.
#include "scenario/file/tables.hpp"

namespace scenario {

using words::said;

namespace {

// A link is told by its first key: fuse, switch, wire, connector or outlet.
struct LinkForm {
    using Value = Link;

    [[nodiscard]] std::string example() const { return "{fuse = \"7.5 A\"}"; }
    [[nodiscard]] words::Said limits() const {
        return words::said<"a fuse, switch, wire, connector or outlet">();
    }
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
                       parts.empty() ? said<"found a link that is none of the parts of a circuit">()
                                     : said<"found {parts} in one link">(
                                           one_after_the_other(parts, words::List::Joint::all)),
                       said<"give each link one of fuse, switch, wire, connector, outlet">());
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

// Between what it runs.
Keys<Circuit> ends_of_circuit() {
    return keys_of(
        key<&Circuit::name>({.name = "name",
                             .means = said<"what the answers call it">(),
                             .demand = Demand::required,
                             .on_screen = {.label = said<"Name">()}},
                            WordsForm{.sample = "cabin lights"}),
        key<&Circuit::from>(
            {.name = "from",
             .means = said<"where it begins: bus, inverter, or the name of another circuit">(),
             .silent = said<"the inverter for AC loads, else the bus">(),
             .on_screen = {.label = said<"Begins at">(),
                           .silent = said<"as usual for what it feeds">(),
                           .picks = {{"bus", said<"the bus">()},
                                     {"inverter", said<"the inverter's outlets">()}}}},
            WordsForm{.sample = "bus"}),
        key<&Circuit::feeds>({.name = "feeds",
                              .means = said<"names of what it feeds">(),
                              .on_screen = {.label = said<"Feeds">()}},
                             list_of(WordsForm{.sample = "cabin lights"}, 200)));
}

// What it is made of.
Keys<Circuit> parts_of_circuit() {
    return keys_of(
        key<&Circuit::links>({.name = "links",
                              .means = said<"its parts in order, from where it begins outwards">(),
                              .demand = Demand::required},
                             list_of(LinkForm(), 64)),
        key<&Circuit::joints>({.name = "joints",
                               .means = said<"all lugs and bolts of both conductors together">(),
                               .silent = said<"0.05 mohm for each lug">()},
                              from_to(units::Resistance(), 1.0 * units::ohm, "0.4 mohm")));
}

// What it may lose, and how its neutral stands.
Keys<Circuit> limits_of_circuit() {
    return keys_of(
        key<&Circuit::drop_limit>({.name = "drop_limit",
                                   .means = said<"share of the voltage that it may lose">(),
                                   .silent = said<"by what it feeds">(),
                                   .on_screen = {.label = said<"Voltage it may lose">(),
                                                 .units = {"%"},
                                                 .silent = said<"by what it feeds">()}},
                                  from_to(units::Share(0.001), units::Share(0.5), "3 %")),
        key<&Circuit::neutral>(
            {.name = "neutral",
             .means = said<"how the neutral is joined to ground">(),
             .silent = "unknown",
             .on_screen = {.label = said<"Neutral">(), .silent = "unknown"}},
            OneTextForm{{"unknown", "bonded", "floating", "switched", "split"},
                        {said<"not known">(), said<"bonded to ground">(), said<"floating">(),
                         said<"switched">(), said<"split">()}}));
}

// What its parts weigh and cost.
Keys<Circuit> burden_of_circuit() {
    return keys_of(
        key<&Circuit::weight>(
            {.name = "weight", .means = said<"of all its parts">(), .silent = said<"left out">()},
            from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "1 kg")),
        key<&Circuit::price>({.name = "price",
                              .means = said<"of all its parts, in the money of the packs">(),
                              .silent = said<"left out">()},
                             from_to(units::Price(), units::Price(1e6), "40")));
}

}  // namespace

template <>
const Description<Circuit>& describe<Circuit>() {
    static const Description<Circuit> description = {
        .silent = said<"nothing">(),
        .keys = joined(ends_of_circuit(), parts_of_circuit(), limits_of_circuit(),
                       burden_of_circuit())};
    return description;
}

}  // namespace scenario
