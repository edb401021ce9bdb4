#pragma once

#include "rules/check_table.hpp"

/// Checks on strength, loads and what lines are made of, each in the file of its slug. What each finds is
/// said in diagnostics/*_findings.cpp, where it draws the line in model/limits.cpp.
namespace sheerpole {} // namespace sheerpole
