#include "plugins/rig-drawing/stay_rows.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/printed_sums.hpp"
#include "backend/tenths.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/fact_name.hpp"
#include "plugins/rig-drawing/dimensions.hpp"
#include "units/quantity_text.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <string_view>

namespace sheerpole::rig_drawing {

namespace {

/// A length in the unit of the cards; millimetres without their name, which the notes give.
std::string in_unit(const CardUnit& unit, Length length) {
  return unit.kind == CardUnit::Kind::millimetres ? drawn_millimetres(length) : card_amount(unit, length);
}

std::string side_letter(Side side) {
  return side == Side::port ? "P " : side == Side::starboard ? "S " : "";
}

/// What each side has, once where both have the same.
std::string of_sides(const std::vector<std::pair<Side, std::string>>& sides) {
  std::string text;
  for (const auto& [side, words] : sides) {
    const bool same =
        std::all_of(sides.begin(), sides.end(), [&, mine = std::string_view(words)](const auto& other) {
          return other.second == mine;
        });
    if (same)
      return words;
    add_words(text, "\n", side_letter(side) + words);
  }
  return text;
}

std::string pins(const CardUnit& unit, const DerivedStay& derived) {
  const LengthSum& sum = derived.pin_to_pin;
  const Length printed = printed_total(sum).length();
  if (sum.unknown) // of a cord: what its end was from the pin counts beside it
    return with_x(true, std::llround(printed.millimetres()), in_unit(unit, magnitude(printed)));
  return sum.terms.empty() ? say(RigDrawingPhrase::not_given) : in_unit(unit, printed);
}

std::string cut_of(const CardPiece& card) {
  if (!card.may_be_cut())
    return not_yet();
  if (card.unit.kind == CardUnit::Kind::millimetres && !card.cut.unknown)
    return card.cut_words(drawn_millimetres(card.unit.part() * static_cast<double>(card.cut.parts)));
  return card.cut_words(card.amount(card.cut));
}

std::string adjusters_of(const Rig& rig, const Stay& stay, const CardUnit& unit) {
  std::string text;
  for (const StackItem& item : stay.stack) {
    if (item.kind != StackItem::Kind::part)
      continue;
    const Part& part = rig[item.part];
    if (part.shortest && part.longest)
      add_words(text, ", ",
                say(RigDrawingPhrase::from_shortest_to_longest, part.name,
                    in_unit(unit, part.shortest->value), in_unit(unit, part.longest->value)));
  }
  return text.empty() ? say(RigDrawingPhrase::none) : text;
}

std::string name_without_side(const std::string& name) {
  return name.substr(0, name.find('.'));
}

std::string angle(double radians) {
  return format_fixed(radians * 180.0 / std::numbers::pi, 1) + "°";
}

} // namespace

std::vector<StayRow> stay_rows(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  const std::vector<CardPiece> cards = card_pieces(checked);
  const CardUnit unit = card_unit(rig);
  std::vector<StayRow> rows;
  std::set<std::string> done;
  for (const Stay& stay : rig.stays) {
    if (!done.insert(stay.base).second)
      continue;
    StayRow row{.number = rows.size() + 1,
                .base = stay.base,
                .title = titled(rig, stay),
                .line = {},
                .pin_to_pin = {},
                .cut = {},
                .adjuster = adjusters_of(rig, stay, unit)};
    std::vector<std::pair<Side, std::string>> lengths, cuts;
    std::string sides;
    std::set<std::string> lines;
    for (const DerivedStay& derived : checked.derived().stays) {
      const Stay& each = rig[derived.stay];
      if (each.base != stay.base)
        continue;
      if (each.side != Side::centre)
        add_words(sides, say(RigDrawingPhrase::and_word), each.side == Side::port ? "P" : "S");
      lengths.emplace_back(each.side, pins(unit, derived));
      std::string cut;
      for (const CardPiece& card : cards)
        if (card.stay == &each) {
          add_words(cut, "; ", cut_of(card));
          if (lines.insert(card.line->name).second)
            add_words(row.line, ", ", card.line->name + led_by(", ", card.line->size.name));
        }
      cuts.emplace_back(each.side, cut.empty() ? say(RigDrawingPhrase::none) : cut);
    }
    row.title += led_by(", ", sides);
    row.pin_to_pin = of_sides(lengths);
    row.cut = of_sides(cuts);
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<Measure> measures(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  const CardUnit unit = card_unit(rig);
  std::vector<Measure> result;
  const auto stated = [&](PhraseText words, std::string_view fact) {
    if (const auto length = fact_length(rig.boat.particulars, fact))
      result.push_back({std::string(words), in_unit(unit, length->value)});
  };
  stated(say(RigDrawingPhrase::length_overall_begins), fact_names.length_overall);
  stated(say(RigDrawingPhrase::waterline_begins), fact_names.waterline_length);
  stated(say(RigDrawingPhrase::beam), fact_names.beam);
  stated(say(RigDrawingPhrase::sheer_mast), fact_names.sheer_at_mast);
  stated(say(RigDrawingPhrase::foretriangle_height), fact_names.foretriangle_height);
  stated(say(RigDrawingPhrase::foretriangle_base), fact_names.foretriangle_base);
  stated(say(RigDrawingPhrase::mainsail_hoist), fact_names.mainsail_hoist);
  stated(say(RigDrawingPhrase::mainsail_foot), fact_names.mainsail_foot);
  stated(say(RigDrawingPhrase::mizzen_hoist), fact_names.mizzen_hoist);
  stated(say(RigDrawingPhrase::mizzen_foot), fact_names.mizzen_foot);
  for (const Spar& spar : rig.spars) {
    const auto length = fact_length(spar.particulars, fact_names.length);
    const double lean = std::atan2(-spar.axes[2][0], spar.axes[2][2]);
    std::string value = length ? in_unit(unit, length->value) : say(RigDrawingPhrase::length_not_given);
    if (stands(spar))
      value +=
          std::abs(lean) < 1e-4 ? say(RigDrawingPhrase::upright) : say(RigDrawingPhrase::rake, angle(lean));
    result.push_back({spar.title.empty() ? spar.name : spar.title, value});
  }
  std::set<std::string> done;
  for (const Spreader& spreader : rig.spreaders) {
    const std::string name = spreader.title.empty() ? name_without_side(spreader.name) : spreader.title;
    if (spreader.side == Side::port || !done.insert(name).second)
      continue;
    const Vector3& root = rig[spreader.root].position;
    const Vector3& tip = rig[spreader.tip].position;
    const double x = (tip.x - root.x).metres(), y = (tip.y - root.y).metres(),
                 z = (tip.z - root.z).metres();
    const double out = std::abs(y);
    result.push_back({name, say(RigDrawingPhrase::aft_up,
                                in_unit(unit, Length::metres(std::sqrt(x * x + y * y + z * z))),
                                angle(std::atan2(-x, out)), angle(std::atan2(z, std::hypot(x, y))))});
  }
  return result;
}

} // namespace sheerpole::rig_drawing
