#include "outage/told/account.hpp"

#include <algorithm>

namespace outage {

using namespace units;

Ledger without_part(Ledger whole, const Ledger& part) {
    for (const auto entry : flows_in_ledger)
        whole.*entry -= part.*entry;
    return whole;
}

void close(Ledger& ledger) {
    const Energy in = ledger.stored_at_start + ledger.sun_offered + ledger.charger_offered;
    const Energy out = ledger.loads + ledger.inverter_loss + ledger.converter_loss +
                       ledger.wiring_loss + ledger.battery_loss + ledger.sun_unused +
                       ledger.charger_unused + ledger.stored_at_end;
    ledger.residual = in - out;
    const Energy largest = std::max(in, out);
    if (largest > 0.0 * joule) ledger.relative_residual = abs(ledger.residual) / largest;
}

std::vector<Interval> joined(const std::vector<Interval>& intervals, Duration each) {
    std::vector<Interval> sums;
    for (const Interval& next : intervals) {
        const Duration end = static_cast<double>(sums.size()) * each;
        if (sums.empty() || next.from > end - 1e-6 * each) {
            sums.push_back(next);
            continue;
        }
        Interval& sum = sums.back();
        add(sum.flows, next.flows);
        sum.flows.stored_at_end = next.flows.stored_at_end;
        close(sum.flows);
        sum.to = next.to;
        sum.charge = next.charge;
        sum.voltage = next.voltage;
    }
    return sums;
}

}  // namespace outage
