#include "answers/answer_of.hpp"

#include "answers/compare/answer.hpp"
#include "answers/gauge/answer.hpp"
#include "answers/join/answer.hpp"
#include "answers/learnt/answer.hpp"
#include "answers/now/answer.hpp"
#include "answers/outage/answer.hpp"
#include "answers/packs/answer.hpp"
#include "answers/read/answer.hpp"
#include "answers/start/answer.hpp"
#include "answers/storage/answer.hpp"
#include "answers/sun/answer.hpp"
#include "answers/weather_part.hpp"
#include "answers/wiring/answer.hpp"

namespace answers {

namespace {

Answer with(Answer answer, const scenario::Assumptions& assumed) {
    answer.assumptions.insert(answer.assumptions.end(), assumed.begin(), assumed.end());
    return answer;
}

}  // namespace

Answer answer_of(const questions::ReadFound& found) {
    auto answer = read_answer(found.read, found.loads);
    if (found.weather) add_weather(answer, *found.read.scenario.place.weather_file, *found.weather);
    return answer;
}

Answer answer_of(const questions::OutageFound& found) {
    return with(outage_answer(found.scenario, found.plan, found.plan.more_packs, found.chance,
                              found.starts),
                found.assumed);
}

Answer answer_of(const questions::PacksFound& found) {
    return packs_answer(found);
}

Answer answer_of(const questions::SunFound& found) {
    return sun_answer(found.scenario, found.results);
}

Answer answer_of(const questions::StartFound& found) {
    const auto& starts = found.starts;
    return with(start_answer(starts.scenario, starts.plan, starts.assumptions), found.assumed);
}

Answer answer_of(const questions::WiringFound& found) {
    return with(wiring_answer(found.scenario, found.fit, found.ways), found.assumed);
}

Answer answer_of(const questions::CompareFound& found) {
    return compare_answer(found);
}

Answer answer_of(const questions::JoinFound& found) {
    return with(join_answer(found.scenario, found.joining), found.assumed);
}

Answer answer_of(const questions::GaugeFound& found) {
    return with(gauge_answer(found.scenario, found.reading, found.charge, found.from_now),
                found.assumed);
}

Answer answer_of(const questions::StorageFound& found) {
    return storage_answer(found.scenario, found.stored);
}

Answer answer_of(const questions::NowFound& found) {
    return now_answer(found.scenario, found.at, found.outlook);
}

Answer answer_of(const questions::LearntFound& found) {
    return learnt_answer(found.scenario, found.learnt);
}

Answer answer_of(const questions::Found& found) {
    return std::visit([](const auto& one) { return answer_of(one); }, found);
}

}  // namespace answers
