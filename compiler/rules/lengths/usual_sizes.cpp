#include "calculate/cut/contraction.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/cut/piece.hpp"
#include "calculate/facts.hpp"
#include "limits/limit.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "units/named_size.hpp"
#include "wording/checks/length_phrases.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <iterator>
#include <map>
#include <optional>
#include <string_view>
#include <tuple>
#include <vector>

/// Sizes of parts and splices over the line that they are for. One table says what is usual; one look goes
/// by it.
namespace sheerpole::usual_sizes {

namespace {

using P = LengthCheckPhrase;

/// What is held against what.
enum class Ratio {
  length,         ///< of a fixed part, over the diameter of its line
  range,          ///< of an adjuster: longest over shortest
  inserted,       ///< of a wire into a socket, over its diameter
  seat,           ///< of a rope, over its diameter
  pin,            ///< of a jaw, over the diameter of the line
  thread,         ///< of a screw, over the diameter of the line
  eye,            ///< eye allowance of a splice, over the rope
  test_bury,      ///< bury of a test splice, over the rope
  contraction,    ///< of a splice, a share of the bury
  bury,           ///< of a splice, over the rope
  pitch,          ///< of a chain, over the diameter of its wire
  at_break,       ///< break load of a rope over its stiffness: how much it has stretched when it parts
  metal_at_break, ///< the same of a wire or a rod
};

struct Row {
  Ratio ratio;
  std::vector<PartKind> kinds; ///< none: of any
  double least, most;          ///< what is usual
  double never_over = 0.0;     ///< told above it however wide the limits are set; 0: nothing
};

/// Common practice, no source, where nothing else stands beside a row: what fittings of this kind were
/// found to be, from 3 mm wire to 16 mm rope.
const std::vector<Row>& rows() {
  using enum PartKind;
  static const std::vector<Row> table{
      {Ratio::length, {toggle}, 3.0, 16.0},
      {Ratio::length, {terminal}, 2.0, 13.0},
      {Ratio::length, {insulator}, 5.0, 30.0},
      {Ratio::length, {thimble}, 1.2, 6.0},
      {Ratio::length, {deadeye}, 1.5, 8.0},
      {Ratio::length, {shackle}, 2.0, 13.0},
      {Ratio::length, {hook}, 4.0, 24.0},
      {Ratio::length, {junction}, 1.5, 15.0},
      // From a lash block to the long links under a furler.
      {Ratio::length, {link}, 2.5, 30.0},
      // Two studs share the body, so that no screw opens to twice its shortest.
      {Ratio::range, {turnbuckle}, 1.1, 1.8, 2.0},
      // A rod in its cylinder.
      {Ratio::range, {cylinder}, 1.1, 2.0},
      {Ratio::range, {lever}, 1.05, 2.5},
      {Ratio::range, {hole_adjuster}, 1.3, 5.0},
      {Ratio::range, {lashing}, 1.5, 8.0},
      {Ratio::range, {tackle}, 1.5, 7.0},
      // Swaged and mechanical terminals.
      {Ratio::inserted, {toggle, terminal, insulator, turnbuckle}, 3.5, 14.0},
      // A rod's eye, a chain's last link.
      {Ratio::inserted, {link, hook, shackle}, 2.0, 14.0},
      // The wire goes round and back into a ferrule.
      {Ratio::inserted, {thimble, hole_adjuster}, 12.0, 45.0},
      // Round a dead-eye and back along itself, tucked or seized.
      {Ratio::inserted, {deadeye}, 20.0, 100.0},
      // Half round a mast or its hounds, and the tucks.
      {Ratio::inserted, {soft_eye}, 30.0, 200.0},
      // Tables of bend ratios disagree.
      {Ratio::seat, {thimble, shackle, hook}, 1.5, 7.0},
      // Pins of the preferred sizes of ISO 2340 and ISO 2341, from memory; which goes with which line is
      // practice.
      {Ratio::pin, {}, 0.6, 3.5},
      // Threads of ISO 261 and ASME B1.1; which goes with which line is practice.
      {Ratio::thread, {turnbuckle}, 0.9, 3.5},
      // Over thimbles and dead-eyes; round a mast more.
      {Ratio::eye, {}, 4.0, 30.0},
      // Found rules lie between 31 and 100 d.
      {Ratio::test_bury, {}, 36.0, 110.0},
      // The same rules; a splice that buries less has checks of its own.
      {Ratio::bury, {}, 31.0, 100.0, 125.0},
      // Found test splices.
      {Ratio::contraction, {}, 0.03, 0.15},
      // Short link 2.5 to 3.5 (EN 818, from memory), long link to 6.
      {Ratio::pitch, {}, 2.2, 6.5},
      // HMPE 3 to 4 %, polyester 12 %: Hooke's law between what makers state, from memory.
      {Ratio::at_break, {}, 0.008, 0.12},
      // Rod 0.6 %, 1x19 1.3 %, 7x7 and 7x19 up to 3 %: likewise.
      {Ratio::metal_at_break, {}, 0.006, 0.035},
  };
  return table;
}

/// One size as it is, and what it is over.
struct Size {
  Ratio ratio = Ratio::length;
  std::optional<PartKind> kind;
  std::string of;        ///< name of the part or the splice
  double value = 0.0;    ///< metres; a share of the contraction; newtons of a break load
  double over = 1.0;     ///< metres; newtons of a stiffness
  std::string over_what; ///< name of the line
  std::optional<Span> place;
  std::optional<Span> over_place;
};

P words_of(Ratio ratio) {
  switch (ratio) {
  case Ratio::length:
    return P::length_over_line;
  case Ratio::range:
    return P::longest_over_shortest;
  case Ratio::inserted:
    return P::inserted_over_line;
  case Ratio::seat:
    return P::seat_over_line;
  case Ratio::pin:
    return P::pin_over_line;
  case Ratio::thread:
    return P::thread_over_line;
  case Ratio::eye:
    return P::eye_over_line;
  case Ratio::test_bury:
  case Ratio::bury:
    return P::bury_over_line;
  case Ratio::contraction:
    return P::contraction_of_bury;
  case Ratio::pitch:
    return P::pitch_over_line;
  case Ratio::at_break:
  case Ratio::metal_at_break:
    return P::stretched_at_break;
  }
  return P::length_over_line;
}

/// How many times the size lies outside what is usual; 1 inside.
double times_off(const Row& row, const Size& size) {
  const double ratio = size.value / size.over;
  return std::max({1.0, ratio / row.most, row.least / ratio});
}

const Row* row_of(const Size& size) {
  for (const Row& row : rows())
    if (row.ratio == size.ratio &&
        (row.kinds.empty() ||
         (size.kind && std::count(row.kinds.begin(), row.kinds.end(), *size.kind) > 0)))
      return &row;
  return nullptr;
}

/// The sizes of the rig: each once for each line that it is on.
class Sizes {
public:
  explicit Sizes(const Rig& rig) : rig_(rig) {
    for (const Stay& stay : rig.stays) {
      const std::vector<std::size_t> lines = lines_of(stay);
      for (std::size_t i = 0; i < stay.stack.size(); ++i)
        if (stay.stack[i].kind == StackItem::Kind::part)
          of_item(stay, lines, i);
    }
    for (const Part& part : rig.parts)
      of_range(part);
    for (const LineMaterial& line : rig.materials)
      of_line(line);
    for (const Record& record : rig.records)
      if (record.kind == RecordKind::test_splice)
        of_test(record);
  }
  std::vector<Size> all;

private:
  void add(Ratio ratio, std::optional<PartKind> kind, const std::string& of, double value, double over,
           const std::string& over_what, std::optional<Span> place, std::optional<Span> over_place) {
    if (value > 0.0 && over > 0.0) // a length of nothing is stated of a part whose rope bears on the pin
      all.push_back({ratio, kind, of, value, over, over_what, place, over_place});
  }

  void of_item(const Stay& stay, const std::vector<std::size_t>& lines, std::size_t index) {
    const Part& part = rig_[stay.stack[index].part];
    const LineMaterial& line = line_by(stay, lines, index);
    const double d = line.diameter.value.metres();
    const auto over =
        line.diameter.provenance.place ? line.diameter.provenance.place : std::optional(line.place);
    const auto beside = [&](Ratio ratio, const Sourced<Length>& length) {
      add(ratio, part.kind, part.name, length.value.metres(), d, line.name, length.provenance.place, over);
    };
    if (part.length && part.role == Part::Role::fixed)
      beside(Ratio::length, *part.length);
    if (part.screw)
      add(Ratio::thread, part.kind, part.name, part.screw->thread.diameter.metres(), d, line.name,
          part.screw->provenance.place, over);
    for (const End* end : {&part.upper, &part.lower})
      for (const EndDimension& dimension : end->dimensions) {
        if (dimension.name == EndDimensionName::inserted)
          beside(Ratio::inserted, dimension.length);
        if (dimension.name == EndDimensionName::diameter && end->type == EndType::rope_seat)
          beside(Ratio::seat, dimension.length);
        if (dimension.name == EndDimensionName::pin)
          if (const auto pin = parse_named_size(dimension.text); pin.ok())
            add(Ratio::pin, part.kind, part.name, pin.value().diameter.metres(), d, line.name,
                dimension.length.provenance.place ? dimension.length.provenance.place : end->place, over);
      }
    if (const auto& splice_id = stay.stack[index].splice)
      of_splice(rig_.splices[splice_id->index()], line, part);
  }

  /// The line next to an entry: a piece of another material may lie beside it. Of two as near, the upper.
  const LineMaterial& line_by(const Stay& stay, const std::vector<std::size_t>& lines,
                              std::size_t index) const {
    if (lines.empty())
      return rig_[stay.material];
    const auto below = std::lower_bound(lines.begin(), lines.end(), index);
    const bool upper =
        below == lines.end() || (below != lines.begin() && index - *std::prev(below) <= *below - index);
    return rig_[stay.stack[upper ? *std::prev(below) : *below].material.value_or(stay.material)];
  }

  void of_splice(const Splice& splice, const LineMaterial& line, const Part& part) {
    const auto over = std::optional(line.place);
    // An eye round a mast takes rope for the mast.
    if (splice.eye_allowance && part.kind != PartKind::soft_eye)
      add(Ratio::eye, {}, splice.name, splice.eye_allowance->value.at(line.diameter.value).metres(),
          line.diameter.value.metres(), line.name, splice.eye_allowance->provenance.place, over);
    if (line.kind != LineMaterial::Kind::rope)
      return;
    if (holds_by_bury(splice))
      add(Ratio::bury, {}, splice.name, splice.bury.value.at(line.diameter.value).metres(),
          line.diameter.value.metres(), line.name, splice.bury.provenance.place, over);
    const Contraction contraction = contraction_of(rig_, line, splice);
    if (contraction.share)
      add(Ratio::contraction, {}, splice.name, contraction.share->value, 1.0, line.name,
          contraction.share->provenance.place, {});
  }

  void of_range(const Part& part) {
    if (part.shortest && part.longest)
      add(Ratio::range, part.kind, part.name, part.longest->value.metres(), part.shortest->value.metres(),
          part.name, part.longest->provenance.place, part.shortest->provenance.place);
  }

  void of_line(const LineMaterial& line) {
    const auto stiffness = line_stiffness(line);
    if (line.break_load && stiffness)
      add(line.kind == LineMaterial::Kind::wire || line.kind == LineMaterial::Kind::rod
              ? Ratio::metal_at_break
              : Ratio::at_break,
          {}, line.name, line.break_load->value.newtons(), stiffness->value.newtons(), line.name,
          stiffness->provenance.place, line.break_load->provenance.place);
    if (const auto pitch = fact_length(line.particulars, fact_names.pitch))
      add(Ratio::pitch, {}, line.name, pitch->value.metres(), line.diameter.value.metres(), line.name,
          pitch->provenance.place, line.place);
  }

  void of_test(const Record& record) {
    const auto bury = fact_length(record.facts, fact_names.bury);
    for (const LineMaterial& line : rig_.materials)
      if (bury && line.name == record.of)
        add(Ratio::test_bury, {}, record.name, bury->value.metres(), line.diameter.value.metres(),
            line.name, bury->provenance.place, line.place);
  }

  const Rig& rig_;
};

Remark words(const Row& row, const Size& size) {
  const double ratio = size.value / size.over;
  if (size.ratio == Ratio::contraction || size.ratio == Ratio::at_break ||
      size.ratio == Ratio::metal_at_break)
    return {words_of(size.ratio), {Share{ratio}, Share{row.least}, Share{row.most}}};
  if (size.ratio == Ratio::range) // over itself
    return {words_of(size.ratio),
            {Length::metres(size.value), Decimal{ratio, 1}, Length::metres(size.over),
             Decimal{row.least, 1}, Decimal{row.most, 1}}};
  return {words_of(size.ratio),
          {Length::metres(size.value), Decimal{ratio, 1}, Length::metres(size.over), Words{size.over_what},
           Decimal{row.least, 1}, Decimal{row.most, 1}}};
}

/// What is one number in the file, on however many lines it is: by what it is of and where it stands.
using OneNumber = std::tuple<Ratio, std::string_view, std::optional<Span>>;

OneNumber number_behind(const Size& size) {
  return {size.ratio, size.of, size.place};
}

void check_sizes(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const bool errors = report.check() == "size-far-off";
  const auto off = rig.limits.value(Limit::size_off);
  const auto far_off = rig.limits.value(Limit::size_far_off);
  const std::vector<Size> sizes = Sizes(rig).all;
  std::map<OneNumber, std::vector<const Size*>> alike;
  for (const Size& size : sizes)
    alike[number_behind(size)].push_back(&size);
  for (const Size& first : sizes) {
    const Row* row = row_of(first);
    const std::vector<const Size*>& all = alike.at(number_behind(first));
    if (row == nullptr || all.front() != &first)
      continue;
    // A part that is on several lines is usual when it is on one of them.
    const Size* nearest = &first;
    for (const Size* size : all)
      if (times_off(*row, *size) < times_off(*row, *nearest))
        nearest = size;
    const double times = times_off(*row, *nearest);
    const Remark remark = words(*row, *nearest);
    const bool is_far = far_off && is_below(*far_off, times);
    const bool over = row->never_over > 0.0 && is_below(row->never_over, nearest->value / nearest->over);
    if (errors ? is_far : !is_far && off && (over || is_below(*off, times))) {
      auto finding = diagnose(report.check(), {{"name", nearest->of}, {"words", say(rig, remark)}});
      if (nearest->place)
        finding = std::move(finding).at(*nearest->place);
      if (nearest->over_place)
        finding = std::move(finding).and_at(*nearest->over_place, say(rig, {P::over_this}));
      report.find(std::move(finding).about(nearest->of));
    } else if (errors || !is_far)
      report.pass(nearest->of, remark);
  }
}

/// The number at the end of a name: 46 of `lash-block-46`. Nothing when it has none.
std::optional<int> number_of(const std::string& name) {
  std::size_t at = name.size();
  while (at > 0 && std::isdigit(static_cast<unsigned char>(name[at - 1])) != 0)
    --at;
  if (at == name.size() || name.size() - at > 5 || at == 0 || name[at - 1] != '-')
    return std::nullopt;
  return std::atoi(name.c_str() + at);
}

/// Whether a number is another with a digit too many, a digit too few, or its digits in another order.
bool slipped(double named, double stated) {
  const auto near = [](double a, double b) { return std::abs(a - b) < 1e-6 * b; };
  if (near(stated, 10.0 * named) || near(10.0 * stated, named))
    return true;
  if (std::abs(stated - std::round(stated)) > 1e-6 || near(stated, named))
    return false;
  std::string a = std::to_string(static_cast<long>(std::round(named)));
  std::string b = std::to_string(static_cast<long>(std::round(stated)));
  std::sort(a.begin(), a.end());
  std::sort(b.begin(), b.end());
  return a == b;
}

struct Named {
  const std::string& name;
  const Sourced<Length>& length;
  P what;
};

void look_at_name(const Rig& rig, const Named& thing, const std::vector<double>& sizes_mm,
                  CheckReport& report) {
  const auto number = number_of(thing.name);
  if (!number)
    return;
  // A name may speak of the line or the pin that the part is for.
  if (std::any_of(sizes_mm.begin(), sizes_mm.end(),
                  [&](double size) { return std::abs(size - *number) < 0.6; })) {
    report.not_checked(thing.name, {P::name_is_of_line});
    return;
  }
  const double stated = thing.length.value.millimetres();
  if (!slipped(*number, stated)) {
    report.pass(thing.name, {thing.what, {thing.length.value}});
    return;
  }
  auto finding = diagnose("size-against-name",
                          {{"name", thing.name}, {"words", say(rig, {thing.what, {thing.length.value}})}});
  if (thing.length.provenance.place)
    finding = std::move(finding).at(*thing.length.provenance.place);
  report.find(std::move(finding).about(thing.name));
}

void check_names(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  for (const LineMaterial& line : rig.materials)
    if (line.size.system == NamedSize::System::metric)
      look_at_name(rig, {line.name, line.diameter, P::its_diameter_is}, {}, report);
  const std::vector<Size> sizes = Sizes(rig).all;
  std::map<std::string_view, std::vector<double>> stated; // millimetres, by what they are of
  for (const Size& size : sizes)
    if (size.ratio != Ratio::range)
      stated[size.of].push_back(
          (size.ratio == Ratio::pin || size.ratio == Ratio::thread ? size.value : size.over) * 1000.0);
  for (const Part& part : rig.parts) {
    const std::vector<double>& others = stated[part.name];
    if (part.length && part.length->value > Length{})
      look_at_name(rig, {part.name, *part.length, P::its_length_is}, others, report);
    else if (part.longest &&
             number_of(part.name).value_or(0) >= 100) // as a lashing is named by how far it reaches
      look_at_name(rig, {part.name, *part.longest, P::its_longest_is}, others, report);
  }
}

} // namespace

const CheckTable checks{CheckRow{"size-far-off", check_sizes, {Limit::size_far_off}, true},
                        CheckRow{"size-unusual", check_sizes, {Limit::size_off}},
                        CheckRow{"size-against-name", check_names}};

} // namespace sheerpole::usual_sizes
