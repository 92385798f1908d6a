// What nearly every file of this room and of those that run outages includes; compiled once.
#pragma once

#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "units/precompiled.hpp"
#include "units/said.hpp"
