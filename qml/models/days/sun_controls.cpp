#include "models/days/sun_controls.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <QLocale>
#include <fmt/format.h>

#include "models/fields/fields.hpp"
#include "models/words/finding_text.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"
#include "solar/sun_position.hpp"
#include "units/clock.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

struct Spot {
    solar::Coordinates at;
    units::Duration utc_offset;
};

std::optional<Spot> spot_of(const scenario::Place& place) {
    if (place.latitude && place.longitude) {
        const units::Duration by_the_sun = *place.longitude / (15.0 * units::degree) * units::hour;
        return Spot{{*place.latitude, *place.longitude}, place.utc_offset.value_or(by_the_sun)};
    }
    if (!place.name) return std::nullopt;
    const auto known = solar::known_place(*place.name);
    if (!known) return std::nullopt;
    return Spot{known->at, known->utc_offset};
}

double noon_height(const std::optional<Spot>& spot, units::LocalTime day) {
    if (!spot) return std::numeric_limits<double>::quiet_NaN();
    const units::LocalTime noon = solar::solar_noon(spot->at.longitude, day, spot->utc_offset);
    const auto sun = solar::sun_position(spot->at, units::instant(noon, spot->utc_offset));
    return 90.0 - sun.zenith / units::degree;
}

// The same day of another month; the last one where that month is shorter.
units::LocalTime in_month(units::LocalTime time, int month) {
    const auto date = units::date_of(time);
    const auto day = std::chrono::month(static_cast<unsigned>(month));
    const auto last = (date.year() / day / std::chrono::last).day();
    return units::local_time(date.year() / day / std::min(date.day(), last),
                             units::time_of_day(time));
}

using Text = units::Result<std::string>;

Text with_place(const std::string& text, const QString& name) {
    Text changed = scenario::with_value(text, "place.name", name.toStdString());
    for (const char* key : {"latitude", "longitude", "elevation", "utc_offset", "irradiation",
                            "sunshine", "temperature", "temperature_range", "weather_file"}) {
        if (!changed) return changed;
        auto without = scenario::without_value(*changed, std::string("place.") + key);
        if (without) changed = std::move(without);  // what is not there need not be taken out
    }
    return changed;
}

// The first place of the list stands in where none is known.
solar::KnownPlace place_to_begin_with(const scenario::Place& place) {
    const auto named = solar::known_place(place.name.value_or(std::string()));
    return named ? *named : solar::known_places().front();
}

template <class Months>
std::string months_as_list(const Months& months) {
    QStringList words;
    for (const auto& month : months)
        words << words_of(units::print(month));
    return list_value(words).toStdString();
}

Text with_figures_of(const std::string& text, const solar::KnownPlace& place) {
    std::vector<scenario::KeyValue> values{
        {"place.latitude", units::print(place.at.latitude)},
        {"place.longitude", units::print(place.at.longitude)},
        {"place.elevation", units::print(place.elevation)},
        {"place.utc_offset", units::print(place.utc_offset)},
        {"place.irradiation", months_as_list(place.irradiation)}};
    if (place.temperature)
        values.emplace_back("place.temperature", months_as_list(*place.temperature));
    Text changed = scenario::with_values(text, values);
    if (!changed) return changed;
    auto without = scenario::without_value(*changed, "place.name");
    return without ? without : changed;
}

Text with_tilt(const std::string& text, int degrees, bool flat) {
    Text changed = scenario::with_value(text, "panel[0].tilt", std::to_string(degrees) + " deg");
    if (changed && flat) changed = scenario::with_value(*changed, "panel[0].placement", "fixed");
    return changed;
}

}  // namespace

void SunControls::setMonth(int month) {
    if (!document_ || month < 1 || month > 12 || month == month_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;
    const std::string starts = units::print(in_month(read->scenario.outage.starts, month));
    document_->change([&starts](const std::string& text) {
        return scenario::with_value(text, "outage.starts", starts);
    });
}

void SunControls::setTilt(double degrees) {
    turn(degrees);
    settle();
}

void SunControls::turn(double degrees) {
    if (!document_ || !has_panels_) return;
    if (tried_of_.isNull()) {
        tried_of_ = document_->text();
        tried_from_ = tilt_;
    }
    const int turned = std::clamp(static_cast<int>(std::lround(degrees / step)) * step, 0, 90);
    if (turned == tilt_) return;
    tilt_ = turned;
    trial_ = turned == tried_from_ ? QString() : turned_to(turned);
    emit changed();
    emit trialChanged();
}

// Of the text as it is: what came into it meanwhile stays.
void SunControls::settle() {
    const int turned = tilt_;
    const bool turns = !trial_.isEmpty();
    const bool flat = tried_from_ == 0;
    tried_of_ = QString();
    if (turns)
        document_->change(
            [turned, flat](const std::string& text) { return with_tilt(text, turned, flat); });
    end_trial();
}

void SunControls::end_trial() {
    const bool tried = !trial_.isEmpty();
    trial_.clear();
    if (tried) emit trialChanged();
    read();
}

QString SunControls::turned_to(int degrees) const {
    const auto text = with_tilt(tried_of_.toStdString(), degrees, tried_from_ == 0);
    return text ? QString::fromStdString(*text) : QString();
}

void SunControls::setPlace(const QString& name) {
    if (!document_) return;
    document_->change([&name](const std::string& text) { return with_place(text, name); });
}

void SunControls::makePlaceOwn() {
    if (!document_ || own_place_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;
    const solar::KnownPlace place = place_to_begin_with(read->scenario.place);
    document_->change([&place](const std::string& text) { return with_figures_of(text, place); });
}

void SunControls::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &SunControls::read);
    read();
    emit changed();
}

void SunControls::read() {
    if (!document_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // all stays as it was until the text can be read again
    const scenario::Scenario& scenario = read->scenario;
    own_place_ = scenario.place.latitude.has_value();
    place_ = scenario.place.name && !own_place_ ? words_of(*scenario.place.name)
                                                : tr("a place of your own");
    month_ =
        static_cast<int>(static_cast<unsigned>(units::date_of(scenario.outage.starts).month()));
    has_panels_ = !scenario.panels.empty();
    noon_ = noon_height(spot_of(scenario.place), scenario.outage.starts);
    if (!tried_of_.isNull()) {  // a finger holds it
        emit changed();
        return;
    }
    tilt_ = 0;
    if (has_panels_ && scenario.panels.front().placement != scenario::Placement::flat) {
        const auto tilt = scenario.panels.front().tilt;
        tilt_ = tilt ? static_cast<int>(std::lround(*tilt / units::degree)) : 0;
    }
    emit changed();
}

QStringList SunControls::months() const {
    QStringList names;
    for (int month = 1; month <= 12; ++month)
        names << QLocale().standaloneMonthName(month, QLocale::ShortFormat);
    return names;
}

QString SunControls::tilt_text() const {
    if (tilt_ == 0) return tr("flat");
    return tr("%1°").arg(tilt_);
}

QString SunControls::noon_text() const {
    if (!std::isfinite(noon_)) return {};
    if (noon_ < 0.0) return tr("the sun does not rise");
    return tr("the noon sun stands %1° high").arg(std::lround(noon_));
}

PlacesModel::PlacesModel(QObject* parent) : QAbstractListModel(parent) {
    pick();
}

void PlacesModel::set_wanted(const QString& wanted) {
    if (wanted_ == wanted) return;
    wanted_ = wanted;
    pick();
}

void PlacesModel::pick() {
    beginResetModel();
    shown_.clear();
    for (const solar::KnownPlace& place : solar::known_places()) {
        if (words_of(place.name).contains(wanted_.trimmed(), Qt::CaseInsensitive))
            shown_.append(&place);
    }
    endResetModel();
    emit wantedChanged();
}

int PlacesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant PlacesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const solar::KnownPlace& place = *shown_[index.row()];
    const double latitude = place.at.latitude / units::degree;
    const QString where =
        latitude >= 0.0
            ? tr("%1° north, country %2")
                  .arg(words_of(fmt::format("{:.0f}", latitude)), words_of(place.country))
            : tr("%1° south, country %2")
                  .arg(words_of(fmt::format("{:.0f}", -latitude)), words_of(place.country));
    switch (role) {
        case Qt::DisplayRole:
        case NameRole:
            return words_of(place.name);
        case DetailRole:
            return where;
        case SpokenRole:
            return QStringLiteral("%1, %2").arg(words_of(place.name), where);
        default:
            return {};
    }
}

QHash<int, QByteArray> PlacesModel::roleNames() const {
    return {{NameRole, "name"}, {DetailRole, "detail"}, {SpokenRole, "spoken"}};
}

}  // namespace touch
