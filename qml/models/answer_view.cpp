#include "models/answer_view.hpp"

#include <algorithm>
#include <utility>

#include <QObject>

#include "answers/exhibits.hpp"
#include "models/words/shown_amount.hpp"

namespace touch {

namespace {

QString label_of(const answers::Member& member) {
    if (!member.label.empty()) return words_of(member.label);
    return words_of(member.key).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString joined(const QString& outer, const QString& inner) {
    return outer.isEmpty() ? inner : QStringLiteral("%1, %2").arg(outer, inner);
}

QString name_in(const answers::Members& members) {
    for (const answers::Member& member : members) {
        const auto* name = std::get_if<std::string>(&member.value.held);
        if (name && member.key == "name") return words_of(*name);
    }
    return {};
}

class Rows {
  public:
    QList<RowText> rows;

    void add(const QString& section, const QString& label, const answers::Value& value) {
        std::visit([&](const auto& held) { add_held(section, label, held); }, value.held);
    }
    void add_all(const QString& section, const answers::Members& members) {
        for (const answers::Member& member : members)
            if (!answers::is_for_programs(member)) add(section, label_of(member), member.value);
    }

  private:
    void row(const QString& section, const QString& label, const QString& value,
             const QString& detail = {}) {
        rows.append({.section = section, .label = label, .value = value, .detail = detail});
    }
    void add_held(const QString& section, const QString& label, const answers::Absent& absent) {
        row(section, label, QStringLiteral("–"), told(absent.reason));
    }
    void add_held(const QString& section, const QString& label, bool yes) {
        row(section, label, told(yes ? words::said<"yes">() : words::said<"no">()));
    }
    void add_held(const QString& section, const QString& label, std::int64_t number) {
        row(section, label, QString::number(number));
    }
    void add_held(const QString& section, const QString& label, const answers::Quantity& quantity) {
        row(section, label, told(quantity.shown));
    }
    void add_held(const QString& section, const QString& label, const answers::Code& code) {
        row(section, label, told(code.said));
    }
    void add_held(const QString& section, const QString& label, const words::Said& said) {
        row(section, label, told(said));
    }
    void add_held(const QString& section, const QString& label, const std::string& words) {
        row(section, label, words_of(words));
    }
    void add_held(const QString& section, const QString& label, const answers::Members& members) {
        add_all(joined(section, label), members);
    }
    void add_held(const QString& section, const QString& label, const answers::List& list) {
        int number = 0;
        for (const answers::Value& item : list) {
            ++number;
            if (const auto* members = std::get_if<answers::Members>(&item.held)) {
                const QString name = name_in(*members);
                add_all(
                    joined(section,
                           name.isEmpty() ? QStringLiteral("%1 %2").arg(label).arg(number) : name),
                    *members);
            } else {
                add(section, QStringLiteral("%1 %2").arg(label).arg(number), item);
            }
        }
    }
};

QString heading_of(const answers::Column& column) {
    const QString heading =
        column.heading.empty() ? words_of(column.name) : words_of(column.heading);
    if (column.unit.empty() || column.unit == "1") return heading;
    // UCUM writes a dot between units and Cel for degrees; people do not.
    QString unit = words_of(column.unit).remove(QLatin1Char('.'));
    if (unit == u"Cel") unit = QStringLiteral("°C");
    return QStringLiteral("%1 (%2)").arg(heading, unit);
}

QString cell_of(const answers::Column& column, std::size_t row) {
    if (const words::Said* said_one = answers::words_at(column, row)) return told(*said_one);
    const auto* numbers = std::get_if<std::vector<double>>(&column.points);
    return numbers != nullptr && row < numbers->size() ? shown_number((*numbers)[row]) : QString();
}

// One overload a kind of exhibit. Pictures stand on the pages that have room for them, which draw
// them from the answer itself.
struct Listed {
    AnswerView& view;

    void operator()(const answers::DaysChart*) const {}   // DaysView
    void operator()(const answers::BuildsView*) const {}  // BuildsPlot
    void operator()(const answers::BarChart*) const {}    // RangeBars, from its table
    void operator()(const answers::DayCurves*) const {}   // Curve, from its table
    void operator()(const answers::StartChart*) const {}  // RangeBars and Curve, from their tables
    void operator()(const answers::WiringDiagram*) const {}  // WiringPicture
    void operator()(const answers::Account*) const {}        // DaysView, hour by hour
    void operator()(const answers::Series* one) const { view.tables.append(table_of(*one)); }
};

}  // namespace

QList<RowText> figures_of(const answers::Members& members) {
    Rows rows;
    rows.add_all({}, members);
    return rows.rows;
}

QList<RowText> working_of(const answers::Answer& answer) {
    QList<RowText> rows;
    for (const answers::WorkingRow& step : answer.working) {
        QStringList detail{words_of(step.formula), words_of(step.source)};
        detail.removeAll(QString());
        rows.append({.section = words_of(step.section),
                     .label = words_of(step.quantity),
                     .value = told(step.value.shown),
                     .detail = detail.join(QStringLiteral(" · "))});
    }
    return rows;
}

TableText table_of(const answers::Series& series) {
    TableText table{
        .name = words_of(series.name), .title = words_of(series.title), .headings = {}, .rows = {}};
    std::size_t length = 0;
    for (const answers::Column& column : series.columns) {
        table.headings << heading_of(column);
        length = std::max(
            length, std::visit([](const auto& points) { return points.size(); }, column.points));
    }
    for (std::size_t row = 0; row < length; ++row) {
        QStringList cells;
        for (const answers::Column& column : series.columns)
            cells << cell_of(column, row);
        table.rows.append(std::move(cells));
    }
    return table;
}

AnswerView answer_view_of(answers::Answer answer, const units::Errors& warnings) {
    AnswerView view;
    view.answered = true;
    QStringList sentences;
    for (const words::Said& sentence : answer.sentences)
        sentences << told(sentence);
    if (!sentences.isEmpty()) view.sentence = sentences.takeFirst();
    view.rest = sentences.join(QLatin1Char(' '));
    view.findings = defect_texts(answer);
    for (const answers::PinnedFinding& pinned : answer.findings)
        view.findings.append(finding_text(pinned.finding));
    view.findings += error_texts(warnings, scenario::Severity::note);
    view.cautions = caution_texts(answer);
    view.assumptions = assumption_texts(answer);
    view.figures = figures_of(answer.values);
    view.working = working_of(answer);
    for (const answers::Exhibit& exhibit : answers::exhibits_of(answer))
        std::visit(Listed{view}, exhibit);
    view.closing = told(answer.closing);
    view.answer = std::make_shared<const answers::Answer>(std::move(answer));
    return view;
}

AnswerView no_answer(const units::Errors& errors) {
    AnswerView view;
    view.sentence = QObject::tr("This cannot be answered yet.");
    view.rest = QObject::tr("What stands in the way is listed below.");
    view.findings = error_texts(errors, scenario::Severity::stop);
    return view;
}

}  // namespace touch
