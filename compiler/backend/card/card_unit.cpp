#include "backend/card/card_unit.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/papers_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace sheerpole {

namespace {

constexpr std::int64_t parts_of_a_millimetre = 10;
constexpr int parts_of_an_inch = 64;

/// What conversion to metres and back leaves decides no half.
constexpr double noise = 1e-9;

bool restated_for(const Rig& rig, const Record& shop) {
  return std::any_of(rig.differences.begin(), rig.differences.end(), [&](const Difference& one) {
    return one.origin == Difference::Origin::shop && one.origin_name == shop.name;
  });
}

/// The shop whose unit counts; null when there is none or nobody has said which.
const Record* shop_in_use(const Rig& rig, bool& in_doubt) {
  const Record* only = nullptr;
  int with_a_unit = 0;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::shop)
      continue;
    if (restated_for(rig, record))
      return &record;
    if (find_fact(record.facts, fact_names.unit) == nullptr &&
        find_fact(record.facts, fact_names.round_to) == nullptr)
      continue;
    ++with_a_unit;
    only = &record;
  }
  in_doubt = with_a_unit > 1;
  return in_doubt ? nullptr : only;
}

/// How many parts a stated length is; nothing when it is no whole number of them.
std::optional<std::int64_t> whole_parts(Length length, Length part) {
  const double parts = length / part;
  const double whole = std::round(parts);
  if (whole < 1.0 || std::abs(parts - whole) > 1e-6)
    return std::nullopt;
  return static_cast<std::int64_t>(whole);
}

std::string size_text(const CardUnit& unit, std::int64_t parts) {
  if (unit.kind != CardUnit::Kind::millimetres) {
    const Length length = Length::inches(static_cast<double>(parts) / parts_of_an_inch);
    return unit.kind == CardUnit::Kind::inches ? format_inches(length, parts_of_an_inch)
                                               : format_feet_inches(length, parts_of_an_inch);
  }
  const std::string whole = in_threes(std::to_string(parts / parts_of_a_millimetre));
  return unit.step % parts_of_a_millimetre == 0
             ? whole
             : fmt::format("{}.{}", whole, parts % parts_of_a_millimetre);
}

} // namespace

Length CardUnit::part() const {
  return kind == Kind::millimetres ? Length::millimetres(1.0 / parts_of_a_millimetre)
                                   : Length::inches(1.0 / parts_of_an_inch);
}

CardLength CardUnit::round(Length length, bool unknown) const {
  const double steps = std::abs(length / part()) / static_cast<double>(step);
  const auto whole = static_cast<std::int64_t>(std::floor(steps + 0.5 + noise)) * step;
  return {unknown, length < Length{} ? -whole : whole};
}

CardLength CardUnit::round_outwards(Length length) const {
  const double steps = std::abs(length / part()) / static_cast<double>(step);
  const auto whole = static_cast<std::int64_t>(std::ceil(steps - 1e-6)) * step;
  return {false, length < Length{} ? -whole : whole};
}

CardUnit card_unit(const Rig& rig) {
  CardUnit unit;
  bool in_doubt = false;
  const Record* shop = shop_in_use(rig, in_doubt);
  if (in_doubt)
    unit.remark = say(PapersPhrase::more_than_one_shop_is);
  if (shop == nullptr)
    return unit;
  unit.shop = shop->name;
  const std::string stated = fact_text(shop->facts, fact_names.unit);
  if (stated == "inches" || stated == "feet-and-inches") {
    unit.kind = stated == "inches" ? CardUnit::Kind::inches : CardUnit::Kind::feet_and_inches;
    unit.step = parts_of_an_inch / 16;
  }
  if (const auto round_to = fact_length(shop->facts, fact_names.round_to)) {
    if (const auto parts = whole_parts(round_to->value, unit.part()))
      unit.step = *parts;
    else
      unit.remark = say(PapersPhrase::shop_rounds_to_which_is, shop->name,
                        find_fact(shop->facts, fact_names.round_to)->text);
  }
  return unit;
}

std::string card_text(const CardUnit& unit, CardLength length) {
  return with_x(length.unknown, length.parts, size_text(unit, std::abs(length.parts)));
}

std::string card_amount(const CardUnit& unit, CardLength length) {
  const bool bears_its_unit =
      unit.kind != CardUnit::Kind::millimetres || (length.unknown && length.parts == 0);
  return card_text(unit, length) + (bears_its_unit ? "" : " mm");
}

std::string card_amount(const CardUnit& unit, Length length) {
  return card_amount(unit, unit.round(length));
}

std::string unit_words(const CardUnit& unit) {
  const std::string name = unit.kind == CardUnit::Kind::millimetres ? say(PapersPhrase::millimetres)
                           : unit.kind == CardUnit::Kind::inches    ? "inches"
                                                                    : say(PapersPhrase::feet_and_inches);
  return say(PapersPhrase::to, name, card_amount(unit, CardLength{false, unit.step}),
             unit.shop.empty() ? "" : say(PapersPhrase::shop, unit.shop));
}

std::string note_amount(const CardUnit& unit, Length length) {
  return unit.kind == CardUnit::Kind::millimetres ? in_threes(length_text(length))
                                                  : card_amount(unit, length);
}

} // namespace sheerpole
