// What nearly every test includes; compiled once.
#pragma once

#include <cmath>
#include <gmock/gmock.h>
#include <string>
#include <vector>

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "support/in_english.hpp"
#include "support/print_quantities.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
