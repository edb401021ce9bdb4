#pragma once

#include "diagnostics/sink.hpp"
#include "kinds/property_row.hpp"
#include "syntax/syntax_tree.hpp"
#include "units/dimension.hpp"
#include "units/parse_quantity.hpp"

#include <string>

namespace sheerpole {

/// Reports a list, a path, or a word such as `free` where one value belongs; false when it did. `what`
/// names the value behind "the": "length of toggle-12".
bool one_value(const Value& value, const std::string& what, DiagnosticSink& sink);

/// Reports the words `free`, `clamped` and `ends` outside a path; false when it did.
bool no_passage(const Value& value, const std::string& what, DiagnosticSink& sink);

/// A number or a unit that can not be read, with the likeliest spelling as the edit.
void report_unreadable(const Expression& expression, const QuantityError& error, DiagnosticSink& sink);
void report_unknown_unit(const Name& unit, DiagnosticSink& sink);

/// Of a length in feet or inches: that its fraction is on no rule, and what feet with a decimal come to in
/// feet and inches.
void report_feet_as_written(const Expression& expression, const std::string& text, const Quantity& length,
                            DiagnosticSink& sink);

/// A text, a date or a word where a number belongs; a number in quotes gets the edit to take them off.
void report_no_number(const Expression& expression, DiagnosticSink& sink);

/// Two things that can not be added, such as a length and a force; a bare number beside a unit is a missing
/// unit.
void report_mixed_sum(const Expression& expression, const Quantity& left, const Quantity& right,
                      bool addition, DiagnosticSink& sink);

/// A value of another dimension than the property takes: a missing unit, a mass for a force, or just
/// another one.
void report_wrong_dimension(const std::string& what, const PropertyRow& row, const Expression& expression,
                            Dimension found, DiagnosticSink& sink);

/// A tolerance of another dimension than its value allows.
void report_wrong_tolerance(const std::string& what, const Value& value, Dimension wanted, Dimension found,
                            DiagnosticSink& sink);

} // namespace sheerpole
