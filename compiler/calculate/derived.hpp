#pragma once

#include "calculate/adjust/account.hpp"
#include "calculate/adjust/first_fit.hpp"
#include "calculate/adjust/fit_stack.hpp"
#include "calculate/adjust/removable_parts.hpp"
#include "calculate/adjust/take_up.hpp"
#include "calculate/behaviour/replacement.hpp"
#include "calculate/behaviour/tension.hpp"
#include "calculate/behaviour/thermal_table.hpp"
#include "calculate/bench/hoisted_fit.hpp"
#include "calculate/cut/piece.hpp"
#include "calculate/joints/joint.hpp"
#include "calculate/length/measurement.hpp"
#include "calculate/length/pin_to_pin.hpp"
#include "calculate/strength/load_screening.hpp"
#include "calculate/strength/stay_chain.hpp"
#include "calculate/uncertainty/uncertainty.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole {

/// Everything calculated for one stay.
struct DerivedStay {
  StayId stay;
  LengthRoute route = LengthRoute::unknown;
  LengthSum pin_to_pin;
  std::vector<RouteComparison> other_routes;
  ReadingChoice readings = {};
  Measurement measurement = {};
  std::vector<Remark> not_corrected = {}; ///< corrections that the reading taken could not be given
  LengthSum body;                         ///< pin-to-pin less the hardware; all bodies of the stay together
  std::vector<Piece> pieces;              ///< from aloft to deck
  std::vector<TakeUp> adjusters;          ///< from aloft to deck
  std::vector<Joint> joints = {};         ///< from aloft to deck, each with what was compared
  ThermalTable thermal = {};              ///< at the usual temperatures
  std::vector<TensionEstimate> tensions = {};
  std::optional<Sag> sag = {};
  std::optional<Replacement> replacement = {};
  std::vector<Fit> fits = {};
  Play play = {}; ///< what the parts that can be taken out or put in add to the adjusters
  std::optional<Uncertainty> uncertainty = {}; ///< of the cut; nothing when no bound is stated
  Account account = {};
  std::optional<FirstFit> first_fit = {};     ///< of a stay whose splices go by equals-first-creep
  std::optional<HoistedFit> hoisted_fit = {}; ///< nothing without a line
  StayChain chain = {};                       ///< what each link holds
};

/// Everything calculated for the rig, in the order of its stays.
struct Derived {
  std::vector<DerivedStay> stays;
  std::vector<UncertainInput> inputs = {};         ///< every input with a bound or a scatter
  std::size_t draws = 100'000;                     ///< of the Monte Carlo method
  std::uint64_t seed = 1;                          ///< of its random numbers
  std::vector<DerivedPosition> positions;          ///< in the order of states and their positions
  std::vector<LoadScreening> load_screenings = {}; ///< in the order of the file
};

} // namespace sheerpole
