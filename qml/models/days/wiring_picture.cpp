#include "models/days/wiring_picture.hpp"

#include <algorithm>

#include <QVariantMap>

namespace touch {

namespace {

QString word_of(answers::BoxKind kind) {
    switch (kind) {
        case answers::BoxKind::pack:
            return QObject::tr("pack");
        case answers::BoxKind::bus:
            return QObject::tr("bus");
        case answers::BoxKind::inverter:
            return QObject::tr("inverter");
        case answers::BoxKind::load:
            return QObject::tr("load");
        case answers::BoxKind::fuse:
            return QObject::tr("fuse");
        case answers::BoxKind::switch_:
            return QObject::tr("switch");
        case answers::BoxKind::wire:
            return QObject::tr("wire");
        case answers::BoxKind::connector:
            return QObject::tr("connector");
        case answers::BoxKind::outlet:
            return QObject::tr("outlet");
        case answers::BoxKind::other:
            break;
    }
    return {};
}

QString mark_of_worst(const std::optional<scenario::Severity>& severity) {
    return severity ? mark_of(*severity) : QString();
}

const answers::DiagramBox* box_called(const answers::WiringDiagram& diagram,
                                      const std::string& id) {
    const auto found = std::ranges::find(diagram.boxes, id, &answers::DiagramBox::id);
    return found == diagram.boxes.end() ? nullptr : &*found;
}

// Where a line leaves a box that is level with another, if it can: a bus is tall.
double level_with(const answers::DiagramBox& box, double y) {
    const double half = std::max(0.0, 0.5 * (box.height - 1.0));
    return std::clamp(y, box.y - half, box.y + half);
}

QVariantMap map_of(const answers::DiagramBox& box, const QString& caption) {
    const QString kind = word_of(box.kind);
    QStringList spoken{caption, kind, words_of(box.title), words_of(box.detail),
                       words_of(box.finding)};
    spoken.removeAll(QString());
    return {{"x", box.x},
            {"y", box.y},
            {"height", box.height},
            {"kind", kind},
            {"title", words_of(box.title)},
            {"detail", words_of(box.detail)},
            {"caption", caption},
            {"mark", mark_of_worst(box.severity)},
            {"finding", words_of(box.finding)},
            {"spoken", spoken.join(QStringLiteral(", "))}};
}

}  // namespace

QList<LinePiece> pieces_of(const answers::WiringDiagram& diagram) {
    QList<LinePiece> pieces;
    for (const answers::DiagramLine& line : diagram.lines) {
        const answers::DiagramBox* from = box_called(diagram, line.from);
        const answers::DiagramBox* to = box_called(diagram, line.to);
        if (!from || !to) continue;
        const double begins = level_with(*from, to->y);
        const double ends = level_with(*to, begins);
        const QString mark = mark_of_worst(line.severity);
        const auto add = [&](double x, double y, double across, double down) {
            pieces.append({.x = std::min(x, x + across),
                           .y = std::min(y, y + down),
                           .across = std::abs(across),
                           .down = std::abs(down),
                           .mark = mark});
        };
        if (begins == ends) {
            add(from->x, begins, to->x - from->x, 0.0);
            continue;
        }
        const double middle = 0.5 * (from->x + to->x);
        add(from->x, begins, middle - from->x, 0.0);
        add(middle, begins, 0.0, ends - begins);
        add(middle, ends, to->x - middle, 0.0);
    }
    return pieces;
}

void WiringPicture::set_runner(AnswerRunner* runner) {
    if (runner_ == runner) return;
    if (runner_) runner_->disconnect(this);
    runner_ = runner;
    if (runner_) connect(runner_, &AnswerRunner::shown, this, &WiringPicture::read);
    emit askedChanged();
    read();
}

void WiringPicture::read() {
    boxes_.clear();
    pieces_.clear();
    spoken_.clear();
    const answers::Answer* answer = runner_ ? runner_->view()->answer.get() : nullptr;
    if (answer && answer->wiring) {
        const answers::WiringDiagram& diagram = *answer->wiring;
        width_ = diagram.width;
        height_ = diagram.height;
        spoken_ = words_of(diagram.description);
        for (const answers::DiagramBox& box : diagram.boxes) {
            const auto into = std::ranges::find(diagram.lines, box.id, &answers::DiagramLine::to);
            boxes_ << map_of(box, into == diagram.lines.end() || box.kind == answers::BoxKind::bus
                                      ? QString()
                                      : words_of(into->text));
        }
        for (const LinePiece& piece : pieces_of(diagram)) {
            pieces_ << QVariantMap{{"x", piece.x},
                                   {"y", piece.y},
                                   {"across", piece.across},
                                   {"down", piece.down},
                                   {"mark", piece.mark}};
        }
    }
    emit drawn();
}

}  // namespace touch
