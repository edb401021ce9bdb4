#include "plugins/sign-off/sign_off.hpp"
#include "wording/say.hpp"

#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/joints/joint.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <iterator>
#include <limits>
#include <utility>

namespace sheerpole {

namespace {

/// The item of a joint that brings the pin: the one with the jaw, else whatever has a pin of its own by
/// its kind.
struct PinBearer {
  const Part* part = nullptr;
  std::string pin; ///< "5/8 in"; empty: not stated
  std::string split_pin;
};

const Part* part_of(const Rig& rig, const StackItem& item) {
  return item.kind == StackItem::Kind::part ? &rig[item.part] : nullptr;
}

/// What brings the pin when this end of the part is a jaw.
std::optional<PinBearer> of_jaw(const Part* part, const End* end) {
  if (end == nullptr || part == nullptr || end->type != EndType::jaw)
    return std::nullopt;
  PinBearer bearer{part, {}, {}};
  if (const EndDimension* pin = end->find(EndDimensionName::pin))
    bearer.pin = pin->text;
  if (const EndDimension* split = end->find(EndDimensionName::split_pin))
    bearer.split_pin = split->text;
  return bearer;
}

std::optional<PinBearer> pin_at(const Rig& rig, const Stay& stay, const Joint& joint) {
  if (auto bearer = of_jaw(part_of(rig, stay.stack[joint.upper]), upper_end(rig, joint)))
    return bearer;
  return of_jaw(part_of(rig, stay.stack[joint.lower]), lower_end(rig, joint));
}

std::size_t first_line(const Stay& stay) {
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line)
      return i;
  return stay.stack.size();
}

/// Where on the boat an item of the stack is: at the upper end of the path above the line, else at the
/// lower.
Fastening placed(const Rig& rig, const Stay& stay, std::size_t item) {
  Fastening fastening;
  fastening.stay = stay.name;
  fastening.aloft = item < first_line(stay);
  if (stay.path.size() >= 2) {
    const Point& point = rig[fastening.aloft ? stay.path.front().point : stay.path.back().point];
    fastening.height = point.position.z;
    fastening.place = point.name;
  }
  return fastening;
}

Fastening pin_of(const Rig& rig, const Stay& stay, std::size_t item, const PinBearer& bearer,
                 std::string joint) {
  Fastening pin = placed(rig, stay, item);
  pin.joint = std::move(joint);
  pin.what = bearer.pin.empty() ? "pin, size not stated" : "pin " + bearer.pin;
  pin.secured = fact_text(bearer.part->particulars, fact_names.secured);
  if (!bearer.split_pin.empty())
    pin.secured += (pin.secured.empty() ? "split pin " : ", ") + bearer.split_pin;
  return pin;
}

/// The end of an outermost part that faces away from the stay; null for what belongs to the boat, whose
/// other end is fast to it.
const End* outward_end(const Part* part, bool upper, bool turned) {
  if (part == nullptr || part->role == Part::Role::boat_fitting)
    return nullptr;
  return upper != turned ? &part->upper : &part->lower;
}

/// A stack that ends with a jaw hangs on something that the file does not state, by a pin all the same.
void add_outermost_pins(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  if (stay.stack.empty())
    return;
  const std::size_t last = stay.stack.size() - 1;
  bool first_turned = false;
  bool last_turned = false;
  for (const Joint& joint : derived.joints) {
    first_turned = joint.upper == 0 ? joint.upper_turned : first_turned;
    last_turned = joint.lower == last ? joint.lower_turned : last_turned;
  }
  for (const bool upper : {true, false}) {
    const std::size_t item = upper ? 0 : last;
    const Part* part = part_of(rig, stay.stack[item]);
    if (const auto bearer = of_jaw(part, outward_end(part, upper, upper ? first_turned : last_turned)))
      list.push_back(
          pin_of(rig, stay, item, *bearer,
                 upper ? "what it hangs on to " + part->name : part->name + " to what holds it"));
  }
}

void add_pins(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (const Joint& joint : derived.joints)
    if (const auto bearer = pin_at(rig, stay, joint))
      list.push_back(pin_of(rig, stay, joint.upper, *bearer, say(rig, joint.name)));
  add_outermost_pins(rig, derived, list);
}

/// A shackle brings a pin of its own, whatever its ends are said to be.
void add_shackles(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    const Part* part = part_of(rig, stay.stack[i]);
    if (part == nullptr || part->kind != PartKind::shackle || part->upper.type == EndType::jaw ||
        part->lower.type == EndType::jaw)
      continue;
    Fastening pin = placed(rig, stay, i);
    pin.joint = part->name;
    pin.what = "pin of the shackle";
    pin.secured = fact_text(part->particulars, fact_names.secured);
    list.push_back(std::move(pin));
  }
}

void add_threads(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list) {
  const Stay& stay = rig[derived.stay];
  for (const TakeUp& adjuster : derived.adjusters) {
    const Part& part = rig[adjuster.part];
    if (part.kind != PartKind::turnbuckle)
      continue;
    Fastening thread = placed(rig, stay, adjuster.item);
    thread.joint = part.name;
    thread.what = part.screw ? "thread " + part.screw->thread.designation +
                                   (part.screw->pair ? ", right and left hand" : "")
                             : "thread, not stated";
    thread.secured = fact_text(part.particulars, fact_names.locked);
    list.push_back(std::move(thread));
  }
}

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

void add_head(std::string_view name, const std::string& boat, PageFlow& page) {
  page.text(std::string(name) + "   " + boat, {.size = 7.0, .bold = true, .indent = 0.0});
  page.space(1.0);
}

void add_signatures(PageFlow& page) {
  page.room_for(40.0);
  page.space(3.0);
  page.to_write("Not reached or not seen, and why:");
  page.to_write("");
  page.to_write("Looked at by, day:");
  page.to_write("Looked at a second time by, day:");
}

std::string shown_place(const Fastening& fastening) {
  if (!fastening.height)
    return fastening.aloft ? "aloft" : "below";
  return format_fixed(fastening.height->metres(), 1) + " m, " + fastening.place;
}

} // namespace

std::vector<Fastening> pin_list(const CheckedRig& checked) {
  std::vector<Fastening> list;
  for (const DerivedStay& stay : checked.derived().stays) {
    add_pins(checked.rig(), stay, list);
    add_shackles(checked.rig(), stay, list);
    add_threads(checked.rig(), stay, list);
  }
  const auto height = [](const Fastening& one) {
    return one.height ? one.height->metres() : -std::numeric_limits<double>::max();
  };
  std::stable_sort(list.begin(), list.end(), [&](const Fastening& a, const Fastening& b) {
    if (height(a) != height(b))
      return height(a) > height(b);
    return a.aloft && !b.aloft;
  });
  return list;
}

std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size,
                {.name = "Sign-off, pins and threads", .about = boat_and_revision(checked), .draft = {}});
  add_head("SIGN-OFF", boat, page);
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text("Pieces of line: " + states + ".", {.size = 3.4, .bold = true, .indent = 0.0});
  page.text(
      "Every pin and thread from aloft to deck, by the height of its end of the stay above the waterline. "
      "Tick what you have seen with your own eyes; what you did not reach stays open. Masts come down "
      "for want of a pin that could wait.",
      small);
  page.notice(
      "Aloft: two lines, a harness, a second person on deck, and nobody below. Sharp ends of split pins "
      "cut hands and sails. Do not undo a pin of a loaded stay.",
      {.size = 3.4, .bold = true, .indent = 0.0});
  FlowTable table{.columns = {{"place", 2.2},
                              {"stay", 2.1},
                              {"joint", 3.0},
                              {"what", 1.9},
                              {"secured by", 2.1},
                              {"in", 0.6},
                              {"secured", 1.1},
                              {"again", 0.9}},
                  .size = 2.9};
  for (const Fastening& one : pin_list(checked))
    table.rows.push_back({{.text = shown_place(one)},
                          {.text = one.stay},
                          {.text = one.joint},
                          {.text = one.what},
                          one.secured.empty() ? cell_to_write : FlowCell{.text = one.secured},
                          cell_to_tick,
                          cell_to_tick,
                          cell_to_tick});
  if (table.rows.empty())
    page.text("The rig file states no jaw, no shackle and no screw. Write down what you find: every pin, "
              "seizing and "
              "knot by which a stay hangs.");
  else {
    page.table(table);
    page.text("A line in place of what secures it: the rig file does not say; write what you find. "
              "Seizings, knots "
              "and lashings are looked at as well; the list names pins and threads alone.",
              small);
  }
  add_signatures(page);
  return page.pages("Sign-off of " + boat, "Every pin and thread with boxes to tick.");
}

std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "One stay at a time", .about = boat_and_revision(checked), .draft = {}});
  add_head("ONE STAY AT A TIME", boat, page);
  page.text(
      "Number the stays in the order in which you will replace them, and write what holds the mast while "
      "each is off. Go on to the next only when this one is pinned, secured and hand-tight. This sheet is "
      "no calculation of what the mast stands: a rigger decides the order on the boat.",
      small);
  page.notice(
      "A mast that has lost one stay stands by what you put in its place. Two halyards, made off and "
      "tight, before the pin comes out; nobody aloft on a mast whose stays are being changed; no boat "
      "passing close by. Never two stays at once.",
      {.size = 3.4, .bold = true, .indent = 0.0});
  FlowTable table{.columns = {{"order", 0.9},
                              {"stay", 2.6},
                              {"held meanwhile by", 3.2},
                              {"tight", 0.8},
                              {"old off", 0.9},
                              {"new on", 0.9},
                              {"pinned", 0.95},
                              {"secured", 1.05}},
                  .size = 3.2};
  for (const Stay& stay : checked.rig().stays)
    table.rows.push_back({cell_to_write,
                          {.text = stay.name},
                          cell_to_write,
                          cell_to_tick,
                          cell_to_tick,
                          cell_to_tick,
                          cell_to_tick,
                          cell_to_tick});
  if (table.rows.empty())
    page.text("The rig file states no stays.");
  else
    page.table(table);
  page.text(
      "Compare each old stay with the new one before it goes up: bearing to bearing, at the same pull.",
      small);
  page.text("Local codes and a licensed professional rigger come before this sheet.", small);
  add_signatures(page);
  return page.pages("Replacing the stays of " + boat, "One stay at a time, with boxes to tick.");
}

SignOff::SignOff()
    : PagesBackend({"sign-off", "sign-off", "Sign-off",
                    "every pin and thread to be ticked, aloft to deck; a sheet for one stay at a time"}) {}

std::vector<Drawing> SignOff::pages(const BackendRequest& request, const std::string& boat) const {
  std::vector<Drawing> drawn = sign_off_pages(request.checked, boat, request.paper);
  std::vector<Drawing> more = replacement_pages(request.checked, boat, request.paper);
  std::move(more.begin(), more.end(), std::back_inserter(drawn));
  return drawn;
}

} // namespace sheerpole
