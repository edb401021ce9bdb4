#pragma once

#include "calculate/derived.hpp"
#include "model/piece_state.hpp"

#include <cstddef>
#include <functional>
#include <string>

namespace sheerpole {

/// What a length was read by: "by tape, 2026-05-02", "by the cord", "as stated", "by measured points".
/// Empty when nothing was read.
std::string measured_words(const Rig& rig, const DerivedStay& stay);

/// What holds it against a second measurement: "confirmed by a second run to 2 mm", "confirmed by laser,
/// 2026-05-09, to 3 mm". Empty when nothing does.
/// `length_words` as in state_words().
std::string confirmed_words(const Rig& rig, const DerivedStay& stay,
                            const std::function<std::string(Length)>& length_words = {});

/// The line that says the state of a piece, on every paper: "NOT MEASURED: nothing was read in place, order
/// by it and cut nothing", "FROM DRAWING: not measured in place; new mast, built to the drawing", "MEASURED
/// ONCE: by tape, 2026-05-02", "READY: by tape, 2026-05-02; confirmed by a second run to 2 mm".
/// Where another way gives another length the line says so and READY is not in it: "WAYS DIFFER: by tape,
/// 2026-05-02; the stated length gives 90 mm less. Measure again before you cut".
/// `own_length`: a line with a length of its own, which follows from no measurement. `length_words` writes
/// the lengths of a paper that has one unit; without it they are whole millimetres, rounded up.
std::string state_words(const Rig& rig, const DerivedStay& stay, PieceState state, bool own_length,
                        const std::function<std::string(Length)>& length_words = {});

/// The same of a piece that is on record: "ON RECORD: cut 2026-04-01; made 2026-04-02, 11250 mm from
/// bearing to bearing. Cut no second one". `piece` is its place among those of the stay; `length_words` as
/// above.
std::string record_words(const Rig& rig, const DerivedStay& stay, std::size_t piece,
                         const std::function<std::string(Length)>& length_words = {});

/// Why a reading was not taken: "an older one", "another one is stated to count".
std::string passed_over_words(const Rig& rig, const DerivedStay& stay, const OtherReading& other);

/// "tape, 2026-05-02, owner", as far as it is stated; of a cord with its mark.
std::string reading_name(const Reading& reading);

} // namespace sheerpole
