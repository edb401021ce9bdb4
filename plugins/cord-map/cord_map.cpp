#include "plugins/cord-map/cord_map.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/page/html.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/page/paper_files.hpp"
#include "calculate/facts.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/papers/cord_map_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double entry_height = 27.0;
constexpr double above_entries = 8.0; ///< the upper end of the cord
constexpr double cord_at = 17.0;      ///< from the left margin
constexpr double entries_at = 46.0;
constexpr double least_apart = 4.5; ///< of two knots as drawn
constexpr int most_tally_drawn = 6;

ShapeStyle stroke(double width) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
}
ShapeStyle filled(double grey) {
  return {.stroke_width = 0.5, .stroke_grey = 0.0, .dashes = {}, .fill_grey = grey};
}
void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
           TextAnchor anchor = TextAnchor::start) {
  into.add(TextShape{at, text, size, anchor, bold, ""});
}
void box_to_tick(ShapeGroup& into, PaperPoint corner) {
  into.add(RectangleShape{{corner.x, corner.y, corner.x + 4.0, corner.y + 4.0}, stroke(0.35), ""});
}

/// "Cap shroud, PORT side"; of a shared knot "Cap shroud, PORT side and STARBOARD side".
std::string title_of(const CordKnot& knot) {
  std::string words;
  std::string before;
  for (const KnottedStay& one : knot.stays) {
    const std::string name = one.stay->title.empty() ? one.stay->base : one.stay->title;
    add_words(words, name == before ? say(CordMapPhrase::and_word) : "; ",
              name == before ? side_words(one.stay->side) : name + ", " + side_words(one.stay->side));
    before = name;
  }
  return words;
}

/// A text in the room that it has.
struct Fitted {
  std::vector<std::string> lines;
  double size = 0.0; ///< em, millimetres
  bool whole = true; ///< else it is broken off
};

/// At the largest size, of those down to `least`, at which it stands on one line; else in lines of that,
/// and broken off behind the last of `most`.
Fitted fitted(const std::string& text, double size, double least, double width, bool bold,
              std::size_t most) {
  while (size - 0.1 > least && wrap_label(text, size, width, bold).size() > 1)
    size -= 0.1;
  Fitted set{wrap_label(text, size, width, bold), size};
  if (set.lines.size() > most) {
    set.lines.resize(most);
    set.lines.back() = broken_off(set.lines.back());
    set.whole = false;
  }
  return set;
}

void write_fitted(ShapeGroup& into, PaperPoint at, const Fitted& set, bool bold) {
  for (std::size_t i = 0; i < set.lines.size(); ++i)
    write(into, {at.x, at.y + set.size * line_spacing * static_cast<double>(i)}, set.lines[i], set.size,
          bold);
}

/// "cap-tang to plate-a" where the stay has a path, else its name.
std::string between(const Rig& rig, const CordKnot& knot) {
  return joined(knot.stays, "; ", [&](const KnottedStay& one) {
    const Stay& stay = *one.stay;
    std::string words = stay.name;
    if (stay.path.size() > 1)
      words += say(CordMapPhrase::to, rig[stay.path.front().point].base, rig[stay.path.back().point].base);
    return words;
  });
}

/// What of a reading stands beside the knot: one text for all of its stays where they agree.
template <class Words>
std::string of_readings(const CordKnot& knot, const Words& words) {
  std::vector<std::string> all;
  for (const KnottedStay& one : knot.stays) {
    const std::string text = words(*one.reading);
    if (std::find(all.begin(), all.end(), text) == all.end())
      all.push_back(text);
  }
  const std::string text = joined(all, "; ");
  return text.empty() ? say(CordMapPhrase::not_stated) : text;
}

/// What lies between an end of the cord and a pin: said once where it is so of all stays of the knot, else
/// with the side.
std::vector<std::string> offset_lines(const CardUnit& unit, const CordKnot& knot) {
  std::vector<std::string> words;
  const auto add = [&](std::string_view name, std::optional<Sourced<Length>> Reading::*member) {
    std::vector<std::string> amounts;
    bool alike = true;
    for (const KnottedStay& one : knot.stays) {
      const auto& stated = one.reading->*member;
      amounts.push_back(stated ? card_amount(unit, stated->value) : "");
      alike = alike && amounts.back() == amounts.front();
    }
    if (alike && !amounts.front().empty())
      words.push_back(fmt::format("{} {}", name, amounts.front()));
    for (std::size_t i = 0; i < amounts.size() && !alike; ++i)
      if (!amounts[i].empty())
        words.push_back(fmt::format("{} {} {}", name_of(knot.stays[i].stay->side), name, amounts[i]));
  };
  add("offset", &Reading::offset);
  add("hoist-offset", &Reading::hoist_offset);
  add(say(CordMapPhrase::below_the_knot), &Reading::below_knot);
  if (words.empty())
    words.emplace_back(say(CordMapPhrase::none));
  // A line each, so that no length is broken; there is room for two.
  while (words.size() > 2) {
    words[words.size() - 2] += ", " + words.back();
    words.pop_back();
  }
  return words;
}

std::string pull_words(const Reading& reading) {
  const auto pull = fact_force(reading.particulars, fact_names.pull);
  return pull ? format_fixed(pull->value.newtons(), 0) + " N" : "";
}

constexpr double beside_number = 9.0;

std::string expected_words(const CardUnit& unit, const CordKnot& knot) {
  return knot.expected ? say(CordMapPhrase::expected, card_amount(unit, *knot.expected)) : "";
}

/// Whose knot it is, on one line of an entry so wide.
Fitted fitted_title(const CardUnit& unit, const CordKnot& knot, double width) {
  const double expected = expected_words(unit, knot).empty() ? 0.0 : 38.0;
  return fitted(title_of(knot), 4.0, 2.0, width - beside_number - expected, true, 1);
}

Fitted fitted_between(const Rig& rig, const CordKnot& knot, double width) {
  return fitted(between(rig, knot), 2.6, 1.8, width - beside_number, false, 1);
}

void draw_entry(const Rig& rig, const CardUnit& unit, const CordKnot& knot, PaperBox room,
                ShapeGroup& into) {
  const double text_left = room.left + beside_number;
  into.add(CircleShape{{room.left + 3.2, room.top + 3.4}, 3.0, stroke(0.35), ""});
  write(into, {room.left + 3.2, room.top + 4.5}, knot.tally ? std::to_string(*knot.tally) : "?", 3.0, true,
        TextAnchor::middle);
  write_fitted(into, {text_left, room.top + 4.8}, fitted_title(unit, knot, room.width()), true);
  write(into, {room.right, room.top + 4.6}, expected_words(unit, knot), 2.7, false, TextAnchor::end);
  write_fitted(into, {text_left, room.top + 8.8}, fitted_between(rig, knot, room.width()), false);
  const auto field = [&](double x, const std::string& name, const std::string& value, double width) {
    write(into, {text_left + x, room.top + 12.4}, name, 2.3);
    write_fitted(into, {text_left + x, room.top + 15.9}, fitted(value, 2.8, 1.6, width, true, 2), true);
  };
  field(0.0, say(CordMapPhrase::day),
        of_readings(knot, [](const Reading& reading) { return reading.date; }), 24.0);
  field(25.0, say(CordMapPhrase::pull), of_readings(knot, pull_words), 20.0);
  field(46.0, say(CordMapPhrase::by), of_readings(knot, [](const Reading& reading) { return reading.by; }),
        24.0);
  write(into, {text_left + 71.0, room.top + 12.4}, say(CordMapPhrase::between_ends_and_pins), 2.3);
  double base = room.top + 15.8;
  for (const std::string& line : offset_lines(unit, knot)) {
    write_fitted(into, {text_left + 71.0, base},
                 fitted(line, 2.6, 1.8, room.right - text_left - 71.0, true, 1), true);
    base += 3.3;
  }
  box_to_tick(into, {text_left, room.top + 20.2});
  write(into, {text_left + 5.5, room.top + 23.4}, say(CordMapPhrase::laid_out_on_rope), 2.6);
  box_to_tick(into, {text_left + 42.0, room.top + 20.2});
  write(into, {text_left + 47.5, room.top + 23.4}, say(CordMapPhrase::second_pass), 2.6);
  write(into, {text_left + 72.0, room.top + 23.4}, say(CordMapPhrase::by_day), 2.6);
  into.add(LineShape{{text_left + 84.0, room.top + 24.0}, {room.right, room.top + 24.0}, stroke(0.2), ""});
}

/// Where the knots stand on the drawn cord, millimetres from its upper end: as they are expected where all
/// are, else evenly; pushed apart where they would lie on each other.
std::vector<double> knot_places(const std::vector<CordKnot>& knots, double length) {
  const bool all_expected = std::all_of(knots.begin(), knots.end(),
                                        [](const CordKnot& knot) { return knot.expected.has_value(); });
  std::vector<double> places;
  for (std::size_t i = 0; i < knots.size(); ++i) {
    const double share = all_expected ? *knots[i].expected / *knots.back().expected
                                      : static_cast<double>(i + 1) / static_cast<double>(knots.size());
    places.push_back(length * share);
  }
  for (std::size_t i = 1; i < places.size(); ++i)
    places[i] = std::max(places[i], places[i - 1] + least_apart);
  for (std::size_t i = places.size(); i-- > 0;) {
    const double most = length - least_apart * static_cast<double>(places.size() - 1 - i);
    places[i] = std::min(places[i], most);
  }
  return places;
}

void draw_map(const Rig& rig, const std::vector<CordKnot>& knots, double width, PaperPoint at,
              ShapeGroup& into) {
  const CardUnit unit = card_unit(rig);
  const double x = at.x + cord_at;
  const double top = at.y + 4.0;
  const double length = above_entries + entry_height * static_cast<double>(knots.size()) - 12.0;
  const std::vector<double> places = knot_places(knots, length);
  into.add(LineShape{{x, top}, {x, top + length + 4.0}, stroke(0.9), ""});
  into.add(CircleShape{{x, top}, 1.8, filled(1.0), ""});
  write(into, {x - 4.0, top + 1.1}, "U", 3.2, true, TextAnchor::end);
  write(into, {x + 4.0, top + 1.1}, say(CordMapPhrase::upper_end), 2.6);
  for (std::size_t i = 0; i < knots.size(); ++i) {
    const double y = top + places[i];
    const double entry = at.y + above_entries + entry_height * static_cast<double>(i);
    into.add(CircleShape{{x, y}, 1.6, filled(0.0), ""});
    const int tally = std::min(knots[i].tally.value_or(0), most_tally_drawn);
    for (int n = 0; n < tally; ++n)
      into.add(CircleShape{{x - 3.4 - 2.1 * n, y}, 0.8, stroke(0.35), ""});
    into.add(PolylineShape{{{x + 1.8, y},
                            {x + 5.0, y},
                            {at.x + entries_at - 4.0, entry + 3.4},
                            {at.x + entries_at, entry + 3.4}},
                           stroke(0.18),
                           ""});
    if (i > 0)
      into.add(LineShape{{at.x + entries_at, entry - 1.0}, {at.x + width, entry - 1.0}, stroke(0.18), ""});
    draw_entry(rig, unit, knots[i], {at.x + entries_at, entry, at.x + width, entry + entry_height}, into);
  }
}

/// A number of the cord with its source and bound as written.
std::string fact_words(const Record& cord, std::string_view name) {
  const Particular* fact = find_fact(cord.facts, name);
  return fact == nullptr ? say(CordMapPhrase::not_stated) : fact->text;
}

void add_head(const Rig& rig, const CordOfRig& cord, PageFlow& page) {
  const Record& record = *cord.record;
  const CardUnit unit = card_unit(rig);
  page.text(say(CordMapPhrase::cord_map), {.size = 3.8, .bold = true, .indent = 0.0});
  page.text(record.name, {.size = 7.0, .bold = true, .indent = 0.0});
  if (!record.title.empty())
    page.text(record.title, {.size = 3.6, .bold = false, .indent = 0.0});
  page.space(1.0);
  const auto width = fact_length(record.facts, fact_names.knot_width);
  const std::string cells[][2] = {
      {say(CordMapPhrase::knots), std::to_string(cord.knots.size())},
      {say(CordMapPhrase::one_mark_is_good_to),
       width ? "± " + card_amount(unit, unit.round_outwards(width->value / 2.0))
             : say(CordMapPhrase::not_stated)},
      {say(CordMapPhrase::stretch_at_pull_used), fact_words(record, fact_names.stretch)},
  };
  const double shares[] = {0.16, 0.30, 0.54};
  page.drawing(14.5, [&](ShapeGroup& into, PaperPoint at) {
    into.add(RectangleShape{{at.x, at.y, at.x + page.width(), at.y + 13.0}, stroke(0.9), ""});
    double left = at.x;
    for (std::size_t i = 0; i < 3; ++i) {
      const double room = page.width() * shares[i];
      if (i > 0)
        into.add(LineShape{{left, at.y}, {left, at.y + 13.0}, stroke(0.35), ""});
      write(into, {left + 2.5, at.y + 4.2}, cells[i][0], 2.6);
      write_fitted(into, {left + 2.5, at.y + 10.2}, fitted(cells[i][1], 4.0, 2.0, room - 5.0, true, 1),
                   true);
      left += room;
    }
  });
}

/// What was broken off in the entries, in full.
std::vector<std::string> names_in_full(const Rig& rig, const std::vector<CordKnot>& knots, double width) {
  const CardUnit unit = card_unit(rig);
  std::vector<std::string> words;
  for (const CordKnot& knot : knots) {
    const double room = width - entries_at;
    if (fitted_title(unit, knot, room).whole && fitted_between(rig, knot, room).whole)
      continue;
    words.push_back(say(CordMapPhrase::knot_in_full, knot.tally ? std::to_string(*knot.tally) : "?",
                        title_of(knot), between(rig, knot)));
  }
  return words;
}

/// Knots whose tallies do not follow each other along the cord: where the next knot is easily the wrong
/// one.
std::vector<std::string> warnings(const Rig& rig, const std::vector<CordKnot>& knots) {
  const CardUnit unit = card_unit(rig);
  std::vector<std::string> words;
  for (std::size_t i = 1; i < knots.size(); ++i) {
    const CordKnot& one = knots[i - 1];
    const CordKnot& next = knots[i];
    if (one.tally && next.tally && one.expected && next.expected && *one.tally > *next.tally)
      words.push_back(say(CordMapPhrase::knot_comes_before_knot_apart, *one.tally, *next.tally,
                          card_amount(unit, *next.expected - *one.expected)));
  }
  return words;
}

} // namespace

std::vector<CordOfRig> cords_of(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  std::vector<CordOfRig> cords;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::cord)
      continue;
    CordOfRig cord{&record, {}};
    for (const DerivedStay& derived : checked.derived().stays) {
      const Stay& stay = rig[derived.stay];
      const Reading* reading = reading_of_x(stay, derived);
      if (reading == nullptr || reading->cord != record.name)
        continue;
      auto same = std::find_if(cord.knots.begin(), cord.knots.end(), [&](const CordKnot& knot) {
        return knot.tally && knot.tally == reading->knots;
      });
      if (same == cord.knots.end()) {
        CordKnot knot{reading->knots, {}, expected_length(rig, stay)};
        // From U to the knot, where the path goes from pin to pin.
        if (knot.expected) {
          if (reading->offset)
            *knot.expected += reading->offset->value;
          if (reading->hoist_offset)
            *knot.expected -= reading->hoist_offset->value;
          if (reading->below_knot)
            *knot.expected -= reading->below_knot->value;
        }
        same = cord.knots.insert(cord.knots.end(), std::move(knot));
      }
      same->stays.push_back({&stay, reading});
    }
    const bool all_expected = std::all_of(cord.knots.begin(), cord.knots.end(),
                                          [](const CordKnot& knot) { return knot.expected.has_value(); });
    std::stable_sort(cord.knots.begin(), cord.knots.end(), [&](const CordKnot& a, const CordKnot& b) {
      return all_expected ? *a.expected < *b.expected : a.tally.value_or(0) < b.tally.value_or(0);
    });
    cords.push_back(std::move(cord));
  }
  return cords;
}

std::vector<Drawing> cord_map_pages(const Rig& rig, const CordOfRig& cord, const std::string& boat,
                                    PaperSize size) {
  PageFlow page(
      size, {.name = say(CordMapPhrase::cord_map_begins, cord.record->name), .about = boat, .draft = {}});
  add_head(rig, cord, page);
  const bool to_scale = std::all_of(cord.knots.begin(), cord.knots.end(),
                                    [](const CordKnot& knot) { return knot.expected.has_value(); });
  page.text(cord.knots.empty() ? say(CordMapPhrase::no_reading_names_this_cord)
            : to_scale         ? say(CordMapPhrase::cord_its_knots_where_they)
                               : say(CordMapPhrase::cord_not_to_scale_not),
            {.size = 2.8, .bold = true, .indent = 0.0});
  const auto on_a_page = static_cast<std::size_t>((page.height() - 60.0 - above_entries) / entry_height);
  for (std::size_t from = 0; from < cord.knots.size(); from += on_a_page) {
    const auto begin = cord.knots.begin() + static_cast<std::ptrdiff_t>(from);
    const std::vector<CordKnot> knots(
        begin, begin + static_cast<std::ptrdiff_t>(std::min(on_a_page, cord.knots.size() - from)));
    page.drawing(above_entries + entry_height * static_cast<double>(knots.size()) + 2.0,
                 [&](ShapeGroup& into, PaperPoint at) { draw_map(rig, knots, page.width(), at, into); });
  }
  page.rule();
  constexpr TextLook small{.size = 2.8, .bold = false, .indent = 0.0};
  for (const std::string& name : names_in_full(rig, cord.knots, page.width()))
    page.text(name, small);
  page.text(say(CordMapPhrase::each_knot_has_its_own), small);
  for (const std::string& warning : warnings(rig, cord.knots))
    page.text(warning, {.size = 3.0, .bold = true, .indent = 0.0});
  return page.pages(say(CordMapPhrase::cord_map_of, cord.record->name),
                    say(CordMapPhrase::knots_one_messenger_cord_and));
}

BackendDescription CordMap::describe() const {
  return {.name = "cord-map",
          .summary = say(CordMapPhrase::page_for_each_messenger_cord),
          .outputs = {},
          .sometimes = {"cord-maps.html"},
          .papers = {"cord-maps.pdf"}};
}

OutputBundle CordMap::generate(const BackendRequest& request) const {
  const Rig& rig = request.checked.rig();
  const std::string boat = identity_words(request.checked);
  const std::vector<CordOfRig> cords = cords_of(request.checked);
  OutputBundle bundle;
  if (cords.empty())
    return bundle;
  add_pages(
      "cord-maps", say(CordMapPhrase::cord_maps_of, boat_title(request.checked)),
      pages_of_each(cords,
                    [&](const CordOfRig& cord) { return cord_map_pages(rig, cord, boat, request.paper); }),
      bundle);
  return bundle;
}

} // namespace sheerpole
