#include "models/fields/fields_of_build.hpp"

#include "models/words/finding_text.hpp"
#include "models/words/told.hpp"

namespace touch {

using namespace making;

namespace {

QStringList names_of(const scenario::Node* document, const char* table) {
    QStringList names;
    const scenario::Node* list = document ? document->find(table) : nullptr;
    if (!list) return names;
    for (const scenario::Node& item : list->items) {
        if (const scenario::Node* name = item.find("name")) names << words_of(name->text);
    }
    return names;
}

// What a circuit may feed: all that has a name, and the parts there is one of.
QStringList fed_by_circuits(const scenario::Node* document) {
    QStringList names =
        names_of(document, "load") + names_of(document, "pack") + names_of(document, "charger");
    for (const char* one : {"inverter", "charge_controller"}) {
        if (document && document->find(one)) names << QLatin1String(one);
    }
    if (document && document->find("panel")) names << QStringLiteral("panels");
    return names;
}

// Of what the file names by the word of a table people read the word for the part.
Field feeds_of(const Table& circuit, const QString& key) {
    Field field = several(circuit, key, fed_by_circuits(circuit.document));
    for (FieldOption& option : field.options)
        if (option.value == u"charge_controller")
            option.label = told(words::said<"charge controller">());
    return field;
}

}  // namespace

QList<Field> circuit_fields(const Table& circuit) {
    const QString feeds = QStringLiteral("feeds");
    return fields_in(circuit, {QStringLiteral("name"), feeds},
                     {{feeds, feeds_of(circuit, feeds)}});
}

QList<Field> link_fields(const Table& link) {
    if (link.kind().isEmpty()) return {};
    QList<Field> fields = fields_in(link);
    // The length of a wire is told one way or out and back.
    const bool there_and_back = link.has(QStringLiteral("round_trip"));
    for (Field& field : fields) {
        if (field.key == link.key(QStringLiteral("length"))) field.hidden = there_and_back;
        if (field.key == link.key(QStringLiteral("round_trip"))) field.hidden = !there_and_back;
    }
    return fields;
}

QList<Field> place_fields(const Table& place) {
    return fields_in(place) + months_of(place, QStringLiteral("irradiation")) +
           months_of(place, QStringLiteral("temperature"));
}

}  // namespace touch
