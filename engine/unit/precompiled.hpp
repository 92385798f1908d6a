// What nearly every file of this room and of those that ask of a unit includes; compiled once.
#pragma once

#include "scenario/scenario.hpp"
#include "unit/built.hpp"
#include "units/precompiled.hpp"
#include "units/said.hpp"
