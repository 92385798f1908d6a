#include "bus/reader.hpp"

#include <QDBusArgument>
#include <QDBusMessage>

namespace bus_tests {

namespace {

const QString connection_name = QStringLiteral("reader");
const QString accessible = QStringLiteral("org.a11y.atspi.Accessible");
const QString action_of = QStringLiteral("org.a11y.atspi.Action");
const QString value_of = QStringLiteral("org.a11y.atspi.Value");
const QString component_of = QStringLiteral("org.a11y.atspi.Component");

const Item registry{QStringLiteral("org.a11y.atspi.Registry"),
                    QStringLiteral("/org/a11y/atspi/accessible/root")};

// One answer waits at most this long: a program that works hard answers late.
constexpr int patience = 30'000;  // ms

template <typename Each>
void for_each_structure(const QVariant& list, Each each) {
    const auto argument = list.value<QDBusArgument>();
    if (argument.currentType() != QDBusArgument::ArrayType) return;
    argument.beginArray();
    while (!argument.atEnd()) {
        argument.beginStructure();
        each(argument);
        argument.endStructure();
    }
    argument.endArray();
}

// What came back; nothing when it was refused or nobody is there any more.
QVariantList answer_to(QDBusPendingCall question) {
    question.waitForFinished();
    const QDBusMessage answer = question.reply();
    return answer.type() == QDBusMessage::ReplyMessage ? answer.arguments() : QVariantList();
}

QVariant property_of(const QVariantList& answer) {
    return answer.isEmpty() ? QVariant() : answer.constFirst().value<QDBusVariant>().variant();
}

QList<Item> items_of(const QVariantList& answers) {
    QList<Item> items;
    for (const QVariant& answer : answers)
        for_each_structure(answer, [&items](const QDBusArgument& argument) {
            Item item;
            QDBusObjectPath path;
            argument >> item.program >> path;
            item.path = path.path();
            items << item;
        });
    return items;
}

QStringList actions_of(const QVariantList& answers) {
    QStringList names;
    for (const QVariant& answer : answers)
        for_each_structure(answer, [&names](const QDBusArgument& argument) {
            QString name;
            QString meaning;
            QString keys;
            argument >> name >> meaning >> keys;
            names << name;
        });
    return names;
}

QRect place_of(const QVariantList& answer) {
    return answer.isEmpty() ? QRect() : qdbus_cast<QRect>(answer.constFirst());
}

}  // namespace

Reader::Reader(const QString& address)
    : bus_(QDBusConnection::connectToBus(address, connection_name)) {}

Reader::~Reader() {
    QDBusConnection::disconnectFromBus(connection_name);
}

QDBusPendingCall Reader::ask(const Item& item, const QString& interface, const QString& method,
                             const QVariantList& with) const {
    auto question = QDBusMessage::createMethodCall(item.program, item.path, interface, method);
    question.setArguments(with);
    return bus_.asyncCall(question, patience);
}

QDBusPendingCall Reader::ask_property(const Item& item, const QString& interface,
                                      const QString& name) const {
    return ask(item, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Get"),
               {interface, name});
}

void Reader::wants(const QString& event) const {
    (void)answer_to(ask({registry.program, QStringLiteral("/org/a11y/atspi/registry")},
                        QStringLiteral("org.a11y.atspi.Registry"), QStringLiteral("RegisterEvent"),
                        {event}));
}

QList<Item> Reader::programs() const {
    return children(registry);
}

QList<Item> Reader::children(const Item& item) const {
    return items_of(answer_to(ask(item, accessible, QStringLiteral("GetChildren"))));
}

// All items are asked at once, and what only some can tell once it is known which: one question
// after the other would take most of its time on the way.
QList<Told> Reader::read_alone(const QList<Item>& items) const {
    struct First {
        QDBusPendingCall role, name, description, states, faces;
    };
    QList<First> first;
    for (const Item& item : items)
        first.append({ask(item, accessible, QStringLiteral("GetRole")),
                      ask_property(item, accessible, QStringLiteral("Name")),
                      ask_property(item, accessible, QStringLiteral("Description")),
                      ask(item, accessible, QStringLiteral("GetState")),
                      ask(item, accessible, QStringLiteral("GetInterfaces"))});
    QList<Told> all;
    for (qsizetype at = 0; at < items.size(); ++at) {
        Told told;
        told.item = items[at];
        const QVariantList role = answer_to(first[at].role);
        if (!role.isEmpty()) told.role = static_cast<Role>(role.constFirst().toUInt());
        told.name = property_of(answer_to(first[at].name)).toString();
        told.description = property_of(answer_to(first[at].description)).toString();
        const QVariantList states = answer_to(first[at].states);
        if (!states.isEmpty()) {
            const auto words = qdbus_cast<QList<uint>>(states.constFirst());
            if (words.size() == 2) told.states = quint64{words[1]} << 32U | words[0];
        }
        const QVariantList faces = answer_to(first[at].faces);
        if (!faces.isEmpty()) told.interfaces = faces.constFirst().toStringList();
        all << told;
    }
    struct Then {
        std::optional<QDBusPendingCall> place, actions;
        QList<QDBusPendingCall> value;
    };
    QList<Then> then;
    for (const Told& told : all) {
        Then more;
        if (told.interfaces.contains(component_of))
            more.place = ask(told.item, component_of, QStringLiteral("GetExtents"), {0U});
        if (told.interfaces.contains(action_of))
            more.actions = ask(told.item, action_of, QStringLiteral("GetActions"));
        if (told.interfaces.contains(value_of))
            for (const char* name :
                 {"CurrentValue", "MinimumValue", "MaximumValue", "MinimumIncrement"})
                more.value << ask_property(told.item, value_of, QString::fromLatin1(name));
        then << more;
    }
    for (qsizetype at = 0; at < all.size(); ++at) {
        if (then[at].place) all[at].place = place_of(answer_to(*then[at].place));
        if (then[at].actions) all[at].actions = actions_of(answer_to(*then[at].actions));
        if (then[at].value.isEmpty()) continue;
        const auto number = [&](qsizetype which) {
            return property_of(answer_to(then[at].value[which])).toDouble();
        };
        all[at].value = Value{number(0), number(1), number(2), number(3)};
    }
    return all;
}

Told Reader::read_alone(const Item& item) const {
    return read_alone(QList<Item>{item}).constFirst();
}

QList<Told> Reader::below(const Item& item) const {
    QList<Told> parts;
    for (const Told& part : read_alone(children(item)))
        if (!part.place.isEmpty()) parts << part;
    for (Told& part : parts)
        part.parts = below(part.item);
    return parts;
}

Told Reader::read(const Item& item) const {
    Told told = read_alone(item);
    told.parts = below(item);
    return told;
}

bool Reader::act(const Item& item, const QString& action) const {
    const auto number =
        actions_of(answer_to(ask(item, action_of, QStringLiteral("GetActions")))).indexOf(action);
    if (number < 0) return false;
    const QVariantList done =
        answer_to(ask(item, action_of, QStringLiteral("DoAction"), {static_cast<int>(number)}));
    return !done.isEmpty() && done.constFirst().toBool();
}

bool Reader::set_value(const Item& item, double value) const {
    QDBusPendingCall set =
        ask(item, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Set"),
            {value_of, QStringLiteral("CurrentValue"), QVariant::fromValue(QDBusVariant(value))});
    set.waitForFinished();
    return !set.isError();
}

QList<Told> all(const Told& tree, const std::function<bool(const Told&)>& holds) {
    QList<Told> found;
    if (holds(tree)) found << tree;
    for (const Told& part : tree.parts)
        found << all(part, holds);
    return found;
}

std::optional<Told> found(const Told& tree, Role role, const QString& name) {
    const QList<Told> holding =
        all(tree, [&](const Told& one) { return one.role == role && one.name.contains(name); });
    for (const Told& one : holding)
        if (one.name == name) return one;
    return holding.isEmpty() ? std::nullopt : std::optional(holding.constFirst());
}

}  // namespace bus_tests
