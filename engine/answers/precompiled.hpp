// What nearly every file of this room includes; compiled once.
#pragma once

#include "answers/answer.hpp"
#include "answers/shown.hpp"
#include "outage/ready.hpp"
#include "questions/found.hpp"
#include "scenario/scenario.hpp"
#include "units/precompiled.hpp"
#include "units/said.hpp"
