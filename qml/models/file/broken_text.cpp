#include "models/file/broken_text.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include <QMultiMap>

#include "models/words/finding_text.hpp"
#include "models/words/told.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/read.hpp"
#include "scenario/keys/place_of_key.hpp"

namespace touch {

namespace {

// The value that a key has in a text, without its quotes; nothing where it has no single value.
std::optional<QString> value_in(const std::string& text, const std::string& key) {
    const auto document = scenario::read_document(text, std::string());
    if (!document || key.empty()) return std::nullopt;
    const auto place = scenario::place_of_key(*document, key);
    if (!place) return std::nullopt;
    if (place->value == nullptr)
        return place->absent.size() == 1 &&
                       place->passed.back().node->kind == scenario::Node::Kind::table
                   ? std::optional(QString())
                   : std::nullopt;
    using NodeKind = scenario::Node::Kind;
    if (place->value->kind == NodeKind::table || place->value->kind == NodeKind::list)
        return std::nullopt;
    return QString::fromStdString(place->value->text);
}

// How a line begins that gives a key which nothing gives yet.
QString beginning_of(const std::string& key) {
    static const QStringList lists{"pack", "panel", "load", "circuit"};
    static const QStringList tables{"outage", "place", "inverter", "charge_controller"};
    const QString table = QString::fromStdString(key.substr(0, key.find_first_of(".[")));
    if (lists.contains(table)) return QStringLiteral("[[%1]]").arg(table);
    if (tables.contains(table)) return QStringLiteral("[%1]").arg(table);
    return table.isEmpty() ? QString() : table + QStringLiteral(" = ");
}

}  // namespace

void BrokenText::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &BrokenText::look);
    look();
}

void BrokenText::set_whole(bool whole) {
    whole_ = whole;
    put_rows();
}

void BrokenText::look() {
    lines_.clear();
    errors_.clear();
    if (document_ && document_->broken()) {
        const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
        if (!read) errors_ = read.error();
        if (errors_.size() > most_errors) errors_.resize(most_errors);
        lines_ = document_->text().split(QLatin1Char('\n'));
    }
    put_rows();
}

void BrokenText::put_rows() {
    beginResetModel();
    rows_.clear();
    QMultiMap<int, int> on_line;
    for (int number = 0; number < errors(); ++number) {
        const int line = errors_[static_cast<std::size_t>(number)].line;
        if (line < 1 || line > lines_.size())
            rows_.append({.kind = Row::Kind::error, .line = 0, .number = number});
        else
            on_line.insert(line, number);
    }
    const auto is_near = [&](int line) {
        const auto next = on_line.lowerBound(line - around);
        return next != on_line.end() && next.key() <= line + around;
    };
    for (int line = 1; line <= lines_.size(); ++line) {
        if (!whole_ && !is_near(line)) {
            if (rows_.isEmpty() || rows_.back().kind != Row::Kind::gap)
                rows_.append({.kind = Row::Kind::gap, .line = line});
            continue;
        }
        rows_.append({.kind = Row::Kind::line, .line = line});
        QList<int> here = on_line.values(line);
        std::ranges::sort(here);
        for (const int number : here)
            rows_.append({.kind = Row::Kind::error, .line = line, .number = number});
    }
    endResetModel();
    emit shown();
}

QVariantMap BrokenText::mending(int error) const {
    if (error < 0 || error >= errors()) return {};
    const units::Error& wrong = errors_[static_cast<std::size_t>(error)];
    auto value = value_in(document_->text().toStdString(), wrong.where);
    const QString beginning = beginning_of(wrong.where);
    // A table that is not there is no value.
    if (value && value->isEmpty() && wrong.where.find('.') == std::string::npos &&
        beginning.startsWith(QLatin1Char('[')))
        value.reset();
    const bool begun = document_->text().contains(QLatin1Char('\n') + beginning) ||
                       document_->text().startsWith(beginning);
    if (!value && wrong.line > 0 && begun) return ofLine(wrong.line);
    if (!value)
        return {{"key", QString()},
                {"line", 0},
                {"title", tr("A new line at the end")},
                {"words", beginning}};
    return {{"key", QString::fromStdString(wrong.where)},
            {"line", wrong.line},
            {"title", QString::fromStdString(wrong.where)},
            {"words", *value}};
}

QVariantMap BrokenText::ofLine(int line) const {
    if (line < 1 || line > lines_.size()) return {};
    QString words = lines_[line - 1];
    if (words.endsWith(QLatin1Char('\r'))) words.chop(1);
    return {
        {"key", QString()}, {"line", line}, {"title", tr("Line %1").arg(line)}, {"words", words}};
}

QString BrokenText::mend(const QVariantMap& asked, const QString& words) {
    const QString key = asked[QStringLiteral("key")].toString();
    if (key.isEmpty()) {
        document_->putLine(asked[QStringLiteral("line")].toInt(), words);
        return {};
    }
    return document_->put(key, words) ? QString() : document_->trouble();
}

int BrokenText::nextError(int row) const {
    for (int next = row + 1; next < count(); ++next)
        if (rows_[next].kind == Row::Kind::error) return next;
    return -1;
}

int BrokenText::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant BrokenText::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[index.row()];
    const bool is_error = row.kind == Row::Kind::error;
    const units::Error* wrong = is_error ? &errors_[static_cast<std::size_t>(row.number)] : nullptr;
    switch (role) {
        case KindRole:
            return is_error ? "error" : row.kind == Row::Kind::gap ? "gap" : "line";
        case LineRole:
            return row.line;
        case TextRole:
            return row.kind == Row::Kind::line
                       ? words_of(
                             ofLine(row.line)[QStringLiteral("words")].toString().toStdString())
                   : wrong ? QString::fromStdString(wrong->where)
                           : QString();
        case FoundRole:
            return wrong ? words_of(wrong->found) : QString();
        case RemedyRole:
            return wrong ? words_of(wrong->remedy) : QString();
        case NumberRole:
            return row.number;
        default:
            return {};
    }
}

QHash<int, QByteArray> BrokenText::roleNames() const {
    return {{KindRole, "kind"},   {LineRole, "line"},     {TextRole, "text"},
            {FoundRole, "found"}, {RemedyRole, "remedy"}, {NumberRole, "number"}};
}

}  // namespace touch
