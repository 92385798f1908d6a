#include "faces/pictures.hpp"

#include <optional>

#include <fmt/format.h>

#include "answers/exhibits.hpp"
#include "faces/bars_drawing.hpp"
#include "faces/builds_drawing.hpp"
#include "faces/curves_drawing.hpp"
#include "faces/days_drawing.hpp"
#include "faces/wiring_svg.hpp"

namespace faces {

namespace {

// One overload a kind of exhibit.
struct Drawn {
    const answers::Answer& answer;

    std::optional<Drawing> operator()(const answers::DaysChart* one) const {
        return drawing_of(*one);
    }
    std::optional<Drawing> operator()(const answers::BuildsView* one) const {
        return drawing_of(*answer.builds, *one);
    }
    std::optional<Drawing> operator()(const answers::BarChart* one) const {
        return drawing_of(*one);
    }
    std::optional<Drawing> operator()(const answers::DayCurves* one) const {
        return drawing_of(*one);
    }
    std::optional<Drawing> operator()(const answers::StartChart* one) const {
        return drawing_of(*one);
    }
    std::optional<Drawing> operator()(const answers::WiringDiagram*) const { return {}; }
    std::optional<Drawing> operator()(const answers::Account*) const { return {}; }
    std::optional<Drawing> operator()(const answers::Series*) const { return {}; }
};

std::string titled(const std::string& title, const answers::Answer& answer) {
    return answer.title.empty() ? title : title + ": " + answer.title;
}

}  // namespace

std::vector<Drawing> drawings_of(const answers::Answer& answer) {
    std::vector<Drawing> drawings;
    for (const auto& exhibit : answers::exhibits_of(answer)) {
        auto drawing = std::visit(Drawn{answer}, exhibit);
        if (!drawing) continue;
        drawing->title = titled(drawing->title, answer);
        drawings.push_back(std::move(*drawing));
    }
    return drawings;
}

std::string in_svg(const answers::Answer& answer) {
    if (answer.wiring) return in_svg(*answer.wiring, answer.title);
    const auto drawings = drawings_of(answer);
    if (drawings.empty()) return "";
    Drawing all{.title = drawings.front().title, .pieces = {}, .height = 0.0};
    for (const Drawing& one : drawings) {
        all.pieces +=
            fmt::format("<g transform=\"translate(0 {:.1f})\">\n<title>{}</title>\n{}</g>\n",
                        all.height, in_xml(one.title), one.pieces);
        all.height += one.height + 12.0;
    }
    return in_svg(all);
}

}  // namespace faces
