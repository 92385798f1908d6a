#include "bus/wrong.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <QRegularExpression>
#include <QSet>

namespace bus_tests {

namespace {

// What holds others together and is not read out itself may go without a name.
constexpr std::array nameless{Role::filler, Role::panel, Role::list, Role::scroll_pane};
// That hold others: their names are told of what lies in them and not by themselves.
constexpr std::array held{Role::filler, Role::panel,         Role::list,  Role::scroll_pane,
                          Role::frame,  Role::page_tab_list, Role::table, Role::dialog};
// That a person acts on.
constexpr std::array controls{Role::push_button, Role::radio_button, Role::check_box,
                              Role::spin_button, Role::slider,       Role::page_tab,
                              Role::text};
// Roles that this program has a use for.
constexpr std::array used{
    Role::alert,        Role::check_box,   Role::dialog,       Role::filler,
    Role::frame,        Role::image,       Role::label,        Role::list,
    Role::list_item,    Role::page_tab,    Role::panel,        Role::page_tab_list,
    Role::progress_bar, Role::push_button, Role::radio_button, Role::slider,
    Role::spin_button,  Role::table,       Role::table_cell,   Role::table_row,
    Role::text,         Role::chart,       Role::heading,      Role::column_header,
    Role::row_header,   Role::scroll_bar,  Role::notification};

template <std::size_t size>
bool is_one_of(const std::array<Role, size>& roles, Role role) {
    return std::ranges::find(roles, role) != roles.end();
}

QString action_wanted(Role role) {
    switch (role) {
        case Role::push_button:
        case Role::page_tab:
            return QStringLiteral("Press");
        case Role::radio_button:
        case Role::check_box:
            return QStringLiteral("Toggle");
        case Role::spin_button:
        case Role::slider:
            return QStringLiteral("Increase");
        default:
            return {};
    }
}

void look_at_states(const Told& told, QStringList& wrong) {
    const bool available = !told.description.contains(QStringLiteral("not available"));
    if (!told.is(State::focusable) && available)
        wrong << QStringLiteral("cannot be given the keyboard");
    if (told.is(State::sensitive) != available || told.is(State::enabled) != available)
        wrong << (available ? QStringLiteral("tells that it is not available")
                            : QStringLiteral("tells that it is available"));
    if (told.role == Role::text && !told.is(State::editable))
        wrong << QStringLiteral("is not editable");
    if ((told.role == Role::page_tab || told.is(State::selected)) && !told.is(State::selectable))
        wrong << QStringLiteral("is not selectable");
    const QString action = action_wanted(told.role);
    if (available && !action.isEmpty() && !told.actions.contains(action))
        wrong << QStringLiteral("lacks the action ") + action;
}

// A number that is turned lies within its ends and has a step.
void look_at_value(const Told& told, QStringList& wrong) {
    if (!told.value) {
        wrong << QStringLiteral("has no value");
        return;
    }
    const auto [current, least, most, step] = *told.value;
    const bool in_order = least < most && least <= current && current <= most;
    if (!in_order || (step <= 0 && told.role != Role::progress_bar))
        wrong << QStringLiteral("has the value %1 of %2 to %3 by %4")
                     .arg(current)
                     .arg(least)
                     .arg(most)
                     .arg(step);
}

// As a program names its parts: page_days, addLoad.
bool is_name_of_code(const QString& name) {
    static const QRegularExpression code(QStringLiteral("^[a-z]{2,}([A-Z_][A-Za-z0-9]+)+$"));
    return code.match(name).hasMatch();
}

// A sign that is drawn for the eye and read out as its own name or not at all.
bool has_drawn_sign(const QString& name) {
    static const QRegularExpression sign(QStringLiteral("[▸▾▴◀▶✕☰↶↷]"));
    return sign.match(name).hasMatch();
}

// As it stands beside a figure for the eye; read out letter by letter or not at all.
bool is_sign_of_unit(const QString& name) {
    static const QRegularExpression unit(
        QStringLiteral("^(%|°[CF]?|deg[CF]?|[mkM]?(V|A|W|VA|Wh|Ah|Ω|Ohm)|kWh/(yr|m2|m²)|kg|lb|hp|cm|ft|"
                       "min|m|s|h|d)$"));
    return unit.match(name).hasMatch();
}

void look_at_name(const Told& told, QStringList& wrong) {
    const QString name = told.name.trimmed();
    static const QRegularExpression word(QStringLiteral("[\\p{L}\\p{N}]"));
    if (name.isEmpty() && !is_one_of(nameless, told.role)) wrong << QStringLiteral("has no name");
    if (name.isEmpty() && told.is(State::focusable))
        wrong << QStringLiteral("takes the keyboard without a name");
    if (!name.isEmpty() && !word.match(name).hasMatch())
        wrong << QStringLiteral("has a name without a word");
    if (is_one_of(controls, told.role) && is_sign_of_unit(name))
        wrong << QStringLiteral("has the sign of a unit for a name");
    if (has_drawn_sign(name)) wrong << QStringLiteral("has a name with a sign that is drawn");
    if (name.contains(QStringLiteral("undefined")) || name.contains(QStringLiteral("NaN")) ||
        name.contains(QStringLiteral("[object")) || is_name_of_code(name))
        wrong << QStringLiteral("has a name that a program made up");
    // Qt describes every window by its name.
    if (!name.isEmpty() && name == told.description && told.role != Role::frame)
        wrong << QStringLiteral("is described by its name, which is read out twice");
}

QStringList wrong_alone(const Told& told) {
    QStringList wrong;
    if (!is_one_of(used, told.role)) wrong << QStringLiteral("has a role that nothing here has");
    look_at_name(told, wrong);
    if (is_one_of(controls, told.role)) look_at_states(told, wrong);
    if (told.role == Role::spin_button || told.role == Role::slider ||
        told.role == Role::progress_bar || told.role == Role::scroll_bar)
        look_at_value(told, wrong);
    // What can be pressed is a thing to press.
    if (told.actions.contains(QStringLiteral("Press")) && told.role == Role::label)
        wrong << QStringLiteral("is a label that can be pressed");
    return wrong;
}

// The buttons of a spin button offer what its value and its ends allow, and its words say its
// value.
QStringList wrong_of_turned(const Told& told) {
    if (told.role != Role::spin_button || !told.value) return {};
    QStringList wrong;
    const auto [current, least, most, step] = *told.value;
    for (const Told& part : told.parts) {
        const bool less = part.name.startsWith(QStringLiteral("Less: "));
        const bool more = part.name.startsWith(QStringLiteral("More: "));
        if ((less && part.is(State::sensitive) != (current > least)) ||
            (more && part.is(State::sensitive) != (current < most)))
            wrong << part.name + QStringLiteral(" does not fit the value");
    }
    bool is_number = false;
    const double shown = QString(told.description).remove(u'°').toDouble(&is_number);
    if (is_number && shown != current)
        wrong << QStringLiteral("shows %1 and tells %2").arg(shown).arg(current);
    return wrong;
}

// Of radio buttons beside each other one at most is checked; of pages exactly one is open.
QStringList wrong_together(const Told& told) {
    const auto count_of = [&told](Role role, State state) {
        return std::ranges::count_if(
            told.parts, [&](const Told& one) { return one.role == role && one.is(state); });
    };
    QStringList wrong;
    if (count_of(Role::radio_button, State::checked) > 1)
        wrong << QStringLiteral("has several radio buttons checked");
    if (told.role == Role::page_tab_list && all(told, [](const Told& one) {
                                                return one.role == Role::page_tab &&
                                                       one.is(State::selected);
                                            }).size() != 1)
        wrong << QStringLiteral("has not one page open");
    const bool table_has_rows = std::ranges::any_of(told.parts, [](const Told& one) {
        return one.role == Role::table_row || one.role == Role::table_cell;
    });
    if (told.role == Role::table && !table_has_rows)
        wrong << QStringLiteral("is a table without cells");
    return wrong;
}

QString named(const Told& told) {
    return QStringLiteral("role %1 \"%2\"").arg(static_cast<unsigned>(told.role)).arg(told.name);
}

// Whoever hears two things of the same role and name beside each other cannot tell them apart.
QStringList wrong_of_twins(const Told& told) {
    QSet<QString> met;
    QStringList wrong;
    for (const Told& part : told.parts) {
        if (!is_one_of(controls, part.role)) continue;
        if (met.contains(named(part)))
            wrong << QStringLiteral("holds more than one ") + named(part);
        met.insert(named(part));
    }
    return wrong;
}

void read_through(const Told& tree, QList<Told>& order) {
    if (!is_one_of(held, tree.role) && !tree.name.isEmpty()) {
        order << tree;
        order.last().parts.clear();
    }
    for (const Told& part : tree.parts)
        read_through(part, order);
}

// Words that follow upon themselves as the window is read through.
QStringList wrong_in_order(const Told& tree) {
    QList<Told> order;
    read_through(tree, order);
    QStringList wrong;
    for (qsizetype at = 1; at < order.size(); ++at)
        if (order[at].name == order[at - 1].name)
            wrong << named(order[at]) + QStringLiteral(" is read out twice");
    return wrong;
}

QStringList wrong_of_each(const Told& tree) {
    QStringList lines;
    for (const QString& wrong :
         wrong_alone(tree) + wrong_together(tree) + wrong_of_turned(tree) + wrong_of_twins(tree))
        lines << named(tree) + QStringLiteral(" ") + wrong;
    for (const Told& part : tree.parts)
        lines << wrong_of_each(part);
    return lines;
}

}  // namespace

qsizetype count(const Told& tree) {
    qsizetype items = 1;
    for (const Told& part : tree.parts)
        items += count(part);
    return items;
}

QStringList wrong_of(const Told& tree) {
    return wrong_of_each(tree) + wrong_in_order(tree);
}

QString drawn(const Told& tree, int depth) {
    QString line = QString(2 * depth, QLatin1Char(' ')) + named(tree);
    if (!tree.description.isEmpty()) line += QStringLiteral(" (") + tree.description + u')';
    for (const auto& [state, word] :
         {std::pair(State::checked, "checked"), std::pair(State::focusable, "focusable"),
          std::pair(State::focused, "focused"), std::pair(State::selected, "selected"),
          std::pair(State::sensitive, "sensitive"), std::pair(State::editable, "editable"),
          std::pair(State::showing, "in sight")})
        if (tree.is(state)) line += QLatin1Char(' ') + QString::fromLatin1(word);
    if (tree.value)
        line += QStringLiteral(" %1 [%2, %3] by %4")
                    .arg(tree.value->current)
                    .arg(tree.value->least)
                    .arg(tree.value->most)
                    .arg(tree.value->step);
    if (!tree.actions.isEmpty()) line += QStringLiteral(" <") + tree.actions.join(u',') + u'>';
    line += QLatin1Char('\n');
    for (const Told& part : tree.parts)
        line += drawn(part, depth + 1);
    return line;
}

}  // namespace bus_tests
