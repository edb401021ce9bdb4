#include "calculate/geometry/junctions.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"

#include <map>
#include <optional>
#include <utility>

/// Pins on which several stays pull.
namespace sheerpole::shared_pins {

namespace {

using Common = AnyCheckPhrase;

using P = StrengthCheckPhrase;

/// The point that a stay ends on and the chainplate at the end of its stack.
using PlatePin = std::pair<std::uint32_t, std::uint32_t>;

std::optional<PlatePin> plate_pin(const Rig& rig, const Stay& stay) {
  if (stay.path.empty() || stay.stack.empty())
    return std::nullopt;
  const StackItem& lowest = stay.stack.back();
  if (lowest.kind != StackItem::Kind::part || rig[lowest.part].role != Part::Role::boat_fitting)
    return std::nullopt;
  return PlatePin{stay.path.back().point.value, lowest.part.value};
}

/// The pin by which a stay hangs on its chainplate; null when no jaw is stated there.
const ChainLink* lowest_pin(const Stay& stay, const StayChain& chain) {
  for (auto link = chain.links.rbegin(); link != chain.links.rend(); ++link) {
    if (link->kind == LinkKind::pin)
      return &*link;
    const bool is_plate = link->kind == LinkKind::part && link->item + 1 == stay.stack.size();
    if (!is_plate && link->kind != LinkKind::hole)
      return nullptr;
  }
  return nullptr;
}

/// What one shared pin came to, in words that are the same on both sides when the sides are alike.
struct SharedPin {
  CheckOutcome outcome = CheckOutcome::not_checked;
  Remark remark;
  std::string words;
};

class SharedPins {
public:
  SharedPins(const Rig& rig, const Derived& derived, double factor, CheckReport& report)
      : rig_(rig), derived_(derived), factor_(factor), report_(report) {}

  void look() {
    std::map<PlatePin, std::vector<const DerivedStay*>> by_pin;
    for (const DerivedStay& stay : derived_.stays)
      if (const auto pin = plate_pin(rig_, rig_[stay.stay]))
        by_pin[*pin].push_back(&stay);
    std::map<PlatePin, SharedPin> shared;
    for (const auto& [pin, stays] : by_pin)
      if (stays.size() > 1)
        shared.emplace(pin, look_at(stays));
    for (const auto& [pin, result] : shared)
      hand_on(pin, result, twin_of(pin, shared), *by_pin[pin].front());
  }

private:
  SharedPin look_at(const std::vector<const DerivedStay*>& stays) const {
    Remarks names;
    Remarks lacking;
    std::string sum_words;
    Force sum;
    std::optional<Force> pin;
    Remark pin_how;
    for (const DerivedStay* derived : stays) {
      const Stay& stay = rig_[derived->stay];
      names.all.push_back({Common::as_it_is, {Words{stay.base}}});
      const auto load = load_of(rig_, derived->stay);
      if (load) {
        sum += load->value;
        sum_words += (sum_words.empty() ? "" : " + ") + force_text(load->value);
      } else {
        lacking.all.push_back({P::lacks_of, {Words{"load"}, Words{stay.base}}});
      }
      const ChainLink* link = lowest_pin(stay, derived->chain);
      if (link != nullptr && link->break_load && (!pin || *link->break_load < *pin)) {
        pin = link->break_load;
        pin_how = link->how;
      }
    }
    if (!pin)
      lacking.all.push_back(P::pin_lacks);
    if (!lacking.all.empty())
      return shared(CheckOutcome::not_checked, {P::shared_not_stated, {names, lacking}});
    const double times = *pin / sum;
    return shared(
        is_below(times, factor_) ? CheckOutcome::finding : CheckOutcome::pass,
        {P::pull_on_one_pin, {names, Words{sum_words}, sum, *pin, Remarks{{pin_how}}, Fixed{times, 2}}});
  }

  SharedPin shared(CheckOutcome outcome, const Remark& remark) const {
    return {outcome, remark, say(rig_, remark)};
  }

  const SharedPin* twin_of(const PlatePin& pin, const std::map<PlatePin, SharedPin>& shared) const {
    const auto& twin = rig_.points[pin.first].twin;
    if (!twin)
      return nullptr;
    const auto found = shared.find({twin->value, pin.second});
    return found == shared.end() ? nullptr : &found->second;
  }

  void hand_on(const PlatePin& pin, const SharedPin& result, const SharedPin* twin,
               const DerivedStay& first) {
    const Point& point = rig_.points[pin.first];
    const bool alike = twin != nullptr && twin->words == result.words;
    if (alike && point.twin->value < pin.first)
      return; // said of the other side
    const std::string& place = alike ? point.base : point.name;
    if (result.outcome == CheckOutcome::not_checked) {
      report_.not_checked(place, result.words);
    } else if (result.outcome == CheckOutcome::pass) {
      report_.pass(place, {Common::at_least, {Remarks{{result.remark}}, Fixed{factor_, 2}}});
    } else {
      const Stay& stay = rig_[first.stay];
      report_.find(diagnose("shared-pin-weak",
                            {{"point", place}, {"words", result.words}, {"least", times_text(factor_)}})
                       .at(stay.stack.back().place, said(P::pin_they_share))
                       .about(place));
    }
  }

  const Rig& rig_;
  const Derived& derived_;
  double factor_;
  CheckReport& report_;
};

void check_shared_pin_weak(const Rig& rig, const Derived& derived, CheckReport& report) {
  if (const auto factor = rig.limits.value(Limit::break_factor))
    SharedPins(rig, derived, *factor, report).look();
}

} // namespace

const CheckTable checks{CheckRow{"shared-pin-weak", check_shared_pin_weak, {Limit::break_factor}}};

} // namespace sheerpole::shared_pins
