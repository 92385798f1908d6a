// What is known of parts that can be bought: conductors.toml, ampacity.toml, fuses.toml and
// connectors.toml, read once. Every row says where it comes from and how far to trust it.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/quantities.hpp"
#include "units/size.hpp"
#include "wiring/quantities.hpp"
#include "words/said.hpp"

namespace wiring {

enum class Reliability { read, memory, practice, builder };

// "from memory: confirm with the data sheet" and the like; empty for what was read.
[[nodiscard]] words::Said words_for(Reliability reliability);

struct GaugeRow {
    units::AmericanGauge size;
    int strands = 7;
    double circular_mils = 0.0;
    std::optional<double> boat_circular_mils;  // SAE J378/J1127
    ResistancePerLength stranded;              // at 75 degC, plain
    std::optional<ResistancePerLength> solid;
    std::optional<ResistancePerLength> coated;
    words::Said source;
    Reliability reliability{};
};

struct MetricRow {
    units::Area size{};
    ResistancePerLength plain;  // at 20 degC, class 5
    ResistancePerLength tinned;
    std::optional<ResistancePerLength> class2;
    words::Said source;
    Reliability reliability{};
};

struct AmpacityRow {
    units::AmericanGauge size;
    std::vector<units::Current> allowed;  // one a column; zero where there is none
    std::optional<units::Current> largest_fuse;
    Reliability reliability{};
};

enum class AmpacityTable { boat, building, cord };

struct AmpacityColumns {
    std::vector<units::Temperature> insulation;  // of boat and building
    std::vector<int> conductors;                 // of cord
    std::vector<AmpacityRow> rows;               // from thin to thick
    words::Said source;
};

// At `ratio` times its rating a fuse opens after `least` at the earliest and `most` at the latest.
struct OpeningPoint {
    double ratio = 1.0;
    std::optional<units::Duration> least;  // absent: not known
    std::optional<units::Duration> most;   // absent: may never open
};

struct BreakingPoint {
    units::Voltage voltage{};
    units::Current current{};
};

struct FuseFamily {
    std::string name;
    std::vector<std::string> also;
    std::vector<units::Current> sizes;  // rising
    std::vector<BreakingPoint> breaks;  // by rising voltage; empty: no direct-current rating known
    std::optional<units::Voltage> drop;
    std::vector<OpeningPoint> opens;  // by rising ratio; empty where sizes differ or none is known
    struct BySize {
        units::Current up_to{};
        units::Duration at_135{};  // latest opening at 135 %
        units::Duration at_200{};
    };
    std::vector<BySize> opens_by_size;
    words::Said source;
    Reliability reliability{};
};

struct ConnectorRow {
    std::string name;
    std::vector<std::string> also;
    std::optional<units::Current> ul;
    std::optional<units::Current> csa;
    std::optional<units::Resistance> contact;
    std::optional<units::Temperature> hottest;
    std::optional<units::Current> hot_plug;
    std::optional<int> hot_cycles;
    std::optional<int> cycles;
    std::optional<units::Voltage> voltage;
    std::optional<units::WireSize> takes;
    words::Said source;
    Reliability reliability{};
};

[[nodiscard]] const std::vector<GaugeRow>& gauge_rows();    // thin to thick
[[nodiscard]] const std::vector<MetricRow>& metric_rows();  // thin to thick
[[nodiscard]] const AmpacityColumns& ampacity_columns(AmpacityTable table);
[[nodiscard]] const std::vector<FuseFamily>& fuse_families();
[[nodiscard]] const std::vector<ConnectorRow>& connector_rows();

// By name or another word for it, whatever the capitals; null where nothing is called so.
[[nodiscard]] const FuseFamily* find_fuse_family(std::string_view name);
[[nodiscard]] const ConnectorRow* find_connector(std::string_view name);

// Ratings that fuses are made in when no family is named, rising.
//   source  [NEC] 240.6(A) and the smaller blade sizes
[[nodiscard]] const std::vector<units::Current>& standard_sizes();

}  // namespace wiring
