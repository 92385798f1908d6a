#include "bus/heard.hpp"

#include <QDBusVariant>

namespace bus_tests {

Heard::Heard(const Reader& reader) {
    for (const char* wanted :
         {"object:state-changed", "object:property-change",
          "object:property-change:accessible-value", "object:announcement", "object:text-changed"})
        reader.wants(QString::fromLatin1(wanted));
    for (const char* kind : {"PropertyChange", "StateChanged", "Announcement", "TextChanged"})
        reader.bus().connect(QString(), QString(), QStringLiteral("org.a11y.atspi.Event.Object"),
                             QString::fromLatin1(kind), this, SLOT(hear(QDBusMessage)));
}

void Heard::hear(const QDBusMessage& told) {
    const QVariantList words = told.arguments();
    if (words.size() < 4) return;
    const QVariant said = words[3].value<QDBusVariant>().variant();
    events_.append({told.member(),
                    words[0].toString(),
                    words[1].toInt(),
                    said.typeId() == QMetaType::QString ? said.toString() : QString(),
                    {told.service(), told.path()}});
}

}  // namespace bus_tests
