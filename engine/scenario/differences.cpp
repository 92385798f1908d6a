#include "scenario/differences.hpp"

#include "scenario/file/tables.hpp"

namespace scenario {

template <class Table>
KeyDifferences differences(const Table& before, const Table& after) {
    KeyDifferences found;
    for (const AKey<Table>& key : describe<Table>().keys) {
        auto was = key->print(before).value_or("");
        auto is = key->print(after).value_or("");
        if (was != is) {
            found.push_back({std::string(key->words.name), std::move(was), std::move(is)});
        }
    }
    return found;
}

template KeyDifferences differences(const Outage&, const Outage&);
template KeyDifferences differences(const Place&, const Place&);
template KeyDifferences differences(const Pack&, const Pack&);
template KeyDifferences differences(const Inverter&, const Inverter&);
template KeyDifferences differences(const Panel&, const Panel&);
template KeyDifferences differences(const ChargeController&, const ChargeController&);
template KeyDifferences differences(const Charger&, const Charger&);
template KeyDifferences differences(const Load&, const Load&);
template KeyDifferences differences(const Circuit&, const Circuit&);
template KeyDifferences differences(const Fuse&, const Fuse&);
template KeyDifferences differences(const Switch&, const Switch&);
template KeyDifferences differences(const Wire&, const Wire&);
template KeyDifferences differences(const Connector&, const Connector&);
template KeyDifferences differences(const SocketOutlet&, const SocketOutlet&);
template KeyDifferences differences(const Case&, const Case&);
template KeyDifferences differences(const Storage&, const Storage&);
template KeyDifferences differences(const Goal&, const Goal&);

bool same(const Link& before, const Link& after) {
    return before.index() == after.index() &&
           std::visit(
               [&before](const auto& now) {
                   return same(std::get<std::decay_t<decltype(now)>>(before), now);
               },
               after);
}

}  // namespace scenario
