#include "faces/spoken.hpp"

#include <utility>

namespace faces {

namespace {

// One overload a struct; every member that is said is named here.
struct Speak {
    const Look& look;

    void operator()(words::Said& said) const { said = in(look, said); }
    template <class Entry>
    void operator()(std::vector<Entry>& entries) const {
        for (Entry& entry : entries)
            (*this)(entry);
    }
    template <class Entry>
    void operator()(std::optional<Entry>& entry) const {
        if (entry) (*this)(*entry);
    }

    void operator()(double&) const {}
    void operator()(bool&) const {}
    void operator()(std::int64_t&) const {}
    void operator()(std::string&) const {}

    void operator()(answers::Absent& absent) const { (*this)(absent.reason); }
    void operator()(answers::Quantity& quantity) const { (*this)(quantity.shown); }
    void operator()(answers::Code& code) const { (*this)(code.said); }
    void operator()(answers::Value& value) const { std::visit(*this, value.held); }
    void operator()(answers::Member& member) const {
        (*this)(member.label);
        (*this)(member.value);
    }
    void operator()(scenario::Finding& finding) const {
        (*this)(finding.where);
        (*this)(finding.text);
        (*this)(finding.mend);
        (*this)(finding.source);
    }
    void operator()(answers::PinnedFinding& pinned) const {
        (*this)(pinned.finding);
        (*this)(pinned.when);
    }
    void operator()(answers::WorkingRow& row) const {
        (*this)(row.section);
        (*this)(row.quantity);
        (*this)(row.value);
        (*this)(row.source);
    }
    void operator()(scenario::Assumption& assumption) const {
        (*this)(assumption.named);
        (*this)(assumption.text);
        (*this)(assumption.source);
    }
    void operator()(answers::Caution& caution) const {
        (*this)(caution.hazard);
        (*this)(caution.text);
        (*this)(caution.source);
    }
    void operator()(answers::Column& column) const {
        (*this)(column.heading);
        std::visit(*this, column.points);
    }
    void operator()(answers::Series& series) const {
        (*this)(series.title);
        (*this)(series.columns);
    }
    void operator()(answers::Marker& marker) const { (*this)(marker.label); }
    void operator()(answers::DaysChart& chart) const { (*this)(chart.markers); }
    void operator()(answers::Bar& bar) const {
        (*this)(bar.label);
        (*this)(bar.words);
    }
    void operator()(answers::BarChart& chart) const {
        (*this)(chart.title);
        (*this)(chart.bars);
    }
    void operator()(answers::DayCurves::Curve& curve) const {
        (*this)(curve.label);
        (*this)(curve.words);
    }
    void operator()(answers::DayCurves& curves) const {
        (*this)(curves.title);
        (*this)(curves.curves);
    }
    void operator()(answers::StartBar& bar) const {
        (*this)(bar.label);
        (*this)(bar.shown);
    }
    void operator()(answers::StartChart& chart) const {
        (*this)(chart.words);
        (*this)(chart.bars);
    }
    void operator()(answers::BuildPoint& point) const { (*this)(point.chance_words); }
    void operator()(answers::BuildsView& view) const { (*this)(view.heading); }
    void operator()(answers::BuildsChart& chart) const {
        (*this)(chart.points);
        (*this)(chart.views);
    }
    void operator()(answers::Account::Entry& entry) const {
        (*this)(entry.label);
        (*this)(entry.amount);
    }
    void operator()(answers::Account& account) const {
        (*this)(account.from);
        (*this)(account.to);
    }
    void operator()(answers::DiagramBox& box) const {
        (*this)(box.title);
        (*this)(box.detail);
        (*this)(box.finding);
    }
    void operator()(answers::DiagramLine& line) const { (*this)(line.text); }
    void operator()(answers::WiringDiagram& diagram) const {
        (*this)(diagram.boxes);
        (*this)(diagram.lines);
        (*this)(diagram.description);
    }
};

}  // namespace

answers::Answer spoken(answers::Answer answer, const words::Language& language) {
    return spoken(std::move(answer), Look{.language = language});
}

answers::Answer spoken(answers::Answer answer, const Look& look) {
    const Speak speak{look};
    speak(answer.sentences);
    speak(answer.values);
    speak(answer.findings);
    speak(answer.working);
    speak(answer.assumptions);
    speak(answer.cautions);
    speak(answer.series);
    speak(answer.days);
    speak(answer.wiring);
    speak(answer.closing);
    speak(answer.defect);
    speak(answer.bars);
    speak(answer.curves);
    speak(answer.starts);
    speak(answer.builds);
    speak(answer.account);
    return answer;
}

}  // namespace faces
