#include "rules/geometry/spreader_tips.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <algorithm>

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

namespace {

void add(Remarks& words, const std::vector<std::string>& names, GeometryCheckPhrase one,
         GeometryCheckPhrase several) {
  if (!names.empty())
    words.all.push_back({names.size() == 1 ? one : several, {Words{joined(names, Join::and_word)}}});
}

} // namespace

std::string without_side(const std::string& name) {
  return name.substr(0, name.find('.'));
}

void look_at_tips(const Rig& rig, CheckReport& report, const LookAtTip& look) {
  const std::vector<SpreaderTip> tips = spreader_tips(rig);
  const auto name_of_tip = [&](std::size_t i) { return rig.spreaders[tips[i].spreader].name; };
  for (std::size_t i = 0; i < tips.size(); ++i) {
    // The sides of a spreader are read one behind the other.
    const std::string base = without_side(name_of_tip(i));
    if (i + 1 < tips.size() && without_side(name_of_tip(i + 1)) == base) {
      StayReport first(rig);
      look(tips[i], base, first);
      StayReport second(rig);
      look(tips[i + 1], base, second);
      if (alike(first, second)) {
        hand_on(first, base, report);
        ++i;
        continue;
      }
    }
    StayReport own(rig);
    look(tips[i], name_of_tip(i), own);
    hand_on(own, name_of_tip(i), report);
  }
}

Remarks who_carries(const Rig& rig, const SpreaderTip& tip) {
  std::vector<std::string> clamped;
  std::vector<std::string> free;
  std::vector<std::string> ending;
  for (const LineOverTip& line : tip.lines)
    (line.clamped ? clamped : free).push_back(rig[line.stay].base);
  for (const StayId stay : tip.ending)
    ending.push_back(rig[stay].base);
  Remarks words{{}, Join::semicolon};
  add(words, clamped, GeometryCheckPhrase::clamped_one, GeometryCheckPhrase::clamped_several);
  add(words, ending, GeometryCheckPhrase::ends_one, GeometryCheckPhrase::ends_several);
  add(words, free, GeometryCheckPhrase::free_one, GeometryCheckPhrase::free_several);
  return words;
}

std::vector<std::vector<TipOfStay>> tips_by_stay(const Rig& rig, const std::vector<SpreaderTip>& tips) {
  std::vector<std::vector<TipOfStay>> result(rig.stays.size());
  for (const SpreaderTip& tip : tips)
    for (const LineOverTip& line : tip.lines)
      result[line.stay.index()].push_back({&tip, &line});
  for (auto& of_stay : result)
    std::sort(of_stay.begin(), of_stay.end(),
              [](const TipOfStay& a, const TipOfStay& b) { return a.line->stop < b.line->stop; });
  return result;
}

} // namespace sheerpole
