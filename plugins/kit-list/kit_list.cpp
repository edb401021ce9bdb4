#include "plugins/kit-list/kit_list.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/not_yet.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/paper_words.hpp"
#include "calculate/cut/order_length.hpp"
#include "wording/papers/kit_list_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};
constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

/// As long as the longest stay from pin to pin and so much: "about 14.6 m". A stay whose length is X may be
/// longer than all numbers.
std::string reach_of_longest(const CheckedRig& checked, Length more) {
  std::optional<Length> longest;
  bool open = false;
  for (const DerivedStay& stay : checked.derived().stays) {
    if (stay.pin_to_pin.unknown || stay.pin_to_pin.terms.empty())
      open = true;
    else if (!longest || stay.pin_to_pin.known() > *longest)
      longest = stay.pin_to_pin.known();
  }
  if (!longest)
    return say(KitListPhrase::as_long_as_longest_stay);
  return about_metres(*longest + more) + (open ? say(KitListPhrase::or_as_long_as_x) : "");
}

/// What is carried of a rope or a wire for its longest piece, and for one end of any to be made twice: as
/// the emergency card has it. Nothing of what is not made up aboard, and where nobody says how long a piece
/// is.
std::optional<Length> to_carry(const CheckedRig& checked, const std::string& line) {
  const Rig& rig = checked.rig();
  std::optional<Length> longest;
  Length end_again;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const LineMaterial& material = rig[piece.material];
      const bool made_aboard =
          material.kind == LineMaterial::Kind::rope || material.kind == LineMaterial::Kind::wire;
      const auto whole = order_length(rig, stay, piece).whole();
      if (material.name != line || !made_aboard)
        continue;
      longest = std::max(longest, whole); // nothing is less than any length
      end_again = std::max(end_again, greedier_end(piece));
    }
  return longest ? std::optional(*longest + end_again) : std::nullopt;
}

/// As much as the stay that takes most of this line; of a length that is X what is known of it.
KitItem longest_of(const CheckedRig& checked, const OrderItem& line) {
  KitItem item{.what = line.name + led_by(", ", line.what) + led_by(", ", line.size)};
  const auto most = std::max_element(line.stays.begin(), line.stays.end(),
                                     [](const auto& a, const auto& b) { return a.second < b.second; });
  if (most != line.stays.end() && most->second > 0) {
    const auto carried = to_carry(checked, line.name);
    const auto tenths = carried ? static_cast<long>(std::ceil(carried->metres() * 10.0 - 1e-6)) : 0L;
    item.amount = amount_text(line, std::max(most->second, tenths));
    item.why = say(carried ? KitListPhrase::what_takes_most_and_an_end : KitListPhrase::what_takes_most_all,
                   most->first);
  }
  for (const OpenLength& open : line.open)
    add_words(item.why, say(KitListPhrase::or_if_it_is_longer),
              say(KitListPhrase::x_and_its_ends, open.of));
  if (item.amount.empty())
    item.amount = say(KitListPhrase::as_long_as_longest);
  return item;
}

} // namespace

std::vector<KitItem> kit_of_rig(const CheckedRig& checked) {
  std::vector<KitItem> kit;
  for (const OrderItem& item : needed_items(checked)) {
    const std::string what = item.name + led_by(": ", item.what) + led_by(", ", item.size);
    if (item.in_metres)
      kit.push_back(longest_of(checked, item));
    else if (item.group == "Hardware")
      kit.push_back({what, "1", say(KitListPhrase::in_the_rig, item.needed)});
    else
      kit.push_back({what, "2", item.needed > 0 ? say(KitListPhrase::in_the_rig, item.needed) : ""});
  }
  if (!checked.derived().stays.empty())
    kit.push_back({say(KitListPhrase::messenger_cord_that_hardly_stretches),
                   reach_of_longest(checked, Length::metres(1.0)),
                   say(KitListPhrase::from_pin_to_pin_longest)});
  return kit;
}

std::vector<KitItem> kit_of_tools(const CheckedRig& checked) {
  std::vector<KitItem> kit;
  for (const OrderItem& item : needed_items(checked)) {
    if (!item.in_metres || item.group != "Lines")
      continue;
    const auto& lines = checked.rig().materials;
    const auto line =
        std::find_if(lines.begin(), lines.end(), [&](const auto& one) { return one.name == item.name; });
    if (line == lines.end())
      continue;
    const std::string size = line->size.name;
    if (line->kind == LineMaterial::Kind::rope)
      kit.push_back({say(KitListPhrase::fid_or_splicing_needle_for, size), "1", item.name});
    else
      kit.push_back({say(KitListPhrase::cutter_that_goes_through_tried, item.what, led_by(", ", size)), "1",
                     item.name});
  }
  if (!checked.derived().stays.empty())
    kit.push_back({say(KitListPhrase::tape), reach_of_longest(checked, {}),
                   say(KitListPhrase::longer_than_longest_stay)});
  for (const PhraseText tool :
       {say(KitListPhrase::marker_sharp_knife_whipping_twine),
        say(KitListPhrase::goggles_and_gloves_before_wire), say(KitListPhrase::rope_blocks_and_clips_to),
        say(KitListPhrase::spanners_for_screws_and_their), say(KitListPhrase::these_papers_and_rig_file)})
    kit.push_back({tool, "", ""});
  return kit;
}

namespace {

void add_kit(const std::vector<KitItem>& kit, PageFlow& page) {
  FlowTable table{.columns = {{"", 0.4},
                              {say(KitListPhrase::what), 4.4},
                              {say(KitListPhrase::at_least), 1.9},
                              {say(KitListPhrase::because), 2.8},
                              {say(KitListPhrase::where_it_lies), 1.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  for (const KitItem& item : kit)
    table.rows.push_back({cell_to_tick,
                          {.text = item.what},
                          {.text = item.amount.empty() ? "1" : item.amount, .bold = true},
                          {.text = item.why},
                          cell_to_write});
  page.table(table);
}

} // namespace

KitList::KitList()
    : PagesBackend({"kit-list", "kit-list", say(KitListPhrase::kit_list),
                    say(KitListPhrase::what_to_keep_aboard_so)}) {}

std::vector<Drawing> KitList::pages(const BackendRequest& request, const std::string& boat) const {
  PageFlow page(
      request.paper,
      {.name = say(KitListPhrase::kit_list), .about = identity_words(request.checked), .draft = {}});
  page.text(say(KitListPhrase::kit_list_capitals, boat), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(say(KitListPhrase::what_stay_that_goes_can), plain);
  page.text(say(KitListPhrase::lengths_are_to_stow_by), small);
  page.notice(say(KitListPhrase::mast_that_has_lost_stay), {.size = 3.2, .bold = true, .indent = 0.0});
  page.heading(say(KitListPhrase::to_make_it), 4.2);
  const std::vector<KitItem> kit = kit_of_rig(request.checked);
  if (kit.empty())
    page.text(say(KitListPhrase::rig_file_states_nothing_that));
  else
    add_kit(kit, page);
  page.heading(say(KitListPhrase::tools), 4.2);
  add_kit(kit_of_tools(request.checked), page);
  page.space(2.0);
  page.to_write(say(KitListPhrase::gone_through_by_day), plain);
  page.text(say(KitListPhrase::this_list_follows_from_rig), {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages(say(KitListPhrase::kit_list_of, boat), say(KitListPhrase::what_to_keep_aboard_so_that));
}

} // namespace sheerpole
