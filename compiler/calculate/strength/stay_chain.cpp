#include "calculate/strength/stay_chain.hpp"

#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/strength/force_text.hpp"
#include "calculate/strength/lashing_strength.hpp"
#include "calculate/strength/pin_strength.hpp"
#include "calculate/strength/weakest_link.hpp"
#include "units/format_length.hpp"
#include "units/named_size.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::string_view pin_strength_facts = "pin-stress or pin-break-load";

std::string stress_text(double pascals) {
  return format_number(pascals / 1e6) + " MPa";
}

/// A diameter with where it is from.
struct Thickness {
  Length length;
  Provenance provenance;
};

class Chain {
public:
  Chain(const Rig& rig, StayId stay, const std::vector<Joint>& joints)
      : rig_(rig), stay_(rig[stay]), joints_(joints) {}

  StayChain run() {
    add_outer_pin(true);
    for (std::size_t i = 0; i < stay_.stack.size(); ++i) {
      if (stay_.stack[i].kind == StackItem::Kind::line)
        add_line(i);
      else if (rig_[stay_.stack[i].part].role != Part::Role::worn)
        add_part(i);
      if (const Joint* joint = joint_below(i))
        add_joint(*joint);
    }
    add_outer_pin(false);
    compare();
    return std::move(chain_);
  }

private:
  const Part& part_at(std::size_t item) const { return rig_[stay_.stack[item].part]; }
  const LineMaterial& line_at(std::size_t item) const {
    return rig_[stay_.stack[item].material.value_or(stay_.material)];
  }
  const Joint* joint_below(std::size_t item) {
    // Joints stand in the order of the stack.
    if (next_joint_ < joints_.size() && joints_[next_joint_].upper == item)
      return &joints_[next_joint_++];
    return nullptr;
  }

  ChainLink link_of(LinkKind kind, std::size_t item, std::string name) const {
    ChainLink link;
    link.kind = kind;
    link.item = item;
    link.name = std::move(name);
    if (stay_.stack[item].kind == StackItem::Kind::part)
      link.meant = fact_text(part_at(item).particulars, "weak-link");
    return link;
  }
  void add(ChainLink link) { chain_.links.push_back(std::move(link)); }

  void add_line(std::size_t item) {
    add_splice(item, WhichEnd::upper);
    const LineMaterial& material = line_at(item);
    ChainLink link = link_of(line_kind(item), item, material.name);
    if (material.break_load) {
      link.break_load = material.break_load->value;
      link.how = "as stated";
      link.provenance = material.break_load->provenance;
    } else {
      link.not_stated = {{"break-load", material.name}};
    }
    add(std::move(link));
    add_splice(item, WhichEnd::lower);
  }

  LinkKind line_kind(std::size_t item) const {
    return stay_.stack[item].material.value_or(stay_.material) == stay_.material ? LinkKind::line
                                                                                 : LinkKind::other_line;
  }

  void add_splice(std::size_t item, WhichEnd where) {
    const LineMaterial& material = line_at(item);
    const LineEnd end = line_end(rig_, stay_, item, where);
    if (material.kind != LineMaterial::Kind::rope || end.bare())
      return;
    const std::string at = where == WhichEnd::upper ? " aloft" : " below";
    if (!end.item->splice) {
      ChainLink link = link_of(line_kind(item), item, material.name + ", its end" + at);
      link.not_stated = {{"splice", material.name + at}};
      add(std::move(link));
      return;
    }
    const Splice& splice = rig_[*end.item->splice];
    ChainLink link = link_of(line_kind(item), item, material.name + ", " + splice.name + at);
    const auto efficiency = fact_number(splice.particulars, "efficiency");
    if (!efficiency)
      link.not_stated.push_back({"efficiency", splice.name});
    if (!material.break_load)
      link.not_stated.push_back({"break-load", material.name});
    if (link.not_stated.empty()) {
      const double factors[] = {efficiency->value};
      link.break_load = reduced_break_load(material.break_load->value, factors);
      link.how = force_text(material.break_load->value) + " x " + percent_text(efficiency->value) +
                 ", efficiency of " + splice.name;
      link.provenance = combine({&material.break_load->provenance, &efficiency->provenance}, "");
    }
    add(std::move(link));
  }

  void add_part(std::size_t item) {
    const Part& part = part_at(item);
    const bool lashed = part.kind == "lashing";
    if (lashed)
      add_lashing(item);
    const auto stated = fact_force(part.particulars, "break-load");
    // A soft eye is the rope itself, and the cord of a lashing is looked at as such.
    if (!stated && (lashed || part.kind == "soft-eye"))
      return;
    ChainLink link = link_of(LinkKind::part, item, part.name);
    if (stated) {
      link.break_load = stated->value;
      link.how = "as stated";
      link.provenance = stated->provenance;
    } else {
      link.not_stated = {{"break-load", part.name}};
    }
    add(std::move(link));
  }

  void add_lashing(std::size_t item) {
    const Part& part = part_at(item);
    const std::optional<int>& passes = stay_.stack[item].passes;
    ChainLink link = link_of(LinkKind::lashing, item, "cord of " + part.name);
    const LineMaterial* cord = nullptr;
    if (const Particular* named = find_fact(part.particulars, "cord");
        named != nullptr && !named->names.empty())
      for (const LineMaterial& material : rig_.materials)
        if (material.name == named->names.front())
          cord = &material;
    const auto knot = fact_number(part.particulars, "knot-factor");
    const auto legs = rig_.limits.value(Limit::lashing_legs);
    if (cord == nullptr)
      link.not_stated.push_back({"cord", part.name});
    else if (!cord->break_load)
      link.not_stated.push_back({"break-load", cord->name});
    if (!passes)
      link.not_stated.push_back({"passes", part.name});
    if (!knot)
      link.not_stated.push_back({"knot-factor", part.name});
    if (!legs)
      link.not_stated.push_back({"lashing-legs", "the limits"});
    if (link.not_stated.empty()) {
      if (const auto one_leg = lashing_strength_by_legs(cord->break_load->value, *passes, knot->value))
        link.break_load = *legs * *one_leg;
      link.how = std::to_string(*passes) + (*passes == 1 ? " pass x " : " passes x ") +
                 format_number(*legs) + (*legs == 1.0 ? " leg x " : " legs x ") +
                 force_text(cord->break_load->value) + " of " + cord->name + " x " +
                 percent_text(knot->value) + " in the knot";
      link.provenance = combine({&cord->break_load->provenance, &knot->provenance}, "");
    }
    add(std::move(link));
  }

  void add_joint(const Joint& joint) {
    const End* above = upper_end(rig_, joint);
    const End* below = lower_end(rig_, joint);
    const bool jaw_above = above != nullptr && above->type == "jaw";
    const bool jaw_below = below != nullptr && below->type == "jaw";
    if (jaw_above)
      add_pin(joint.upper, *above, worn_in(joint, "pin"));
    else if (jaw_below)
      add_pin(joint.lower, *below, worn_in(joint, "pin"));
    if (jaw_above && below != nullptr && below->type == "eye")
      add_hole(joint, joint.lower, *below, *above);
    else if (jaw_below && above != nullptr && above->type == "eye")
      add_hole(joint, joint.upper, *above, *below);
  }

  /// The pin by which a stack whose fittings on the boat are not named hangs on them.
  void add_outer_pin(bool aloft) {
    if (joints_.empty())
      return;
    const Joint& joint = aloft ? joints_.front() : joints_.back();
    const std::size_t item = aloft ? joint.upper : joint.lower;
    if (stay_.stack[item].kind == StackItem::Kind::line || part_at(item).role == Part::Role::boat_fitting)
      return;
    const Part& part = part_at(item);
    const bool turned = aloft ? joint.upper_turned : joint.lower_turned;
    const End& end = aloft != turned ? part.upper : part.lower;
    if (end.type == "jaw")
      add_pin(item, end, nullptr);
  }

  /// What is worn in a joint: a pin, a bush; null when there is none.
  const Part* worn_in(const Joint& joint, std::string_view kind) const {
    for (std::size_t i = joint.upper + 1; i < joint.lower; ++i)
      if (stay_.stack[i].kind == StackItem::Kind::part && part_at(i).kind == kind)
        return &part_at(i);
    return nullptr;
  }

  static std::optional<Thickness> pin_thickness(const End& jaw, const Part* pin) {
    if (pin != nullptr)
      if (const Particular* size = find_fact(pin->particulars, "size"))
        if (auto read = parse_named_size(size->text); read.ok())
          return Thickness{read.value().diameter, size->value.provenance};
    if (const EndDimension* stated = jaw.find("pin"))
      return Thickness{stated->length.value, stated->length.provenance};
    return std::nullopt;
  }

  void add_pin(std::size_t item, const End& jaw, const Part* pin) {
    const Part& owner = pin != nullptr ? *pin : part_at(item);
    ChainLink link = link_of(LinkKind::pin, item, pin != nullptr ? pin->name : "pin of " + owner.name);
    auto stated = fact_force(owner.particulars, "pin-break-load");
    if (!stated && pin != nullptr)
      stated = fact_force(owner.particulars, "break-load");
    const auto thickness = pin_thickness(jaw, pin);
    const auto stress = fact_number(owner.particulars, "pin-stress");
    if (stated) {
      link.break_load = stated->value;
      link.how = "as stated, in double shear";
      link.provenance = stated->provenance;
    } else if (thickness && stress) {
      link.break_load = pin_shear_strength(thickness->length, stress->value);
      link.how = "double shear, 2 x pi/4 x (" + length_text(thickness->length) + ")^2 x " +
                 stress_text(stress->value);
      link.provenance = combine({&stress->provenance, &thickness->provenance}, "");
    }
    if (!link.break_load) {
      link.how.clear();
      if (!stress)
        link.not_stated.push_back({std::string(pin_strength_facts), owner.name});
      else
        link.not_stated.push_back({"pin", "the jaw of " + part_at(item).name});
    }
    add(std::move(link));
  }

  void add_hole(const Joint& joint, std::size_t item, const End& eye, const End& jaw) {
    const Part& part = part_at(item);
    ChainLink link = link_of(LinkKind::hole, item, "hole of " + part.name);
    const auto stress = fact_number(part.particulars, "bearing-stress");
    const EndDimension* plate = eye.find("thickness");
    const EndDimension* hole = eye.find("hole");
    auto pin = pin_thickness(jaw, worn_in(joint, "pin"));
    if (worn_in(joint, "bush") != nullptr && hole != nullptr)
      pin = Thickness{hole->length.value, hole->length.provenance};
    if (!stress)
      link.not_stated.push_back({"bearing-stress", part.name});
    if (plate == nullptr)
      link.not_stated.push_back({"thickness", part.name});
    if (!pin)
      link.not_stated.push_back({"pin", "the jaw at " + part.name});
    link.counted = stress.has_value();
    if (link.not_stated.empty()) {
      link.break_load = bearing_strength(pin->length, plate->length.value, stress->value, 1.0);
      link.how = length_text(pin->length) + " x " + length_text(plate->length.value) + " x " +
                 stress_text(stress->value);
      link.provenance = combine({&stress->provenance, &plate->length.provenance, &pin->provenance}, "");
    }
    // A plate of no thickness is no plate that anybody has measured.
    if (!link.break_load && link.not_stated.empty())
      link.not_stated.push_back({"thickness", part.name});
    add(std::move(link));
  }

  /// The weakest known of the links that are counted, of the stay's own line alone or of all.
  std::optional<std::size_t> weakest_of(bool line_alone, std::vector<std::size_t>& unknown) const {
    std::vector<std::size_t> looked_at;
    std::vector<std::optional<Force>> loads;
    for (std::size_t i = 0; i < chain_.links.size(); ++i)
      if (chain_.links[i].counted && (!line_alone || chain_.links[i].kind == LinkKind::line)) {
        looked_at.push_back(i);
        loads.push_back(chain_.links[i].break_load);
      }
    const auto found = weakest_link(loads);
    if (!found)
      return std::nullopt;
    for (const std::size_t i : found->unknown)
      unknown.push_back(looked_at[i]);
    return found->weakest_known ? std::optional(looked_at[*found->weakest_known]) : std::nullopt;
  }

  void compare() {
    std::vector<std::size_t> unknown_line;
    chain_.line = weakest_of(true, unknown_line);
    chain_.weakest = weakest_of(false, chain_.unknown);
  }

  const Rig& rig_;
  const Stay& stay_;
  const std::vector<Joint>& joints_;
  std::size_t next_joint_ = 0;
  StayChain chain_;
};

} // namespace

StayChain stay_chain(const Rig& rig, StayId stay, const std::vector<Joint>& joints) {
  return Chain(rig, stay, joints).run();
}

std::string unknown_words(const StayChain& chain) {
  std::vector<std::pair<std::string, std::vector<std::string>>> by_property;
  for (const std::size_t i : chain.unknown)
    for (const UnstatedStrength& lacking : chain.links[i].not_stated) {
      const auto known = std::find_if(by_property.begin(), by_property.end(),
                                      [&](const auto& one) { return one.first == lacking.property; });
      auto& owners = known == by_property.end()
                         ? by_property.emplace_back(lacking.property, std::vector<std::string>{}).second
                         : known->second;
      if (std::find(owners.begin(), owners.end(), lacking.of) == owners.end())
        owners.push_back(lacking.of);
    }
  std::string words;
  for (const auto& [property, owners] : by_property) {
    words += (words.empty() ? "" : "; ") + property + " of ";
    for (std::size_t i = 0; i < owners.size(); ++i)
      words += (i == 0 ? "" : ", ") + owners[i];
  }
  return words;
}

} // namespace sheerpole
