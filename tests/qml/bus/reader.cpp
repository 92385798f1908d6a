#include "bus/reader.hpp"

#include <QDBusArgument>
#include <QDBusMessage>

namespace bus_tests {

namespace {

const QString connection_name = QStringLiteral("reader");
const QString accessible = QStringLiteral("org.a11y.atspi.Accessible");
const QString action_of = QStringLiteral("org.a11y.atspi.Action");
const QString value_of = QStringLiteral("org.a11y.atspi.Value");
const QString text_in = QStringLiteral("org.a11y.atspi.Text");

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

}  // namespace

Reader::Reader(const QString& address)
    : bus_(QDBusConnection::connectToBus(address, connection_name)) {}

Reader::~Reader() {
    QDBusConnection::disconnectFromBus(connection_name);
}

QVariantList Reader::call(const Item& item, const QString& interface, const QString& method,
                          const QVariantList& with) const {
    auto question = QDBusMessage::createMethodCall(item.program, item.path, interface, method);
    question.setArguments(with);
    const QDBusMessage answer = bus_.call(question, QDBus::Block, patience);
    return answer.type() == QDBusMessage::ReplyMessage ? answer.arguments() : QVariantList();
}

QVariant Reader::property(const Item& item, const QString& interface, const QString& name) const {
    const QVariantList answer = call(item, QStringLiteral("org.freedesktop.DBus.Properties"),
                                     QStringLiteral("Get"), {interface, name});
    return answer.isEmpty() ? QVariant() : answer.constFirst().value<QDBusVariant>().variant();
}

void Reader::wants(const QString& event) const {
    (void)call({registry.program, QStringLiteral("/org/a11y/atspi/registry")},
               QStringLiteral("org.a11y.atspi.Registry"), QStringLiteral("RegisterEvent"), {event});
}

QList<Item> Reader::programs() const {
    return children(registry);
}

QList<Item> Reader::children(const Item& item) const {
    QList<Item> below;
    for (const QVariant& answer : call(item, accessible, QStringLiteral("GetChildren")))
        for_each_structure(answer, [&below](const QDBusArgument& argument) {
            Item child;
            QDBusObjectPath path;
            argument >> child.program >> path;
            child.path = path.path();
            below << child;
        });
    return below;
}

QStringList Reader::actions(const Item& item) const {
    QStringList names;
    for (const QVariant& answer : call(item, action_of, QStringLiteral("GetActions")))
        for_each_structure(answer, [&names](const QDBusArgument& argument) {
            QString name;
            QString meaning;
            QString keys;
            argument >> name >> meaning >> keys;
            names << name;
        });
    return names;
}

Told Reader::read_alone(const Item& item) const {
    Told told;
    told.item = item;
    const QVariantList role = call(item, accessible, QStringLiteral("GetRole"));
    if (!role.isEmpty()) told.role = static_cast<Role>(role.constFirst().toUInt());
    told.name = property(item, accessible, QStringLiteral("Name")).toString();
    told.description = property(item, accessible, QStringLiteral("Description")).toString();
    const QVariantList states = call(item, accessible, QStringLiteral("GetState"));
    if (!states.isEmpty()) {
        const auto words = qdbus_cast<QList<uint>>(states.constFirst());
        if (words.size() == 2) told.states = quint64{words[1]} << 32U | words[0];
    }
    const QVariantList faces = call(item, accessible, QStringLiteral("GetInterfaces"));
    if (!faces.isEmpty()) told.interfaces = faces.constFirst().toStringList();
    if (told.interfaces.contains(action_of)) told.actions = actions(item);
    if (told.interfaces.contains(value_of)) {
        const auto number = [&](const char* name) {
            return property(item, value_of, QString::fromLatin1(name)).toDouble();
        };
        told.value = Value{number("CurrentValue"), number("MinimumValue"), number("MaximumValue"),
                           number("MinimumIncrement")};
    }
    return told;
}

// What does not show is not read, nor what lies below it.
Told Reader::read(const Item& item) const {
    Told told = read_alone(item);
    for (const Item& child : children(item)) {
        Told part = read(child);
        if (part.is(State::showing)) told.parts << part;
    }
    return told;
}

bool Reader::act(const Item& item, const QString& action) const {
    const auto number = actions(item).indexOf(action);
    if (number < 0) return false;
    const QVariantList done =
        call(item, action_of, QStringLiteral("DoAction"), {static_cast<int>(number)});
    return !done.isEmpty() && done.constFirst().toBool();
}

void Reader::set_value(const Item& item, double value) const {
    (void)call(
        item, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Set"),
        {value_of, QStringLiteral("CurrentValue"), QVariant::fromValue(QDBusVariant(value))});
}

void Reader::set_text(const Item& item, const QString& text) const {
    (void)call(item, QStringLiteral("org.a11y.atspi.EditableText"),
               QStringLiteral("SetTextContents"), {text});
}

QString Reader::text_of(const Item& item) const {
    const QVariantList text = call(item, text_in, QStringLiteral("GetText"), {0, -1});
    return text.isEmpty() ? QString() : text.constFirst().toString();
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
