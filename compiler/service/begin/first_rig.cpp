#include "service/begin/first_rig.hpp"

#include "base/code_point.hpp"
#include "service/compile.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace sheerpole {

namespace {

constexpr std::size_t comment_width = 108; // of a comment at the head of a file

/// One declaration of a start, with the comment above it.
struct StartBlock {
  std::vector<std::string> comment;
  std::vector<std::string> lines;

  bool is(std::string_view kind) const { return lines.front().starts_with(std::string(kind) + " "); }
};

std::vector<StartBlock> blocks_of(std::string_view text) {
  std::vector<StartBlock> blocks;
  StartBlock block;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string line(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    if (line.empty() && block.lines.empty())
      continue;
    if (block.lines.empty() && line.starts_with('#')) {
      block.comment.push_back(line);
      continue;
    }
    block.lines.push_back(line);
    if (line == "}" || (block.lines.size() == 1 && !line.ends_with('{')))
      blocks.push_back(std::exchange(block, {}));
  }
  return blocks;
}

/// A stay of the file, for its reading.
struct FirstStay {
  std::string name;
  bool sides = false;
};

/// Puts a first file together.
class FirstFile {
public:
  explicit FirstFile(const FirstNumbers& numbers)
      : numbers_(numbers), start_(rig_start(numbers.rig)),
        blocks_(
            blocks_of(start_.blocks + (numbers.line == FirstLine::rope ? "\n" + start_.rope_blocks : ""))) {
    for (StartBlock& block : blocks_)
      if (block.is("stay"))
        make_up(block);
  }

  std::string written() const {
    const std::string line = numbers_.line == FirstLine::wire ? "wire" : "rope";
    std::string text = "language 1\n\n" + head(line);
    text += fmt::format("boat \"{}\" {{\n}}\n\n", escaped(numbers_.boat));
    if (numbers_.inches)
      text += "shop bench {\n  unit: inches\n  round-to: 1/16 in\n}\n\n";
    text += lets();
    for (const std::string_view kind : {"spar", "points", "spreader", "eye-stack"})
      text += kind == "points" ? all_points() : all(kind);
    if (!stays_.empty()) {
      text += "# Parts to begin with: measure your own, pin to pin, their holes and jaws as well, and put "
              "them in.\n";
      text += hardware_of(items_, numbers_.line) + "\n";
      if (numbers_.measured_by == FirstMeasure::cord)
        text += cords();
    }
    text += all("stay") + all("state");
    if (numbers_.measured_by == FirstMeasure::cord)
      text += knots();
    else if (numbers_.measured_by == FirstMeasure::tape)
      text += runs(text);
    while (text.ends_with("\n\n"))
      text.pop_back();
    return text;
  }

private:
  /// Replaces `made: …` by the line and the stack.
  void make_up(StartBlock& block) {
    const std::string& first = block.lines.front();
    const std::size_t from = first.find(' ') + 1;
    FirstStay stay{first.substr(from, first.find(' ', from) - from)};
    std::vector<std::string> lines;
    for (const std::string& one : block.lines) {
      stay.sides = stay.sides || one.starts_with("  sides:");
      if (!one.starts_with("  made: ")) {
        lines.push_back(one);
        continue;
      }
      lines.push_back(numbers_.line == FirstLine::wire ? "  line: first-wire" : "  line: first-rope");
      lines.emplace_back("  stack {");
      for (const std::string& item : stack_of(one.substr(8), numbers_.line)) {
        items_.push_back(item);
        lines.push_back("    " + item);
      }
      lines.emplace_back("  }");
    }
    items_.insert(items_.end(), lines.begin(), lines.end());
    block.lines = std::move(lines);
    stays_.push_back(std::move(stay));
  }

  std::string head(const std::string& line) const {
    const bool stayed = !stays_.empty();
    const std::string_view way = !stayed                                      ? "nothing"
                                 : numbers_.measured_by == FirstMeasure::cord ? "cord"
                                 : numbers_.measured_by == FirstMeasure::tape ? "tape"
                                                                              : "drawing";
    std::vector<std::string> todo = way_words(way, "todo");
    if (stayed)
      todo.insert(todo.begin() + 1, "Measure first " + start_.measure_first);
    return first_head(stayed ? fmt::format("{}, in {}, {} {}", start_.title, line,
                                           way == "drawing" ? "from a" : "measured by", way)
                             : start_.title,
                      todo);
  }

  std::string lets() const {
    std::string text;
    for (const AskedNumber& asked : asked_numbers())
      if (std::find(start_.asks.begin(), start_.asks.end(), asked.name) != start_.asks.end())
        text += fmt::format("let {} = {} assumed \"{}: measure\"\n", asked.name,
                            numbers_.numbers.find(asked.name)->second,
                            fmt::format(fmt::runtime(asked.what), start_.second_mast));
    for (const StartBlock& block : blocks_)
      if (block.is("let"))
        text += with_comment(block);
    return text + "\n";
  }

  static std::string with_comment(const StartBlock& block) {
    std::string text;
    for (const auto* lines : {&block.comment, &block.lines})
      for (const std::string& line : *lines)
        text += line + "\n";
    return text;
  }

  std::string all(std::string_view kind) const {
    std::string text;
    for (const StartBlock& block : blocks_)
      if (block.is(kind))
        text += with_comment(block) + "\n";
    return text;
  }

  /// The points of each spar in one block, those of the boat in the last.
  std::string all_points() const {
    std::vector<std::string> heads;
    for (const StartBlock& block : blocks_)
      if (block.is("points") && std::find(heads.begin(), heads.end(), block.lines.front()) == heads.end())
        heads.push_back(block.lines.front());
    std::stable_partition(heads.begin(), heads.end(),
                          [](const std::string& one) { return one != "points {"; });
    std::string text;
    for (const std::string& head : heads) {
      text += head + (head == "points {" ? "  # x forward, y to starboard, z up from the waterline\n"
                                         : "  # from its heel\n");
      for (const StartBlock& block : blocks_)
        if (block.lines.front() == head)
          for (std::size_t i = 1; i + 1 < block.lines.size(); ++i)
            text += block.lines[i] + "\n";
      text += "}\n\n";
    }
    return text;
  }

  /// A cord for each side, since no side is like the other before it was measured, and one for the
  /// centreline.
  std::string cords() const {
    std::string text;
    for (const auto& [name, where, sides] :
         {std::tuple("first-cord", "on the centreline", false), std::tuple("port-cord", "to port", true),
          std::tuple("starboard-cord", "to starboard", true)})
      if (std::any_of(stays_.begin(), stays_.end(),
                      [sides = sides](const FirstStay& stay) { return stay.sides == sides; }))
        text += fmt::format("cord {} \"The cord of the stays {}: its colour\" {{\n}}\n\n", name, where);
    return text;
  }

  /// The tally of each stay, in the order of the file: the same on the cords of both sides.
  std::string knots() const {
    std::string text;
    std::size_t of_sides = 0, of_centreline = 0;
    for (const FirstStay& stay : stays_) {
      const std::size_t tally = stay.sides ? ++of_sides : ++of_centreline;
      if (!stay.sides)
        text += knot(stay.name, "first-cord", tally);
      else
        for (const std::string side : {"port", "starboard"})
          text += knot(stay.name + "." + side, side + "-cord", tally);
    }
    return text;
  }

  static std::string knot(const std::string& stay, const std::string& cord, std::size_t tally) {
    return fmt::format("reading of {} {{\n  method: messenger\n  cord: {}\n  knots: {}\n"
                       "  offset: 0 mm assumed \"end of the cord to the bearing aloft: measure\"\n}}\n\n",
                       stay, cord, tally);
  }

  /// A reading of each stay and side, of the length that the points give; none where they give none.
  std::string runs(const std::string& so_far) const {
    OneTextReader reader("first.rig", so_far);
    const Compilation drawn = compile("first.rig", reader, {});
    if (!drawn.derived) // a number that no boat has: the file is looked at as a whole, and that is told
      return {};
    std::string text;
    for (const DerivedStay& stay : drawn.derived->stays)
      text += fmt::format("reading of {} {{\n  method: tape\n"
                          "  runs: {} mm assumed \"from the points: measure, twice\"\n}}\n\n",
                          (*drawn.rig)[stay.stay].name, grouped(stay.pin_to_pin.known()));
    return text;
  }

  /// 11_642, to a millimetre.
  static std::string grouped(Length length) {
    const std::string digits = std::to_string(std::llround(length.millimetres()));
    return digits.size() < 4 ? digits
                             : digits.substr(0, digits.size() - 3) + "_" + digits.substr(digits.size() - 3);
  }

  const FirstNumbers& numbers_;
  const RigStart& start_;
  std::vector<StartBlock> blocks_;
  std::vector<FirstStay> stays_;
  std::vector<std::string> items_; ///< and lines of the stays, by which parts are found
};

} // namespace

const std::vector<AskedNumber>& asked_numbers() {
  static const std::vector<AskedNumber> all{
      {"mast-height", "masthead above the waterline, of her higher mast: \"12.5 m\"",
       "masthead above the waterline"},
      {"beam", "greatest beam", "greatest beam"},
      {"base", "from the mast to the stem fitting, of her foremost mast", "mast to stem fitting"},
      {"bowsprit-length", "of a rig with a bowsprit: its length", "length of the bowsprit"},
      {"second-mast-height", "of a rig with two masts: masthead of the lower one above the waterline",
       "{} masthead above the waterline"},
      {"between-masts", "of a rig with two masts: from mast to mast", "from mast to mast"},
  };
  return all;
}

std::string first_head(const std::string& what, const std::vector<std::string>& todo) {
  std::string text;
  const auto comment = [&](const std::string& words, const std::string& first, const std::string& next) {
    std::string before = first;
    for (const std::string& line : wrap_text(words, comment_width - first.size())) {
      text += before + line + "\n";
      before = next;
    }
  };
  comment(what + ": a first file. What is assumed in it makes every cut a DRAFT. What to do now:", "# ",
          "# ");
  for (std::size_t i = 0; i < todo.size(); ++i)
    comment(todo[i], fmt::format("#   {}. ", i + 1), "#      ");
  comment("`sheerpole check` says what is still assumed. Cut nothing while it does.", "# ", "# ");
  return text + "\n";
}

std::string first_rig(const FirstNumbers& numbers) {
  return FirstFile(numbers).written();
}

} // namespace sheerpole
