#pragma once

#include "calculate/strength/load_screening.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string_view>

namespace sheerpole {

/// The numbers that one `load-screening` rests on. What is taken is written into the screening, and what is
/// lacking is said there.
class ScreeningInputs {
public:
  ScreeningInputs(const Rig& rig, const Record& record, LoadScreening& screening)
      : rig_(rig), record_(record), screening_(screening) {}

  /// A plain number of the record; `otherwise` when it is not stated, with where that is from.
  std::optional<double> number(std::string_view name);
  double number(std::string_view name, double otherwise, Derivation source);

  /// Newton metres: of the record, else of the boat. With `at_thirty` that of the boat counts only when it
  /// is stated at 30 degrees.
  std::optional<double> righting_moment(bool at_thirty);

  /// Of the record.
  std::optional<Force> side_force();

  /// Of the record, else the distance of this chainplate from the middle of the boat.
  std::optional<Length> half_beam(const Point* chainplate);

  void taken(Remark name, Quantity value, Provenance provenance, Remark how = {});
  void lacks(Remark what) { screening_.not_checked.push_back(std::move(what)); }
  /// Says which of these the record states without the method asking for it.
  void not_used(std::initializer_list<std::string_view> names);

private:
  const Rig& rig_;
  const Record& record_;
  LoadScreening& screening_;
};

/// Each method for one side of the stay, its result without the name of the side.
void screen_by_share(const Rig& rig, const Record& record, const Stay& stay, LoadScreening& screening);
void screen_by_equilibrium(const Rig& rig, const Record& record, const Stay& stay,
                           LoadScreening& screening);

} // namespace sheerpole
