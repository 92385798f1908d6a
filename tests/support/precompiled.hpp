// What nearly every test includes; compiled once.
#pragma once

#include <cmath>
#include <gmock/gmock.h>
#include <string>
#include <vector>

#include "support/print_quantities.hpp"
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "units/quantities.hpp"
#include "units/result.hpp"
