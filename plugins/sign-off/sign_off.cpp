#include "plugins/sign-off/sign_off.hpp"
#include "wording/say.hpp"

#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/joints/joint.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <limits>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::string_view blank = "________";

std::size_t first_line(const Stay& stay) {
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line)
      return i;
  return stay.stack.size();
}

/// The joints of one stay, each as a row.
class FasteningsOfStay {
public:
  FasteningsOfStay(const Rig& rig, const DerivedStay& derived, std::vector<Fastening>& list)
      : rig_(rig), derived_(derived), stay_(rig[derived.stay]), list_(list) {}

  void add() {
    if (!stay_.stack.empty())
      add_outermost(WhichEnd::upper);
    for (const Joint& joint : derived_.joints)
      add_joint(joint);
    if (!stay_.stack.empty())
      add_outermost(WhichEnd::lower);
    for (const TakeUp& adjuster : derived_.adjusters)
      if (rig_[adjuster.part].kind == PartKind::turnbuckle)
        add_screw(adjuster);
  }

private:
  const Part* part_at(std::size_t item) const {
    return stay_.stack[item].kind == StackItem::Kind::part ? &rig_[stay_.stack[item].part] : nullptr;
  }
  std::string fact(const Part* part, std::string_view name) const {
    return part == nullptr ? std::string() : fact_text(part->particulars, name);
  }

  /// Where on the boat an item of the stack is: at the upper end of the path above the line, else at the
  /// lower.
  Fastening placed(std::size_t item) const {
    Fastening one;
    one.stay = stay_.name;
    one.aloft = item < first_line(stay_);
    const WhichEnd where = one.aloft ? WhichEnd::upper : WhichEnd::lower;
    if (const Spar* mast = mast_at(rig_, stay_, where))
      one.mast = spar_words(*mast);
    if (stay_.path.size() >= 2) {
      const Point& point = rig_[one.aloft ? stay_.path.front().point : stay_.path.back().point];
      one.height = point.position.z;
      one.place = place_words(rig_, point);
    }
    return one;
  }

  void add_pin(Fastening one, const JointPin& pin) {
    one.pin = true;
    one.known = pin.size.has_value();
    const std::string size = pin.size ? pin.size->text : std::string(blank);
    one.what = pin.own              ? pin.part->name + ", " + size
               : pin.jaw != nullptr ? "pin " + size
                                    : "pin of the shackle, " + size;
    one.secured = fact(pin.part, fact_names.secured);
    if (pin.jaw != nullptr)
      if (const EndDimension* split = pin.jaw->find(EndDimensionName::split_pin))
        add_words(one.secured, ", ", one.secured.empty() ? "split pin " + split->text : split->text);
    list_.push_back(std::move(one));
  }

  void add_joint(const Joint& joint) {
    // What lies above a line is placed by the upper thing, what lies below it by the lower.
    Fastening one = placed(joint.upper < first_line(stay_) ? joint.upper : joint.lower);
    one.joint = say(rig_, joint.name);
    if (const auto pin = pin_of(rig_, joint)) {
      add_pin(std::move(one), *pin);
      return;
    }
    const StackItem& upper = stay_.stack[joint.upper];
    const StackItem& lower = stay_.stack[joint.lower];
    switch (joined_by(rig_, joint)) {
    case JoinedBy::thread:
      one.what = "stud in its thread";
      one.secured = fact(part_at(joint.lower), fact_names.locked);
      if (one.secured.empty())
        one.secured = fact(part_at(joint.upper), fact_names.locked);
      break;
    case JoinedBy::hook:
      one.what = "hook";
      break;
    case JoinedBy::tee:
      one.what = "tee in its slot";
      break;
    case JoinedBy::lashing: {
      const std::optional<int>& passes = upper.passes ? upper.passes : lower.passes;
      one.what = passes ? "lashing, passes " + std::to_string(*passes)
                        : "lashing or lanyard, passes " + std::string(blank);
      break;
    }
    case JoinedBy::rope_eye: {
      const std::optional<SpliceId>& splice = upper.splice ? upper.splice : lower.splice;
      one.what = splice ? "eye, " + rig_[*splice].name : "eye, spliced or seized: " + std::string(blank);
      if (splice)
        one.secured = fact_text(rig_[*splice].particulars, fact_names.locking);
      break;
    }
    case JoinedBy::terminal:
      one.what = "terminal: look for a crack, a broken wire";
      one.secured = "nothing to secure";
      break;
    case JoinedBy::shackle:
      one.what = "bow of the shackle";
      break;
    case JoinedBy::pin:
    case JoinedBy::not_stated:
      add_unknown(one);
      break;
    }
    list_.push_back(std::move(one));
  }

  static void add_unknown(Fastening& one) {
    one.what = "not stated; pin " + std::string(blank);
    one.pin = true;
    one.known = false;
  }

  bool bears(std::size_t item) const {
    const Part* part = part_at(item);
    return part == nullptr || part->role != Part::Role::worn;
  }
  /// The size of the stack when all that is in it is only worn.
  std::size_t first_bearing() const {
    std::size_t item = 0;
    while (item < stay_.stack.size() && !bears(item))
      ++item;
    return item;
  }
  std::size_t last_bearing() const {
    for (std::size_t item = stay_.stack.size(); item-- > 0;)
      if (bears(item))
        return item;
    return stay_.stack.size();
  }

  /// What a stack hangs on that names no fitting of the boat there.
  void add_outermost(WhichEnd where) {
    const bool upper = where == WhichEnd::upper;
    const std::size_t item = upper ? first_bearing() : last_bearing();
    if (item == stay_.stack.size())
      return;
    const auto outer = outer_end(rig_, stay_, derived_.joints, where);
    const bool line = stay_.stack[item].kind == StackItem::Kind::line;
    if (!outer && !line)
      return; // a fitting of the boat, or a junction
    Fastening one = placed(outer ? outer->item : item);
    one.aloft = upper;
    const std::string name = outer ? outer->part->name : "line";
    one.joint = upper ? "what it hangs on to " + name : name + " to what holds it";
    if (outer && outer->pin) {
      add_pin(std::move(one), *outer->pin);
      return;
    }
    if (outer && outer->part->kind == PartKind::shackle && upper)
      one.what = "bow of the shackle";
    else if (outer && outer->part->kind == PartKind::soft_eye)
      one.what = "soft eye round what it lies on";
    else if (outer && outer->part->kind == PartKind::lashing)
      one.what = "lashing or lanyard";
    else
      add_unknown(one);
    list_.push_back(std::move(one));
  }

  void add_screw(const TakeUp& adjuster) {
    const Part& part = rig_[adjuster.part];
    Fastening thread = placed(adjuster.item);
    thread.joint = part.name;
    thread.what = part.screw ? "thread " + part.screw->thread.designation +
                                   (part.screw->pair ? ", right and left hand" : "")
                             : "thread " + std::string(blank);
    thread.secured = fact_text(part.particulars, fact_names.locked);
    thread.screw = true;
    list_.push_back(std::move(thread));
  }

  const Rig& rig_;
  const DerivedStay& derived_;
  const Stay& stay_;
  std::vector<Fastening>& list_;
};

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

/// The table of one mast, under its name where there are several.
void add_mast(const std::vector<Fastening>& of_mast, bool several, PageFlow& page) {
  FlowTable table{.columns = {{"place", 2.2},
                              {"stay", 2.1},
                              {"joint", 3.0},
                              {"what", 2.1},
                              {"secured by", 2.0},
                              {"in", 0.6},
                              {"secured", 1.1},
                              {"again", 0.9}},
                  .size = 2.9};
  for (const Fastening& one : of_mast)
    table.rows.push_back({{.text = shown_place(one)},
                          {.text = one.stay},
                          {.text = one.joint},
                          {.text = one.what},
                          one.secured.empty() ? cell_to_write : FlowCell{.text = one.secured},
                          cell_to_tick,
                          cell_to_tick,
                          cell_to_tick});
  if (several) {
    const std::string& mast = of_mast.front().mast;
    page.heading(fmt::format("{}: {}", mast.empty() ? "On no mast of the file" : "The " + mast,
                             pins_counted(of_mast)),
                 4.4, page.head_height(table));
  }
  page.table(table);
}

} // namespace

std::vector<Fastening> fastenings(const CheckedRig& checked) {
  std::vector<Fastening> list;
  for (const DerivedStay& stay : checked.derived().stays)
    FasteningsOfStay(checked.rig(), stay, list).add();
  std::vector<std::string> masts;
  for (const Spar* mast : masts_of(checked.rig()))
    masts.push_back(spar_words(*mast));
  const auto mast = [&](const Fastening& one) {
    return std::find(masts.begin(), masts.end(), one.mast) - masts.begin();
  };
  const auto height = [](const Fastening& one) {
    return one.height ? one.height->metres() : -std::numeric_limits<double>::max();
  };
  std::stable_sort(list.begin(), list.end(), [&](const Fastening& a, const Fastening& b) {
    if (mast(a) != mast(b))
      return mast(a) < mast(b);
    if (height(a) != height(b))
      return height(a) > height(b);
    return a.aloft && !b.aloft;
  });
  return list;
}

std::string pins_counted(const std::vector<Fastening>& all) {
  const auto pins = std::count_if(all.begin(), all.end(), [](const Fastening& one) { return one.pin; });
  const auto unknown =
      std::count_if(all.begin(), all.end(), [](const Fastening& one) { return one.pin && !one.known; });
  return fmt::format("{} {}, {} of them unknown", pins, pins == 1 ? "pin" : "pins",
                     unknown == 0 ? "none" : std::to_string(unknown));
}

std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size,
                {.name = "Sign-off, joints and threads", .about = identity_words(checked), .draft = {}});
  add_head("SIGN-OFF", boat, page);
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text("Pieces of line: " + states + ".", {.size = 3.4, .bold = true, .indent = 0.0});
  const std::vector<Fastening> all = fastenings(checked);
  const auto joints =
      std::count_if(all.begin(), all.end(), [](const Fastening& one) { return !one.screw; });
  page.text(fmt::format("{} {}; {}.", joints, joints == 1 ? "joint" : "joints", pins_counted(all)),
            {.size = 3.8, .bold = true, .indent = 0.0});
  page.text("Every joint and thread from aloft to deck, by the height of its end of the stay above the "
            "waterline. Tick what you have seen with your own eyes; what you did not reach stays open. "
            "Where there is a blank the file does not say: measure the pin, write its size. A joint that "
            "the file does not describe counts as an unknown pin.",
            small);
  page.notice(
      "Aloft: two lines, a harness, a second person on deck, and nobody below. Sharp ends of split pins "
      "cut hands and sails. Do not undo a pin of a loaded stay.",
      {.size = 3.4, .bold = true, .indent = 0.0});
  if (all.empty())
    page.text(
        "The rig file states no joint. Write down what you find: every pin, seizing and knot by which a "
        "stay hangs.");
  for (std::size_t from = 0; from < all.size();) {
    std::size_t to = from;
    while (to < all.size() && all[to].mast == all[from].mast)
      ++to;
    add_mast(
        {all.begin() + static_cast<std::ptrdiff_t>(from), all.begin() + static_cast<std::ptrdiff_t>(to)},
        from > 0 || to < all.size(), page);
    from = to;
  }
  if (!all.empty())
    page.text("A line in place of what secures it: the rig file does not say; write what you find.", small);
  add_signatures(page);
  return page.pages("Sign-off of " + boat, "Every joint and thread with boxes to tick.");
}

std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "One stay at a time", .about = identity_words(checked), .draft = {}});
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
    : PagesBackend(
          {"sign-off", "sign-off", "Sign-off",
           "every joint and thread to be ticked, by mast, aloft to deck; a sheet for one stay at a time"}) {
}

std::vector<Drawing> SignOff::pages(const BackendRequest& request, const std::string& boat) const {
  std::vector<Drawing> drawn = sign_off_pages(request.checked, boat, request.paper);
  std::vector<Drawing> more = replacement_pages(request.checked, boat, request.paper);
  std::move(more.begin(), more.end(), std::back_inserter(drawn));
  return drawn;
}

} // namespace sheerpole
