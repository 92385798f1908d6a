#include "models/fields/table_entries.hpp"

#include <utility>

#include "models/words/finding_text.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/save.hpp"
#include "scenario/keys/place_of_key.hpp"

namespace touch {

namespace {

using NewEntry = std::vector<scenario::KeyValue>;

bool is_a_list_of_links(const QString& table) {
    return table.endsWith(QLatin1String("links"));
}

// What a new entry begins with; every figure is there to be changed.
NewEntry new_entry(const QString& table, const QString& name) {
    const std::string own = name.toStdString();
    if (table == u"panel") return {{"count", "1"}, {"power", "100 W"}};
    if (table == u"charger") return {{"name", own}, {"kind", "wall"}, {"current", "10 A"}};
    return {{"name", own}, {"links", "[{ fuse = \"10 A\" }]"}};
}

QString new_link(const QString& kind) {
    if (kind == u"switch") return QStringLiteral("{ switch = \"10 A\", rated_for = \"dc\" }");
    if (kind == u"wire") return QStringLiteral("{ wire = \"14 AWG\", length = \"3 ft\" }");
    if (kind == u"connector") return QStringLiteral("{ connector = \"50 A\" }");
    if (kind == u"outlet") return QStringLiteral("{ outlet = \"15 A\" }");
    return QStringLiteral("{ fuse = \"10 A\" }");
}

QString name_of_entry(const scenario::Node& entry, const QString& table, int number) {
    if (const scenario::Node* name = entry.find("name")) return words_of(name->text);
    const std::pair<const char*, QString> kinds[] = {{"fuse", QObject::tr("fuse %1")},
                                                     {"switch", QObject::tr("switch %1")},
                                                     {"wire", QObject::tr("wire %1")},
                                                     {"connector", QObject::tr("connector %1")},
                                                     {"outlet", QObject::tr("outlet %1")}};
    for (const auto& [key, words] : kinds) {
        if (const scenario::Node* rating = entry.find(key))
            return words.arg(words_of(rating->text));
    }
    if (table == u"panel") return QObject::tr("panels %1").arg(number + 1);
    return QString::number(number + 1);
}

units::Result<scenario::Node> list_at(const std::string& text, const QString& list) {
    const auto document = scenario::read_document(text, std::string());
    if (!document) return units::fail(document.error());
    const auto place = scenario::place_of_key(*document, list.toStdString());
    if (!place) return units::fail(place.error());
    const bool in_brackets = place->value && place->value->kind == scenario::Node::Kind::list &&
                             place->value->form != scenario::Node::Form::header;
    if (!in_brackets) {
        return units::fail({.where = list.toStdString(),
                            .found = "this list is not written in square brackets",
                            .remedy = "change it in the file by hand"});
    }
    return *place->value;
}

}  // namespace

units::Result<std::string> with_item(const std::string& text, const QString& list,
                                     const QString& item) {
    const auto node = list_at(text, list);
    if (!node) return units::fail(node.error());
    const bool first = node->items.empty();
    return scenario::changed(text, {.offset = first ? node->begin + 1 : node->items.back().end,
                                    .removed = 0,
                                    .inserted = (first ? "" : ", ") + item.toStdString()});
}

units::Result<std::string> without_item(const std::string& text, const QString& list, int number) {
    const auto node = list_at(text, list);
    if (!node) return units::fail(node.error());
    const auto at = static_cast<std::size_t>(number);
    const auto& items = node->items;
    if (number < 0 || at >= items.size()) return text;
    std::size_t begin = items[at].begin;
    std::size_t end = items[at].end;
    if (at + 1 < items.size()) {
        end = items[at + 1].begin;
    } else if (at > 0) {
        begin = items[at - 1].end;
    }
    return scenario::changed(text, {.offset = begin, .removed = end - begin, .inserted = ""});
}

int TableEntries::add(const QString& kind) {
    if (!document_) return -1;
    QString name = tr("another");
    for (int number = 2; names_.contains(name); ++number)
        name = tr("another %1").arg(number);
    const bool added = change([this, &kind, &name](const std::string& text) {
        return is_a_list_of_links(table_)
                   ? with_item(text, table_, new_link(kind))
                   : scenario::with_table(text, table_.toStdString(), new_entry(table_, name));
    });
    return added ? count() - 1 : -1;
}

bool TableEntries::remove(int number) {
    if (!document_ || number < 0 || number >= count()) return false;
    return change([this, number](const std::string& text) {
        return is_a_list_of_links(table_)
                   ? without_item(text, table_, number)
                   : scenario::without_table(
                         text, QStringLiteral("%1[%2]").arg(table_).arg(number).toStdString());
    });
}

bool TableEntries::change(const ScenarioDocument::Edit& edit) {
    const QString trouble = document_->change(edit);
    if (std::exchange(trouble_, trouble) != trouble) emit troubleChanged();
    return trouble.isEmpty();
}

void TableEntries::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &TableEntries::read);
    emit askedChanged();
    read();
}

void TableEntries::set_table(const QString& table) {
    if (std::exchange(table_, table) == table) return;
    trouble_.clear();
    emit troubleChanged();
    emit askedChanged();
    read();
}

void TableEntries::read() {
    if (!document_ || table_.isEmpty()) return;
    const auto document = scenario::read_document(document_->text().toStdString(), std::string());
    if (!document) return;  // the names stay as they were until the text can be read again
    QStringList names;
    const auto place = scenario::place_of_key(*document, table_.toStdString());
    if (place && place->value) {
        for (const scenario::Node& item : place->value->items)
            names << name_of_entry(item, table_, static_cast<int>(names.size()));
    }
    if (std::exchange(names_, names) != names) emit namesChanged();
}

}  // namespace touch
