#include "elaborate/elaboration.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The direction in which the eyes are stacked, in boat axes.
std::optional<std::array<double, 3>> direction_of(Elaboration& elaboration,
                                                  const ResolvedDeclaration& declaration) {
  const ResolvedProperty* on = declaration.find("on");
  if (on == nullptr)
    return std::array<double, 3>{0.0, 0.0, 1.0};
  const SymbolId spar = elaboration.tree.symbol_at(on->syntax->value.expression().span);
  if (elaboration.tree[spar].poison())
    return std::nullopt;
  const SparFrame* frame = elaboration.read.frame(spar);
  if (frame == nullptr)
    return std::nullopt;
  return frame->axes[2];
}

/// "runner eye" of `runner-eye`.
std::string spaced(std::string name) {
  std::replace(name.begin(), name.end(), '-', ' ');
  return name;
}

class EyeStack {
public:
  EyeStack(Elaboration& elaboration, const ResolvedDeclaration& declaration)
      : elaboration_(elaboration), declaration_(declaration), name_(elaboration.name_of(declaration)) {}

  void run() {
    if (!elaboration_.has_required(declaration_))
      return;
    const auto rise = elaboration_.length(declaration_, "rise");
    const auto direction = direction_of(elaboration_, declaration_);
    const ResolvedProperty* seat = declaration_.find("seat");
    if (!rise || !direction)
      return;
    seat_ = elaboration_.tree.symbol_at(seat->syntax->value.expression().span);
    std::size_t place = 0;
    for (const Stop& stop : declaration_.find("order")->syntax->value.stops) {
      const Expression& stay = stop.expression;
      if (elaboration_.tree.symbol_at(stay.span) == poison_symbol)
        continue;
      const std::vector<StayId> ids =
          elaboration_.stays_named({stay.text, stay.span}, stay.side, stay.span);
      if (ids.size() > 1)
        elaboration_.sink.report(
            diagnose("eye-needs-side", {{"stay", stay.text}, {"stack", name_}})
                .at(stay.span)
                .edit({stay.span.source, stay.span.end, stay.span.end}, ".starboard",
                      "if it is the starboard one, write `" + stay.text + ".starboard`"));
      else if (ids.size() == 1)
        lift(ids.front(), *rise, static_cast<double>(place), *direction, stay);
      ++place;
    }
    look_at_rise(*rise);
  }

private:
  /// Each eye lies on the rope of the one below it.
  void look_at_rise(const Sourced<Length>& rise) {
    const Rig& rig = elaboration_.rig;
    const LineMaterial* thickest = nullptr;
    for (std::size_t i = 0; i + 1 < lifted_.size(); ++i) {
      const LineMaterial& line = rig[rig[lifted_[i]].material];
      if (thickest == nullptr || line.diameter.value > thickest->diameter.value)
        thickest = &line;
    }
    // A little less than the diameter: served rope is pressed flat.
    if (thickest != nullptr && rise.value < thickest->diameter.value * 0.8)
      elaboration_.sink.report(
          diagnose("eye-rise-small", {{"stack", name_},
                                      {"rise", length_text(rise.value)},
                                      {"rope", thickest->name},
                                      {"thickness", length_text(thickest->diameter.value)}})
              .at(rise.provenance.place.value_or(declaration_.syntax->span))
              .and_at(thickest->place, "this rope"));
  }

  void lift(StayId id, const Sourced<Length>& rise, double eyes_below,
            const std::array<double, 3>& direction, const Expression& use) {
    Rig& rig = elaboration_.rig;
    Stay& stay = rig.stays[id.index()];
    const auto seats = elaboration_.points.find(seat_.value);
    const auto at_seat = [&](PointId point) {
      if (seats == elaboration_.points.end())
        return true; // the seat could not be worked out; reported
      const PointFamily& family = seats->second;
      return family.only == point || family.port == point || family.starboard == point;
    };
    if (std::find(lifted_.begin(), lifted_.end(), id) != lifted_.end()) {
      elaboration_.sink.report(
          diagnose("eye-twice", {{"stay", stay.name}, {"stack", name_}}).at(use.span).about(stay.name));
      return;
    }
    lifted_.push_back(id);
    for (const std::string_view name :
         {"order", "seat", "on"}) // these hold no number that could be assumed
      if (const ResolvedProperty* property = declaration_.find(name);
          property != nullptr && elaboration_.read.is_trial(property->syntax->span))
        stay.trials.push_back(std::string(name) + " of " + name_);
    if (stay.path.size() < 2)
      return; // its path could not be read; reported there
    if (!at_seat(stay.path.front().point)) {
      elaboration_.sink.report(
          diagnose("eye-not-at-seat",
                   {{"stay", stay.name}, {"stack", name_}, {"seat", elaboration_.tree[seat_].name}})
              .at(use.span)
              .and_at(stay.place, "the stay")
              .about(stay.name));
      return;
    }
    if (eyes_below == 0.0)
      return; // it sits on the seat itself
    Point eye = rig[stay.path.front().point];
    // Papers say where on the boat it sits, not whose it is: they say that anyhow.
    eye.title = spaced(eye.base.empty() ? eye.name : eye.base) + ", eye " +
                std::to_string(static_cast<int>(eyes_below) + 1) + " from below";
    eye.name = name_ + "/" + stay.name;
    eye.base = eye.name;
    eye.side = stay.side;
    eye.twin = std::nullopt;
    eye.position.x = eye.position.x + rise.value * (eyes_below * direction[0]);
    eye.position.y = eye.position.y + rise.value * (eyes_below * direction[1]);
    eye.position.z = eye.position.z + rise.value * (eyes_below * direction[2]);
    const std::vector<std::string> assumed = rise.provenance.assumptions;
    eye.provenance.source_class = SourceClass::computed;
    eye.provenance.note = "from the seat and the eyes below it";
    eye.provenance.assumptions.insert(eye.provenance.assumptions.end(), assumed.begin(), assumed.end());
    stay.path.front().point = PointId{static_cast<std::uint32_t>(rig.points.size())};
    rig.points.push_back(std::move(eye));
  }

  Elaboration& elaboration_;
  const ResolvedDeclaration& declaration_;
  std::string name_;
  SymbolId seat_;
  std::vector<StayId> lifted_;
};

} // namespace

void elaborate_eye_stacks(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (declaration.kind->category == Category::eye_stack && declaration.symbol != poison_symbol)
      EyeStack(elaboration, declaration).run();
}

} // namespace sheerpole
