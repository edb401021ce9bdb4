#pragma once

#include "calculate/adjust/account.hpp"
#include "calculate/behaviour/tension.hpp"
#include "calculate/bench/bench_marks.hpp"
#include "calculate/change/line_fate.hpp"
#include "calculate/change/sensitivity.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/reading/length_routes.hpp"
#include "model/rig.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// A term of a length: "bury aloft", "2 x toggle-12", "turnbuckle-58, 50 % open", "lashing-9, gap 160 mm".
std::string term_name(const Rig& rig, const Term& term);

/// "pin-to-pin", "body", "cut".
std::string_view name_of(SumKind kind);

/// The stated number that the account of a term begins with, in the way in which a file states it: "72 d"
/// of "72 d x 9 mm", "8 %" of "8 % of 648 mm". Empty when it begins with none.
std::string stated_in(const Remark& how);

/// The way to a pin-to-pin length as one word, for tables and data files: reading, stated, path, unknown.
std::string_view name_of(LengthRoute route);

/// The value of a sum: "11381.73 mm"; with an unknown length "X", "X + 1003.3 mm", "X - 609.6 mm".
std::string sum_text(const Rig& rig, const LengthSum& sum);

/// A mark on the bench: "throat aloft, on the tail".
std::string mark_name(const BenchMark& mark);

/// "swing", "pulse", "stretch".
std::string_view name_of(TensionMethod method);

/// "stays as it is", "hangs as it is", "can be remade", "is to be replaced", "is new", "comes off", "not
/// checked".
std::string_view name_of(LineFate fate);

/// "10 mm up", "1 deg further aft".
std::string_view name_of(SmallChange change);

/// What the least engagement of a thread is: "one diameter", or by the rig's own limits "150 % of the
/// diameter".
std::string least_engagement_words(const Rig& rig, const Part& part);

} // namespace sheerpole
