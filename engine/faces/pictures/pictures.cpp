#include "faces/pictures/pictures.hpp"

#include <utility>

#include <fmt/format.h>

#include "faces/pictures/bars_drawing.hpp"
#include "faces/pictures/builds_drawing.hpp"
#include "faces/pictures/curves_drawing.hpp"
#include "faces/pictures/days_drawing.hpp"
#include "faces/pictures/wiring_svg.hpp"
#include "faces/spoken.hpp"

namespace faces {

namespace {

// One overload a kind of exhibit.
struct Drawn {
    const answers::Answer& answer;
    const words::Language& language;

    std::optional<Drawing> operator()(const answers::DaysChart* one) const {
        return drawing_of(*one, language);
    }
    std::optional<Drawing> operator()(const answers::BuildsView* one) const {
        return drawing_of(*answer.builds, *one, language);
    }
    std::optional<Drawing> operator()(const answers::BarChart* one) const {
        return drawing_of(*one, language);
    }
    std::optional<Drawing> operator()(const answers::DayCurves* one) const {
        return drawing_of(*one, language);
    }
    std::optional<Drawing> operator()(const answers::StartChart* one) const {
        return drawing_of(*one, language);
    }
    std::optional<Drawing> operator()(const answers::WiringDiagram*) const { return {}; }
    std::optional<Drawing> operator()(const answers::Account*) const { return {}; }
    std::optional<Drawing> operator()(const answers::Series*) const { return {}; }
};

std::string titled(const std::string& title, const answers::Answer& answer) {
    return answer.title.empty() ? title : title + ": " + answer.title;
}

}  // namespace

std::optional<Drawing> drawing_of(const answers::Exhibit& exhibit, const answers::Answer& answer,
                                  const words::Language& language) {
    auto drawing = std::visit(Drawn{answer, language}, exhibit);
    if (drawing) drawing->title = titled(drawing->title, answer);
    return drawing;
}

std::vector<Drawing> drawings_of(const answers::Answer& answer, const words::Language& language) {
    std::vector<Drawing> drawings;
    for (const auto& exhibit : answers::exhibits_of(answer))
        if (auto drawing = drawing_of(exhibit, answer, language))
            drawings.push_back(std::move(*drawing));
    return drawings;
}

std::string in_svg(const answers::Answer& unspoken, const words::Language& language) {
    const answers::Answer answer = spoken(unspoken, language);
    if (answer.wiring) return in_svg(*answer.wiring, answer.title, language);
    const auto drawings = drawings_of(answer, language);
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
