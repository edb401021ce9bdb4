#include "plugins/kit-list/kit_list.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/not_yet.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/paper_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};
constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

/// As long as the longest stay from pin to pin: "about 14.6 m". A stay whose length is X may be longer than
/// all numbers.
std::string reach_of_longest(const CheckedRig& checked) {
  std::optional<Length> longest;
  bool open = false;
  for (const DerivedStay& stay : checked.derived().stays) {
    if (stay.pin_to_pin.unknown || stay.pin_to_pin.terms.empty())
      open = true;
    else if (!longest || stay.pin_to_pin.known() > *longest)
      longest = stay.pin_to_pin.known();
  }
  if (!longest)
    return "as long as the longest stay";
  return about_metres(*longest) + (open ? ", or as long as X" : "");
}

/// As much as the stay that takes most of this line; of a length that is X what is known of it.
KitItem longest_of(const OrderItem& line) {
  KitItem item{.what = line.name + led_by(", ", line.what) + led_by(", ", line.size)};
  const auto most = std::max_element(line.stays.begin(), line.stays.end(),
                                     [](const auto& a, const auto& b) { return a.second < b.second; });
  if (most != line.stays.end() && most->second > 0) {
    item.amount = amount_text(line, most->second);
    item.why = "what " + most->first + " takes, the most of all";
  }
  for (const OpenLength& open : line.open)
    add_words(item.why, "; or, if it is longer, ", "X(" + open.of + ") and its ends");
  if (item.amount.empty())
    item.amount = "as long as the longest";
  return item;
}

} // namespace

std::vector<KitItem> kit_of_rig(const CheckedRig& checked) {
  std::vector<KitItem> kit;
  for (const OrderItem& item : order_items(checked)) {
    const std::string what = item.name + led_by(": ", item.what) + led_by(", ", item.size);
    if (item.in_metres)
      kit.push_back(longest_of(item));
    else if (item.group == "Hardware")
      kit.push_back({what, "1", fmt::format("{} in the rig", item.needed)});
    else
      kit.push_back({what, "2", item.needed > 0 ? fmt::format("{} in the rig", item.needed) : ""});
  }
  if (!checked.derived().stays.empty())
    kit.push_back({"messenger cord that hardly stretches, its own colour", reach_of_longest(checked),
                   "from pin to pin of the longest stay, and a metre to tie"});
  return kit;
}

std::vector<KitItem> kit_of_tools(const CheckedRig& checked) {
  std::vector<KitItem> kit;
  for (const OrderItem& item : order_items(checked)) {
    if (!item.in_metres || item.group != "Lines")
      continue;
    const auto& lines = checked.rig().materials;
    const auto line =
        std::find_if(lines.begin(), lines.end(), [&](const auto& one) { return one.name == item.name; });
    if (line == lines.end())
      continue;
    const std::string size = line->size.name;
    if (line->kind == LineMaterial::Kind::rope)
      kit.push_back({"fid or splicing needle for " + size, "1", item.name});
    else
      kit.push_back(
          {"cutter that goes through " + item.what + led_by(", ", size) + ", tried on a piece of it", "1",
           item.name});
  }
  if (!checked.derived().stays.empty())
    kit.push_back({"tape", reach_of_longest(checked), "longer than the longest stay"});
  for (const char* tool : {"marker, sharp knife, whipping twine and needle, tape to seize an end",
                           "goggles and gloves, before a wire is cut or let go",
                           "rope, blocks and clips to hold the mast meanwhile",
                           "spanners for the screws and their locks, split pins, pliers",
                           "these papers, and the rig file on something that is not the phone"})
    kit.push_back({tool, "", ""});
  return kit;
}

namespace {

void add_kit(const std::vector<KitItem>& kit, PageFlow& page) {
  FlowTable table{
      .columns = {{"", 0.4}, {"what", 4.4}, {"at least", 1.9}, {"because", 2.8}, {"where it lies", 1.9}},
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
    : PagesBackend({"kit-list", "kit-list", "Kit list",
                    "what to keep aboard so that a stay can be made again: line, parts, cord, tools"}) {}

std::vector<Drawing> KitList::pages(const BackendRequest& request, const std::string& boat) const {
  PageFlow page(request.paper, {.name = "Kit list", .about = identity_words(request.checked), .draft = {}});
  page.text("KIT LIST   " + boat, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text("What a stay that goes can be made of again, far from a shop. Tick it before a passage, and "
            "write where it "
            "lies. How to make the piece is on the emergency splice card.",
            plain);
  page.text(
      "Lengths are to stow by and not to cut to. How many to take is common practice, without a source.",
      small);
  page.notice("A mast that has lost a stay falls when it is asked for more. Take the load off first: turn, "
              "sheet out, set "
              "up what holds it. Going aloft then can kill.",
              {.size = 3.2, .bold = true, .indent = 0.0});
  page.heading("To make it of", 4.2);
  const std::vector<KitItem> kit = kit_of_rig(request.checked);
  if (kit.empty())
    page.text("The rig file states nothing that a stay is made of.");
  else
    add_kit(kit, page);
  page.heading("Tools", 4.2);
  add_kit(kit_of_tools(request.checked), page);
  page.space(2.0);
  page.to_write("Gone through by, day:", plain);
  page.text("This list follows from the rig file and nothing else. Nobody has judged whether what is made "
            "of it is strong "
            "enough: get to a licensed professional rigger.",
            {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages("Kit list of " + boat, "What to keep aboard so that a stay can be made again.");
}

} // namespace sheerpole
