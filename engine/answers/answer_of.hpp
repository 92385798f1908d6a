// What was found, in words: one answer a question.
#pragma once

#include "answers/answer.hpp"
#include "questions/found.hpp"

namespace answers {

[[nodiscard]] Answer answer_of(const questions::ReadFound& found);
[[nodiscard]] Answer answer_of(const questions::OutageFound& found);
[[nodiscard]] Answer answer_of(const questions::PacksFound& found);
[[nodiscard]] Answer answer_of(const questions::SunFound& found);
[[nodiscard]] Answer answer_of(const questions::StartFound& found);
[[nodiscard]] Answer answer_of(const questions::WiringFound& found);
[[nodiscard]] Answer answer_of(const questions::CompareFound& found);
[[nodiscard]] Answer answer_of(const questions::JoinFound& found);
[[nodiscard]] Answer answer_of(const questions::GaugeFound& found);
[[nodiscard]] Answer answer_of(const questions::StorageFound& found);
[[nodiscard]] Answer answer_of(const questions::NowFound& found);
[[nodiscard]] Answer answer_of(const questions::LearntFound& found);
[[nodiscard]] Answer answer_of(const questions::Found& found);

}  // namespace answers
