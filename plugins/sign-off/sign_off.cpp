#include "plugins/sign-off/sign_off.hpp"
#include "wording/say.hpp"

#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/joints/joint.hpp"
#include "calculate/length/body.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/sign_off_words.hpp"

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

std::size_t last_line(const Stay& stay) {
  for (std::size_t i = stay.stack.size(); i-- > 0;)
    if (stay.stack[i].kind == StackItem::Kind::line)
      return i;
  return 0;
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
      for (int i = 0; i < joint.times; ++i)
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

  /// How far below the bearing aloft an item of the stack begins; nothing where a length before it is not
  /// known.
  std::optional<Length> down_to(std::size_t item) const {
    Length down;
    std::size_t piece = 0;
    for (std::size_t i = 0; i < item; ++i) {
      if (stay_.stack[i].kind != StackItem::Kind::line) {
        const auto taken = taken_length(rig_, stay_.stack[i]);
        const Part* part = part_at(i);
        if (!taken && part != nullptr && part->role != Part::Role::boat_fitting)
          return std::nullopt;
        down += taken.value_or(Length{});
        continue;
      }
      if (piece == derived_.pieces.size() || derived_.pieces[piece].body.unknown)
        return std::nullopt;
      down += derived_.pieces[piece++].body.known();
    }
    return down;
  }

  /// What lies between two lines of a stay is at neither end of it.
  Fastening placed_between(std::size_t item) const {
    Fastening one = placed(item);
    one.aloft = true;
    one.between = true;
    one.height.reset();
    if (const Spar* mast = mast_at(rig_, stay_, WhichEnd::upper))
      one.mast = spar_words(*mast);
    const auto down = down_to(item);
    if (!down || stay_.path.size() != 2 || derived_.pin_to_pin.unknown)
      return one;
    const Length whole = derived_.pin_to_pin.known();
    if (whole <= Length{})
      return one;
    const Length top = rig_[stay_.path.front().point].position.z;
    const Length foot = rig_[stay_.path.back().point].position.z;
    one.height = top - (*down / whole) * (top - foot);
    return one;
  }

  void add_pin(Fastening one, const JointPin& pin) {
    one.pin = true;
    one.known = pin.size.has_value();
    const std::string size = pin.size ? pin.size->text : std::string(blank);
    one.what = pin.own              ? pin.part->name + ", " + size
               : pin.jaw != nullptr ? say(SignOffPhrase::pin, size)
                                    : say(SignOffPhrase::pin_shackle, size);
    one.secured = fact(pin.part, fact_names.secured);
    if (pin.jaw != nullptr)
      if (const EndDimension* split = pin.jaw->find(EndDimensionName::split_pin))
        add_words(one.secured, ", ",
                  one.secured.empty() ? say(SignOffPhrase::split_pin, split->text) : split->text);
    list_.push_back(std::move(one));
  }

  /// What to look at where a wire ends.
  SignOffPhrase wire_words(const Joint& joint) const {
    const Part* upper = part_at(joint.upper);
    switch (wire_end((upper != nullptr ? upper : part_at(joint.lower))->kind)) {
    case WireEnd::sleeve:
      return SignOffPhrase::sleeve_look_for_crack_broken;
    case WireEnd::by_hand:
      return SignOffPhrase::wire_eye_look_at_tucks;
    case WireEnd::terminal:
      break;
    }
    return SignOffPhrase::terminal_look_for_crack_broken;
  }

  void add_joint(const Joint& joint) {
    // What lies above a line is placed by the upper thing, what lies below it by the lower.
    Fastening one = joint.lower > first_line(stay_) && joint.upper < last_line(stay_)
                        ? placed_between(joint.lower)
                        : placed(joint.upper < first_line(stay_) ? joint.upper : joint.lower);
    one.joint = say(rig_, joint.name);
    if (const auto pin = pin_of(rig_, joint)) {
      add_pin(std::move(one), *pin);
      return;
    }
    const StackItem& upper = stay_.stack[joint.upper];
    const StackItem& lower = stay_.stack[joint.lower];
    switch (joined_by(rig_, joint)) {
    case JoinedBy::thread:
      one.what = say(SignOffPhrase::stud_in_its_thread);
      one.secured = fact(part_at(joint.lower), fact_names.locked);
      if (one.secured.empty())
        one.secured = fact(part_at(joint.upper), fact_names.locked);
      break;
    case JoinedBy::hook:
      one.what = say(SignOffPhrase::hook);
      break;
    case JoinedBy::tee:
      one.what = say(SignOffPhrase::tee_in_its_slot);
      break;
    case JoinedBy::lashing: {
      const std::optional<int>& passes = upper.passes ? upper.passes : lower.passes;
      one.what = passes ? say(SignOffPhrase::lashing_passes, *passes)
                        : say(SignOffPhrase::lashing_or_lanyard_passes, blank);
      break;
    }
    case JoinedBy::rope_eye: {
      const std::optional<SpliceId>& splice = upper.splice ? upper.splice : lower.splice;
      one.what = splice ? say(SignOffPhrase::eye, rig_[*splice].name)
                        : say(SignOffPhrase::eye_spliced_or_seized, blank);
      if (splice)
        one.secured = fact_text(rig_[*splice].particulars, fact_names.locking);
      break;
    }
    case JoinedBy::terminal:
      one.what = say(wire_words(joint));
      one.secured = say(SignOffPhrase::nothing_to_secure);
      break;
    case JoinedBy::shackle:
      one.what = say(SignOffPhrase::bow_shackle);
      break;
    case JoinedBy::pin:
    case JoinedBy::not_stated:
      add_unknown(one);
      break;
    }
    list_.push_back(std::move(one));
  }

  static void add_unknown(Fastening& one) {
    one.what = say(SignOffPhrase::not_stated_pin, blank);
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
    const std::string name = outer ? outer->part->name : say(SignOffPhrase::line);
    one.joint =
        upper ? say(SignOffPhrase::what_it_hangs_on_to, name) : say(SignOffPhrase::to_what_holds_it, name);
    if (outer && outer->pin) {
      add_pin(std::move(one), *outer->pin);
      return;
    }
    if (outer && outer->part->kind == PartKind::shackle && upper)
      one.what = say(SignOffPhrase::bow_shackle);
    else if (outer && outer->part->kind == PartKind::soft_eye)
      one.what = say(SignOffPhrase::soft_eye_round_what_it);
    else if (outer && outer->part->kind == PartKind::lashing)
      one.what = say(SignOffPhrase::lashing_or_lanyard);
    else
      add_unknown(one);
    list_.push_back(std::move(one));
  }

  void add_screw(const TakeUp& adjuster) {
    const Part& part = rig_[adjuster.part];
    const bool between = adjuster.item > first_line(stay_) && adjuster.item < last_line(stay_);
    Fastening thread = between ? placed_between(adjuster.item) : placed(adjuster.item);
    thread.joint = part.name;
    thread.what = part.screw ? say(SignOffPhrase::thread, part.screw->thread.designation,
                                   (part.screw->pair ? say(SignOffPhrase::right_and_left_hand) : ""))
                             : say(SignOffPhrase::thread_of, blank);
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
  page.to_write(say(SignOffPhrase::not_reached_or_not_seen));
  page.to_write("");
  page.to_write(say(SignOffPhrase::looked_at_by_day));
  page.to_write(say(SignOffPhrase::looked_at_second_time_by));
}

std::string shown_place(const Fastening& fastening) {
  if (!fastening.height && fastening.between)
    return say(SignOffPhrase::in_the_stay);
  if (!fastening.height)
    return fastening.aloft ? say(SignOffPhrase::aloft) : say(SignOffPhrase::below);
  return format_fixed(fastening.height->metres(), 1) + " m, " +
         (fastening.between ? std::string(say(SignOffPhrase::in_the_stay)) : fastening.place);
}

/// The table of one mast, under its name where there are several.
void add_mast(const std::vector<Fastening>& of_mast, bool several, PageFlow& page) {
  FlowTable table{.columns = {{say(SignOffPhrase::place), 2.2},
                              {say(SignOffPhrase::stay), 2.6},
                              {say(SignOffPhrase::joint), 2.7},
                              {say(SignOffPhrase::what), 1.9},
                              {say(SignOffPhrase::secured_by), 2.0},
                              {say(SignOffPhrase::in), 0.6},
                              {say(SignOffPhrase::secured), 1.1},
                              {say(SignOffPhrase::again), 0.9}},
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
    page.heading(
        fmt::format("{}: {}",
                    mast.empty() ? say(SignOffPhrase::on_no_mast_file) : say(SignOffPhrase::the, mast),
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
  return say(SignOffPhrase::of_them_unknown, pins,
             pins == 1 ? say(SignOffPhrase::pin_word) : say(SignOffPhrase::pins),
             unknown == 0 ? say(SignOffPhrase::none) : std::to_string(unknown));
}

std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = say(SignOffPhrase::sign_off_joints_and_threads),
                       .about = identity_words(checked),
                       .draft = {}});
  add_head(say(SignOffPhrase::sign_off), boat, page);
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text(say(SignOffPhrase::pieces_of_line, states), {.size = 3.4, .bold = true, .indent = 0.0});
  const std::vector<Fastening> all = fastenings(checked);
  const auto joints =
      std::count_if(all.begin(), all.end(), [](const Fastening& one) { return !one.screw; });
  page.text(fmt::format("{} {}; {}.", joints,
                        joints == 1 ? say(SignOffPhrase::joint) : say(SignOffPhrase::joints),
                        pins_counted(all)),
            {.size = 3.8, .bold = true, .indent = 0.0});
  page.text(say(SignOffPhrase::every_joint_and_thread_from), small);
  page.notice(say(SignOffPhrase::aloft_two_lines_harness_second),
              {.size = 3.4, .bold = true, .indent = 0.0});
  if (all.empty())
    page.text(say(SignOffPhrase::rig_file_states_no_joint));
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
    page.text(say(SignOffPhrase::line_in_place_what_secures), small);
  add_signatures(page);
  return page.pages(say(SignOffPhrase::sign_off_of, boat), say(SignOffPhrase::every_joint_and_thread_with));
}

std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(
      size, {.name = say(SignOffPhrase::one_stay_at_time), .about = identity_words(checked), .draft = {}});
  add_head(say(SignOffPhrase::one_stay_at_time_capitals), boat, page);
  page.text(say(SignOffPhrase::number_stays_in_order_in), small);
  page.notice(say(SignOffPhrase::mast_that_has_lost_one), {.size = 3.4, .bold = true, .indent = 0.0});
  FlowTable table{.columns = {{say(SignOffPhrase::order), 0.9},
                              {say(SignOffPhrase::stay), 2.6},
                              {say(SignOffPhrase::held_meanwhile_by), 3.2},
                              {say(SignOffPhrase::tight), 0.8},
                              {say(SignOffPhrase::old_off), 0.9},
                              {say(SignOffPhrase::new_on), 0.9},
                              {say(SignOffPhrase::pinned), 0.95},
                              {say(SignOffPhrase::secured), 1.05}},
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
    page.text(say(SignOffPhrase::rig_file_states_no_stays));
  else
    page.table(table);
  page.text(say(SignOffPhrase::compare_each_old_stay_with), small);
  page.text(say(SignOffPhrase::local_codes_and_licensed_professional), small);
  add_signatures(page);
  return page.pages(say(SignOffPhrase::replacing_stays, boat), say(SignOffPhrase::one_stay_at_time_with));
}

SignOff::SignOff()
    : PagesBackend({"sign-off", "sign-off", say(SignOffPhrase::sign_off_begins),
                    say(SignOffPhrase::every_joint_and_thread_to)}) {}

std::vector<Drawing> SignOff::pages(const BackendRequest& request, const std::string& boat) const {
  std::vector<Drawing> drawn = sign_off_pages(request.checked, boat, request.paper);
  std::vector<Drawing> more = replacement_pages(request.checked, boat, request.paper);
  std::move(more.begin(), more.end(), std::back_inserter(drawn));
  return drawn;
}

} // namespace sheerpole
