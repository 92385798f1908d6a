#include <array>
#include <cassert>
#include <utility>

#include <fmt/format.h>

#include "motor/appliances/appliance_words.hpp"
#include "motor/appliances/appliances.hpp"
#include "units/text.hpp"
#include "words/toml.hpp"

namespace motor {

namespace {

using scenario::MotorKind;
using words::Said;
using words::said;

template <class Value>
using Words = std::pair<std::string_view, Value>;

constexpr std::array<Words<MotorKind>, 11> kinds{{
    {"split_phase", MotorKind::split_phase},
    {"capacitor_start", MotorKind::capacitor_start},
    {"permanent_split_fan", MotorKind::permanent_split_fan},
    {"permanent_split_compressor", MotorKind::permanent_split_compressor},
    {"compressor_rsir", MotorKind::compressor_rsir},
    {"compressor_csir", MotorKind::compressor_csir},
    {"submersible", MotorKind::submersible},
    {"shaded_pole", MotorKind::shaded_pole},
    {"universal", MotorKind::universal},
    {"electronic", MotorKind::electronic},
    {"direct_current", MotorKind::direct_current},
}};

constexpr std::array<Words<DrivenLoad>, 9> driven_loads{{
    {"centrifugal_pump", DrivenLoad::centrifugal_pump},
    {"fan", DrivenLoad::fan},
    {"belt_blower", DrivenLoad::belt_blower},
    {"compressor_equalised", DrivenLoad::compressor_equalised},
    {"compressor_against_head", DrivenLoad::compressor_against_head},
    {"piston_pump", DrivenLoad::piston_pump},
    {"saw_or_grinder", DrivenLoad::saw_or_grinder},
    {"hoist", DrivenLoad::hoist},
    {"unstated", DrivenLoad::unstated},
}};

constexpr std::array<Words<scenario::Outlet>, 3> outlets{{
    {"ac", scenario::Outlet::ac},
    {"12V", scenario::Outlet::twelve_volt},
    {"usb", scenario::Outlet::usb},
}};

constexpr std::array<Words<scenario::KeepsCold>, 3> kept_cold{{
    {"refrigerator", scenario::KeepsCold::refrigerator},
    {"refrigerator_freezer", scenario::KeepsCold::refrigerator_freezer},
    {"freezer", scenario::KeepsCold::freezer},
}};

constexpr std::array<std::string_view, 15> known_keys{
    "name",         "also", "run",     "power_factor", "duty",  "every", "motor", "drives",
    "listed_start", "from", "medical", "keeps_cold",   "hours", "note",  "source"};

int line_of(const toml::node& node) {
    return static_cast<int>(node.source().begin.line);
}

// Collects the errors of one appliance while its keys are read.
struct Reader {
    const toml::table& table;
    std::string name;
    units::Errors& errors;

    void wrong(const toml::node& at, std::string_view key, Said found, Said remedy) {
        errors.push_back({.where = fmt::format("appliances.{}.{}", name, key),
                          .found = std::move(found),
                          .remedy = std::move(remedy),
                          .line = line_of(at)});
    }

    template <class Quantity>
    std::optional<Quantity> quantity(const toml::node* node, std::string_view key) {
        if (node == nullptr) {
            return std::nullopt;
        }
        const auto text = node->value<std::string>();
        if (!text || !node->is_string()) {
            wrong(*node, key, said<"is not text">(), said<"give a number and a unit in quotes">());
            return std::nullopt;
        }
        const auto read = units::read<Quantity>(*text);
        if (!read) {
            wrong(*node, key, read.error().front().found, read.error().front().remedy);
            return std::nullopt;
        }
        return *read;
    }

    // `count` quantities that do not fall.
    template <class Quantity>
    std::optional<std::vector<Quantity>> rising(std::string_view key, std::size_t count) {
        const toml::node* node = table.get(key);
        if (node == nullptr) {
            return std::nullopt;
        }
        const toml::array* array = node->as_array();
        std::vector<Quantity> values;
        for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
            if (const auto value = quantity<Quantity>(array->get(i), key)) {
                values.push_back(*value);
            }
        }
        if (values.size() != count ||
            !std::is_sorted(values.begin(), values.end(),
                            [](const Quantity& a, const Quantity& b) { return a < b; })) {
            wrong(*node, key, said<"is not a range">(), said<"give {n} rising values">(count));
            return std::nullopt;
        }
        return values;
    }

    template <class Quantity>
    std::optional<units::Range<Quantity>> range(std::string_view key) {
        const auto values = rising<Quantity>(key, 3);
        return values ? std::optional(units::spanning((*values)[0], (*values)[1], (*values)[2]))
                      : std::nullopt;
    }

    template <class Value, std::size_t count>
    std::optional<Value> word(const toml::node* node, std::string_view key,
                              const std::array<Words<Value>, count>& words) {
        if (node == nullptr) {
            return std::nullopt;
        }
        const std::string text = node->value_or(std::string());
        for (const auto& [written, value] : words) {
            if (written == text) {
                return value;
            }
        }
        wrong(*node, key, said<"'{text}' is not known here">(text),
              said<"look at the other entries">());
        return std::nullopt;
    }

    std::vector<units::DailySpan> hours() {
        std::vector<units::DailySpan> spans;
        const toml::array* array = table["hours"].as_array();
        for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
            const auto span = units::read_daily_span(array->get(i)->value_or(std::string()));
            if (span) {
                spans.push_back(*span);
            } else {
                wrong(*array->get(i), "hours", span.error().front().found,
                      span.error().front().remedy);
            }
        }
        return spans;
    }

    std::optional<scenario::Motor> motor() {
        const toml::table* motor = table["motor"].as_table();
        if (motor == nullptr) {
            return std::nullopt;
        }
        scenario::Motor read;
        read.kind = word(motor->get("kind"), "motor.kind", kinds).value_or(read.kind);
        read.horsepower = quantity<units::Power>(motor->get("horsepower"), "motor.horsepower");
        read.voltage = quantity<units::Voltage>(motor->get("voltage"), "motor.voltage");
        read.code_letter = (*motor)["code_letter"].value<std::string>();
        return read;
    }
};

Appliance read_one(const toml::table& table, units::Errors& errors) {
    Appliance appliance;
    appliance.name = table["name"].value_or(std::string("without a name"));
    Reader reader{table, appliance.name, errors};
    for (const auto& [key, value] : table) {
        if (std::find(known_keys.begin(), known_keys.end(), key.str()) == known_keys.end()) {
            reader.wrong(value, key.str(), said<"is no key of an appliance">(),
                         said<"look at the top of appliances.toml">());
        }
    }
    if (const toml::array* also = table["also"].as_array()) {
        for (const toml::node& other : *also) {
            appliance.also.push_back(other.value_or(std::string()));
        }
    }
    const auto run = reader.range<units::Power>("run");
    if (!run || !table["name"] || !table["source"]) {
        reader.wrong(table, "run", said<"name, run or source is missing">(),
                     said<"give all three">());
    }
    appliance.run = run.value_or(units::Range<units::Power>{});
    if (const auto factor = table["power_factor"].value<double>()) {
        appliance.power_factor = units::PowerFactor(*factor);
    }
    appliance.duty = reader.range<units::Share>("duty");
    appliance.every = reader.range<units::Duration>("every");
    appliance.motor = reader.motor();
    appliance.drives = reader.word(table.get("drives"), "drives", driven_loads);
    if (const auto listed = reader.rising<units::Power>("listed_start", 2)) {
        appliance.listed_start = {ListedStart(listed->front()), ListedStart(listed->back())};
    }
    appliance.from = reader.word(table.get("from"), "from", outlets).value_or(appliance.from);
    appliance.medical = table["medical"].value_or(false);
    appliance.keeps_cold = reader.word(table.get("keeps_cold"), "keeps_cold", kept_cold)
                               .value_or(appliance.keeps_cold);
    appliance.hours = reader.hours();
    appliance.note = said_of_appliances(table["note"].value_or(std::string()));
    appliance.source = said_of_appliances(table["source"].value_or(std::string()));
    return appliance;
}

}  // namespace

units::Result<std::vector<Appliance>> read_appliances(std::string_view text) {
    toml::table file;
    try {
        file = toml::parse(text);
    } catch (const toml::parse_error& error) {
        return units::fail({.where = "appliances",
                            .found = said<"{found}">(error.description()),
                            .remedy = said<"mend the syntax">(),
                            .line = static_cast<int>(error.source().begin.line)});
    }
    units::Errors errors;
    std::vector<Appliance> appliances;
    if (const toml::array* tables = file["appliance"].as_array()) {
        for (const toml::node& node : *tables) {
            if (const toml::table* table = node.as_table()) {
                appliances.push_back(read_one(*table, errors));
            }
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return appliances;
}

}  // namespace motor
