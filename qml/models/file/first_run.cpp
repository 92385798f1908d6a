#include "models/file/first_run.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string>

#include <QCoreApplication>
#include <QDate>
#include <QVariantMap>

#include "models/fields/new_load.hpp"
#include "scenario/file/save.hpp"
#include "units/clock.hpp"

namespace touch {

namespace {

// Something to pick; its words are said in the language of the screen.
struct Offer {
    const char* key;
    const char* name;
    const char* detail;
    const char* picture;
    const char* keys;  // of the scenario; of a thing in the house its hours, empty: at all hours
    int priority = 3;
};

// By their names in the list of appliances.
constexpr std::array things_offered{
    Offer{"CPAP without heat", QT_TRANSLATE_NOOP("FirstRun", "Breathing machine"),
          QT_TRANSLATE_NOOP("FirstRun", "at night, without its heater"), "breathing", "22:00-06:00",
          1},
    Offer{"oxygen concentrator 5 L/min", QT_TRANSLATE_NOOP("FirstRun", "Oxygen machine"),
          QT_TRANSLATE_NOOP("FirstRun", "day and night"), "oxygen", "", 1},
    Offer{"refrigerator", QT_TRANSLATE_NOOP("FirstRun", "Refrigerator"), "", "refrigerator", "", 2},
    Offer{"chest freezer", QT_TRANSLATE_NOOP("FirstRun", "Freezer"), "", "freezer", "", 2},
    Offer{"furnace blower 1/3 hp", QT_TRANSLATE_NOOP("FirstRun", "Heating blower"),
          QT_TRANSLATE_NOOP("FirstRun", "of a furnace that burns gas or oil"), "heating", "", 2},
    Offer{"sump pump 1/3 hp", QT_TRANSLATE_NOOP("FirstRun", "Sump pump"), "", "pump", "", 2},
    Offer{"LED lamp", QT_TRANSLATE_NOOP("FirstRun", "Light"),
          QT_TRANSLATE_NOOP("FirstRun", "one lamp in the evening"), "lamp", "17:00-23:00", 3},
    Offer{"phone charger", QT_TRANSLATE_NOOP("FirstRun", "Phone"),
          QT_TRANSLATE_NOOP("FirstRun", "three hours a day"), "phone", "19:00-22:00", 3},
    Offer{"modem and router", QT_TRANSLATE_NOOP("FirstRun", "Internet"),
          QT_TRANSLATE_NOOP("FirstRun", "day and night"), "router", "", 3},
    Offer{"laptop", QT_TRANSLATE_NOOP("FirstRun", "Laptop"),
          QT_TRANSLATE_NOOP("FirstRun", "eight hours a day"), "laptop", "09:00-17:00", 5},
    Offer{"LED television", QT_TRANSLATE_NOOP("FirstRun", "Television"),
          QT_TRANSLATE_NOOP("FirstRun", "in the evening"), "television", "19:00-22:00", 4},
    Offer{"box fan", QT_TRANSLATE_NOOP("FirstRun", "Fan"),
          QT_TRANSLATE_NOOP("FirstRun", "at night"), "fan", "20:00-06:00", 4},
};

constexpr std::array batteries_offered{
    Offer{"lithium", QT_TRANSLATE_NOOP("FirstRun", "Lithium iron phosphate, 12.8 V 100 Ah"),
          QT_TRANSLATE_NOOP("FirstRun", "light, about 11 kg"), "battery",
          "chemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\nrated_over = \"5 h\"\nvoltage = "
          "\"12.8 V\"\n"},
    Offer{"lithium_large", QT_TRANSLATE_NOOP("FirstRun", "Lithium iron phosphate, 12.8 V 200 Ah"),
          "", "battery",
          "chemistry = \"lifepo4\"\ncapacity = \"200 Ah\"\nrated_over = \"5 h\"\nvoltage = "
          "\"12.8 V\"\n"},
    Offer{
        "agm", QT_TRANSLATE_NOOP("FirstRun", "Sealed lead (AGM), 12 V 100 Ah"),
        QT_TRANSLATE_NOOP("FirstRun", "does not spill, about 30 kg"), "battery",
        "chemistry = \"agm\"\ncapacity = \"100 Ah\"\nrated_over = \"20 h\"\nvoltage = \"12 V\"\n"},
    Offer{
        "gel", QT_TRANSLATE_NOOP("FirstRun", "Gel lead, 12 V 100 Ah"), "", "battery",
        "chemistry = \"gel\"\ncapacity = \"100 Ah\"\nrated_over = \"20 h\"\nvoltage = \"12 V\"\n"},
    Offer{"wet", QT_TRANSLATE_NOOP("FirstRun", "Wet lead, 12 V 100 Ah"),
          QT_TRANSLATE_NOOP("FirstRun", "caps to fill up with water"), "battery",
          "chemistry = \"flooded\"\ncapacity = \"100 Ah\"\nrated_over = \"20 h\"\nvoltage = \"12 "
          "V\"\n"},
};

constexpr std::array panels_offered{
    Offer{"100", QT_TRANSLATE_NOOP("FirstRun", "100 W each"), "", "panel", "100 W"},
    Offer{"200", QT_TRANSLATE_NOOP("FirstRun", "200 W each"), "", "panel", "200 W"},
    Offer{"400", QT_TRANSLATE_NOOP("FirstRun", "400 W each"),
          QT_TRANSLATE_NOOP("FirstRun", "a panel for a roof"), "panel", "400 W"},
};

constexpr std::array lengths_offered{
    Offer{"night", QT_TRANSLATE_NOOP("FirstRun", "One night"), "", "", "lasts = \"14 h\"\n"},
    Offer{"day", QT_TRANSLATE_NOOP("FirstRun", "One day"), "", "", "lasts = \"1 d\"\n"},
    Offer{"two", QT_TRANSLATE_NOOP("FirstRun", "Two days"), "", "", "lasts = \"2 d\"\n"},
    Offer{"four", QT_TRANSLATE_NOOP("FirstRun", "Four days"), "", "", "lasts = \"4 d\"\n"},
    Offer{"week", QT_TRANSLATE_NOOP("FirstRun", "A week"), "", "", "lasts = \"7 d\"\n"},
    Offer{"open", QT_TRANSLATE_NOOP("FirstRun", "Nobody knows"),
          QT_TRANSLATE_NOOP("FirstRun", "half of such outages end within two days"), "",
          "lasts = \"?\"\nhalf_over_by = \"2 d\"\n"},
};

QString offered(const char* english) {
    return *english == 0 ? QString() : QCoreApplication::translate("FirstRun", english);
}

std::span<const Offer> offers_of(int question) {
    if (question == 0) return things_offered;
    if (question == 1) return batteries_offered;
    if (question == 2) return panels_offered;
    if (question == 3) return lengths_offered;
    return {};
}

const Offer& offer_of(std::span<const Offer> offers, const QString& key) {
    const auto found = std::ranges::find_if(
        offers, [&](const Offer& offer) { return key == QLatin1String(offer.key); });
    return found == offers.end() ? offers.front() : *found;
}

// The list's own figures; without a place in it nothing is added.
std::string with_thing(const std::string& text, const Offer& thing) {
    for (const motor::Appliance& appliance : motor::appliances()) {
        if (appliance.name != std::string_view(thing.key)) continue;
        scenario::Load load = load_like(appliance);
        load.name = offered(thing.name).toStdString();
        load.priority = thing.priority;
        if (*thing.keys != 0)
            if (const auto span = units::read_daily_span(thing.keys)) load.hours = {*span};
        return with_load(text, load).value_or(text);
    }
    return text;
}

}  // namespace

FirstRun::FirstRun(QObject* parent) : QObject(parent) {
    begin();
}

void FirstRun::begin() {
    number_ = 0;
    answered_ = false;
    things_.clear();
    battery_ = QString::fromLatin1(batteries_offered.front().key);
    panel_ = QString::fromLatin1(panels_offered.front().key);
    length_ = QStringLiteral("two");
    place_ = QStringLiteral("Chicago IL");
    packs_ = 1;
    panels_ = 0;
    emit asked();
}

void FirstRun::forth() {
    number_ = std::min(number_ + 1, questions() - 1);
    emit asked();
}

void FirstRun::back() {
    number_ = std::max(number_ - 1, 0);
    emit asked();
}

void FirstRun::choose(const QString& key) {
    switch (number_) {
        case 0:
            if (!things_.remove(key)) things_.insert(key);
            break;
        case 1:
            battery_ = key;
            break;
        case 2:
            panel_ = key;
            panels_ = std::max(panels_, 1);
            break;
        default:
            length_ = key;
    }
    answer();
}

void FirstRun::setCount(int count) {
    (number_ == 1 ? packs_ : panels_) = std::clamp(count, least(), most());
    answer();
}

void FirstRun::setPlace(const QString& name) {
    place_ = name;
    answer();
}

void FirstRun::set_language(const QString& language) {
    language_ = language;
    emit asked();
}

QString FirstRun::words() const {
    const QStringList all{tr("What must stay on?"), tr("Which battery have you got?"),
                          tr("Have you got solar panels?"), tr("How long may the outage last?"),
                          tr("Where do you live?")};
    return all[number_];
}

QString FirstRun::more() const {
    const QStringList all{
        tr("Pick all that must. Typical figures are taken; a plug-in meter tells yours."),
        tr("As its label says. All of them are taken to be full."),
        tr("Propped up towards the south, as a beginning."),
        tr("It is taken to begin tomorrow at 18:00."),
        tr("For the sun and the warmth of the season: the nearest place of the list.")};
    return all[number_];
}

QVariantList FirstRun::options() const {
    QVariantList all;
    for (const Offer& offer : offers_of(number_)) {
        const QString key = QString::fromLatin1(offer.key);
        const bool chosen = number_ == 0   ? things_.contains(key)
                            : number_ == 1 ? key == battery_
                            : number_ == 2 ? panels_ > 0 && key == panel_
                                           : key == length_;
        all << QVariantMap{{"key", key},
                           {"name", offered(offer.name)},
                           {"detail", offered(offer.detail)},
                           {"picture", offer.picture},
                           {"chosen", chosen}};
    }
    return all;
}

QString FirstRun::text() const {
    const std::string starts =
        QDate::currentDate().addDays(1).toString(Qt::ISODate).toStdString() + "T18:00:00";
    std::string text =
        "# " + tr("Made from five answers; what was not asked is marked.").toStdString() +
        "\nformat = 1\ntitle = \"" + tr("What I have").toStdString() +
        "\"\n\n[outage]\nstarts = " + starts + "\n" + offer_of(lengths_offered, length_).keys +
        "\n[place]\nname = \"" + QString(place_).remove(QLatin1Char('"')).toStdString() +
        "\"\n\n[[pack]]\nname = \"main\"\ncount = " + std::to_string(packs_) + "\n" +
        offer_of(batteries_offered, battery_).keys + "charge = \"100 %\"  # " +
        tr("not asked").toStdString() + "\n\n[inverter]  # " +
        tr("not asked: put what its plate says").toStdString() +
        "\ncontinuous = \"2000 W\"\nsurge = \"4000 W\"\nidle = \"15 W\"\n"
        "cutoff_voltage = \"10.5 V\"\n";
    if (panels_ > 0)
        text += "\n[[panel]]\ncount = " + std::to_string(panels_) + "\npower = \"" +
                offer_of(panels_offered, panel_).keys + "\"\nplacement = \"fixed\"  # " +
                tr("not asked").toStdString() +
                "\ntilt = \"45 deg\"\nazimuth = \"180 deg\"\n\n[charge_controller]\nkind = "
                "\"mppt\"  # " +
                tr("not asked").toStdString() + "\n";
    for (const Offer& thing : things_offered)
        if (things_.contains(QString::fromLatin1(thing.key))) text = with_thing(text, thing);
    return QString::fromStdString(text);
}

void FirstRun::answer() {
    if (document_) {
        if (answered_)
            document_->set_text(text());
        else if (!document_->begin(text()))
            return;
    }
    answered_ = true;
    emit asked();
}

}  // namespace touch
