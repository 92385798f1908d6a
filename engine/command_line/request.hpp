// A question with its options, as read from the arguments.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "units/time.hpp"
#include "words/language.hpp"

namespace command_line {

struct Question;

enum class Face { text, json, jsonl, csv, html, svg };

struct Request {
    const Question* question = nullptr;  // a row of questions(); set whenever arguments were read
    std::vector<std::string> arguments;  // as given; of many files, without the other ones
    std::string file;                    // "-" is standard input
    Face face = Face::text;
    bool face_given = false;
    bool full = false;
    bool ascii = false;
    std::optional<words::Language> asked_language;  // absent: the locale's
    bool us_units = false;
    bool twelve_hours = false;
    words::Language language;  // of all that is printed for people
    std::uint64_t seed = 1;
    std::vector<std::string> set;           // KEY=VALUE as written
    std::vector<std::string> weather_from;  // folders a weather file may lie in besides FILE's own

    // Of many files.
    std::vector<std::string> more_files;    // the first of many is `file`
    std::optional<std::string> files_from;  // a file with their names; "-" is standard input
    std::optional<std::string> resume;      // lines that are answered already
    bool quiet = false;                     // no progress and no counts

    // Of single questions.
    std::optional<int> members;  // outage, sun, packs; absent: as many as sizing::usual_blocks says
    std::optional<int> panels;   // sun: tried up to this many
    bool after_storage = false;  // outage
    std::optional<std::string> pack;     // join, gauge: a name; the others below as written
    std::optional<std::string> at_most;  // join
    std::optional<std::string> reads;    // gauge, and so to --now
    std::optional<std::string> under;
    std::optional<std::string> rested;
    std::optional<std::string> accuracy;
    std::optional<std::string> now;
    std::optional<std::string> on;    // storage
    std::optional<std::string> at;    // note, now: as written
    std::optional<std::string> take;  // learnt: what to write into the file
    std::vector<std::string> lines;   // note: what to write down; "-" is those of standard input
    std::optional<units::LocalTime> clock;  // of the computer, local standard time
    std::string other_file;                 // compare; the new build beside the old one in `file`
    std::optional<int> most_packs;          // packs; absent: 16
    std::optional<int> most_panels;         // packs; absent: 12, or as many as time allows
    unsigned threads = 0;
    std::function<bool(double)> progress;  // packs: told the share done; false stops it
};

}  // namespace command_line
