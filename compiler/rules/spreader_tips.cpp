#include "rules/spreader_tips.hpp"

namespace sheerpole {

SpreaderTips::SpreaderTips(const Rig& rig) : by_point_(rig.points.size(), nullptr) {
  for (const Spreader& spreader : rig.spreaders)
    if (spreader.tip.index() < by_point_.size())
      by_point_[spreader.tip.index()] = &spreader;
}

std::vector<const Spreader*> SpreaderTips::under(const Stay& stay) const {
  std::vector<const Spreader*> result;
  for (std::size_t i = 1; i + 1 < stay.path.size(); ++i)
    if (const Spreader* spreader = by_point_[stay.path[i].point.index()])
      result.push_back(spreader);
  return result;
}

std::string base_name(const Spreader& spreader) {
  const std::string side = "." + std::string(name_of(spreader.side));
  const std::string& name = spreader.name;
  return spreader.side != Side::centre && name.ends_with(side) ? name.substr(0, name.size() - side.size())
                                                               : name;
}

LineOverTips line_over_tips(const Rig& rig, const Stay& stay) {
  LineOverTips result;
  bool other = false;
  for (const StackItem& item : stay.stack) {
    if (item.kind != StackItem::Kind::line)
      continue;
    const LineMaterial& line = rig[item.material.value_or(stay.material)];
    if (line.kind != LineMaterial::Kind::rope)
      other = true;
    else if (result.rope == nullptr || result.rope->diameter.value < line.diameter.value)
      result.rope = &line;
  }
  result.not_known = other && result.rope != nullptr;
  return result;
}

} // namespace sheerpole
