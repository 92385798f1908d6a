#include "models/fields/weather_choices.hpp"

#include <map>
#include <mutex>

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "models/words/scenario_text.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/named_file.hpp"
#include "scenario/file/save.hpp"
#include "scenario/file/saving.hpp"
#include "solar/weather/weather_file.hpp"

namespace touch {

namespace {

constexpr int most_remembered = 200;  // scenarios

// What was chosen, by the scenario's path. Answers are worked out on threads of their own.
struct Chosen {
    std::mutex lock;
    std::map<QString, QStringList> files;
    std::map<QString, scenario::AlsoAllowed> held;  // by the weather file
    QString kept_at;                                // empty: nowhere
};

Chosen& chosen() {
    static Chosen all;
    return all;
}

// One name for one file, however it was come by; none for a scenario that was not saved yet.
QString whole_path(const QString& file) {
    if (file.isEmpty()) return file;
    const QFileInfo info(file);
    const QString real = info.canonicalFilePath();
    return real.isEmpty() ? info.absoluteFilePath() : real;
}

// Lets the scenario have what was chosen for it.
void allow_for(const QString& scenario) {
    Chosen& all = chosen();
    const std::scoped_lock held(all.lock);
    const auto found = all.files.find(whole_path(scenario));
    if (found == all.files.end()) return;
    for (const QString& weather : found->second)
        all.held.try_emplace(weather, std::vector{weather.toStdString()});
}

std::map<QString, QStringList> choices_in(const QString& file) {
    std::map<QString, QStringList> choices;
    const auto bytes = scenario::bytes_of_file(file.toStdString());
    if (!bytes) return choices;
    const QJsonObject kept = QJsonDocument::fromJson(QByteArray::fromStdString(*bytes)).object();
    for (auto one = kept.begin(); one != kept.end(); ++one)
        for (const QJsonValue path : one.value().toArray())
            if (path.isString()) choices[one.key()] << path.toString();
    return choices;
}

void keep(const Chosen& all) {
    if (all.kept_at.isEmpty()) return;
    QJsonObject kept;
    for (const auto& [scenario, paths] : all.files)
        if (!scenario.isEmpty()) kept[scenario] = QJsonArray::fromStringList(paths);
    // Where this fails the choice holds until the program ends, and is asked for again.
    static_cast<void>(
        scenario::save_file(all.kept_at.toStdString(), QJsonDocument(kept).toJson().toStdString()));
}

void remember(const QString& scenario, const QString& weather) {
    Chosen& all = chosen();
    const std::scoped_lock held(all.lock);
    // Another window may have remembered others since.
    if (!all.kept_at.isEmpty())
        for (const auto& [other, paths] : choices_in(all.kept_at))
            all.files.try_emplace(other, paths);
    QStringList& paths = all.files[whole_path(scenario)];
    if (!paths.contains(weather)) paths << weather;
    while (all.files.size() > most_remembered) {
        const bool first = all.files.begin()->first == whole_path(scenario);
        all.files.erase(first ? std::next(all.files.begin()) : all.files.begin());
    }
    keep(all);
}

// Relative to the scenario where it lies below it, so that both can be moved together.
QString as_named(const QString& weather, const QString& scenario) {
    if (scenario.isEmpty()) return weather;
    const QString folder = QFileInfo(whole_path(scenario)).absolutePath() + QLatin1Char('/');
    return weather.startsWith(folder) ? weather.mid(folder.size()) : weather;
}

}  // namespace

units::Result<scenario::ReadScenario> read_shown(const QString& text, const QString& file,
                                                 scenario::Overrides overrides) {
    allow_for(file);
    return scenario::read_scenario(text.toStdString(), file.toStdString(), std::move(overrides));
}

void WeatherChoices::keepIn(const QString& folder) {
    Chosen& all = chosen();
    const std::scoped_lock held(all.lock);
    all.kept_at = folder + QStringLiteral("/weather_files.json");
    all.files = choices_in(all.kept_at);
}

bool WeatherChoices::choose(const QUrl& file) {
    if (!document_ || !file.isLocalFile()) return false;
    const QString weather = whole_path(file.toLocalFile());
    if (const auto year = solar::read_weather_file(weather.toStdString()); !year)
        return tell(QFileInfo(weather).fileName() + QStringLiteral(": ") +
                    in_words({year.error().front()}));
    remember(document_->path(), weather);
    allow_for(document_->path());
    const auto named = scenario::path_of_named_file(
        file_.toStdString(), scenario::folder_of(document_->path().toStdString()), {});
    const bool is_named =
        !file_.isEmpty() && named && whole_path(QString::fromStdString(*named)) == weather;
    if (!is_named) {
        const std::string name = as_named(weather, document_->path()).toStdString();
        const QString trouble = document_->change([&name](const std::string& text) {
            return scenario::with_value(text, "place.weather_file", name);
        });
        if (!trouble.isEmpty()) return tell(trouble);
    }
    tell(QString());
    document_->tellAgain();
    return true;
}

void WeatherChoices::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &WeatherChoices::read);
    read();
}

void WeatherChoices::read() {
    if (!document_) return;
    const auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;  // as it was until the text can be read again
    file_ = QString::fromStdString(read->scenario.place.weather_file.value_or(std::string()));
    emit changed();
}

bool WeatherChoices::tell(const QString& trouble) {
    trouble_ = trouble;
    emit changed();
    return false;
}

}  // namespace touch
