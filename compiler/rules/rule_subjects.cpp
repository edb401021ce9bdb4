#include "rules/rule_subjects.hpp"

#include "rules/tip_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// What is in the stays that a rule looks at, by the numbers of the rig.
struct InUse {
  std::vector<bool> parts, lines, splices, points;
};

template <class Id>
void use(std::vector<bool>& all, Id id) {
  all[id.index()] = true;
}

InUse in_use(const Rig& rig, const UserRule& rule) {
  InUse result{std::vector<bool>(rig.parts.size()), std::vector<bool>(rig.materials.size()),
               std::vector<bool>(rig.splices.size()), std::vector<bool>(rig.points.size())};
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    if (!is_asked(rule, StayId{static_cast<std::uint32_t>(i)}))
      continue;
    const Stay& stay = rig.stays[i];
    use(result.lines, stay.material);
    for (const StackItem& item : stay.stack) {
      if (item.kind == StackItem::Kind::part)
        use(result.parts, item.part);
      if (item.splice)
        use(result.splices, *item.splice);
      if (item.material)
        use(result.lines, *item.material);
    }
    for (const PathStop& stop : stay.path)
      use(result.points, stop.point);
  }
  return result;
}

} // namespace

bool is_asked(const UserRule& rule, StayId stay) {
  return rule.stays.empty() || std::find(rule.stays.begin(), rule.stays.end(), stay) != rule.stays.end();
}

std::vector<RuleSubject> rule_subjects(const Rig& rig, const UserRule& rule) {
  const InUse used = in_use(rig, rule);
  std::vector<RuleSubject> result;
  const auto add = [&](const auto& thing, const std::string& name) {
    result.push_back({name, thing.place, rule_fact(rig, thing, rule.property)});
  };
  const auto of_sort = [&](std::string_view kind) {
    return (rule.sort.empty() || rule.sort == kind) &&
           std::find(rule.kinds.begin(), rule.kinds.end(), kind) != rule.kinds.end();
  };
  if (rule.looks_at == "parts") {
    for (std::size_t i = 0; i < rig.parts.size(); ++i)
      if (used.parts[i] && of_sort(rig.parts[i].kind))
        add(rig.parts[i], rig.parts[i].name);
  } else if (rule.looks_at == "lines") {
    for (std::size_t i = 0; i < rig.materials.size(); ++i)
      if (used.lines[i] && of_sort(name_of(rig.materials[i].kind)))
        add(rig.materials[i], rig.materials[i].name);
  } else if (rule.looks_at == "splices") {
    for (std::size_t i = 0; i < rig.splices.size(); ++i)
      if (used.splices[i])
        add(rig.splices[i], rig.splices[i].name);
  } else if (rule.looks_at == "spreaders") {
    for (const Spreader& spreader : rig.spreaders) {
      const std::string name = without_side(spreader.name);
      const bool again = !result.empty() && result.back().place == spreader.place;
      if (!again && (rule.stays.empty() || used.points[spreader.tip.index()]))
        add(spreader, name);
    }
  }
  return result;
}

} // namespace sheerpole
