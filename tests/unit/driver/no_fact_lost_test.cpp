// No stated fact is lost: each property of each kind, each setting of an item in a stack and each dimension
// of an end is stated in a boat that uses such a thing and changed by one step, and something that a user
// sees has to change: a length, a check, a finding, a table or a paper, not only the list of all that is
// stated; or a finding refuses the row by its name. What the table of kinds marks as for the record stands
// in that list and in the survey report, and moves no length, check or finding.

#include "backend/table/rig_tables.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/built_in_backends.hpp"
#include "kinds/kind_row.hpp"
#include "service/compile.hpp"
#include "unit/driver/changed_boat.hpp"
#include "unit/share.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
#include <memory>
#include <optional>
#include <regex>
#include <set>
#include <span>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace sheerpole::no_fact_lost_test {
namespace {

using namespace changed_boat;

constexpr const char* file_name = "boat.rig";

/// How much of a boat is looked at: fewer stays and no bounds are faster, and mostly tell as much.
enum class Extent { one_stay, used_by, unbounded, whole };

/// Without `± 5 mm`, `± 0.4 %` and their like.
std::string without_bounds(const std::string& text) {
  const std::string sign = "\xC2\xB1";
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t found = std::min(text.find(sign, at), text.size());
    result += text.substr(at, found - at);
    at = found;
    if (found == text.size())
      break;
    at += sign.size();
    for (const bool number : {true, false}) {
      while (at < text.size() && text[at] == ' ')
        ++at;
      while (at < text.size() &&
             (number ? std::isdigit(static_cast<unsigned char>(text[at])) != 0 || text[at] == '.' ||
                           text[at] == '_'
                     : std::isalnum(static_cast<unsigned char>(text[at])) != 0 || text[at] == '%'))
        ++at;
    }
  }
  return result;
}

std::string text_to_look_at(const BoatText& boat, std::size_t changed, Extent extent) {
  if (extent == Extent::whole)
    return text_of(boat);
  const bool part = extent != Extent::unbounded;
  const std::size_t stays = extent == Extent::one_stay ? 1 : boat.size();
  std::string text = without_bounds(text_of(part ? only_with(boat, changed, stays) : boat));
  // A few stays hold no mast.
  const std::string whole = "covers: whole-rig";
  if (const std::size_t at = text.find(whole); part && at != std::string::npos)
    text.replace(at, whole.size(), "covers: part-of-rig");
  return text;
}

/// The sum of a file's bytes tells that it is another file, not what is in it.
std::string without_digests(const std::string& text) {
  constexpr std::size_t digits = 64;
  std::string result;
  std::size_t run = 0;
  for (const char c : text) {
    result += c;
    run = std::isxdigit(static_cast<unsigned char>(c)) != 0 ? run + 1 : 0;
    if (run == digits)
      result.resize(result.size() - digits);
    run %= digits;
  }
  return result;
}

/// What a user sees of a boat, each view made when it is asked for, the cheap ones first.
class Seen {
public:
  explicit Seen(std::string text, std::string shop = {}) : text_(std::move(text)) {
    OneTextReader reader(file_name, text_);
    CompileOptions options;
    options.shop = std::move(shop);
    options.threads = 1;
    result_ = compile(file_name, reader, options);
  }

  bool errors() const { return result_.has_errors || !result_.checked; }
  const Diagnostic& first_error() const {
    for (const Diagnostic& finding : result_.findings)
      if (finding.severity == Severity::error)
        return finding;
    throw std::logic_error("no papers and no error");
  }
  std::string error_words() const { return first_error().slug + ": " + first_error().message; }
  /// The boat can be read, and an error says what on her does not go together.
  bool does_not_fit() const { return !of_reading(first_error().slug); }
  /// The boat can be read, and an error names the property that does nothing where it stands.
  bool refuses(std::string_view property) const {
    return does_not_fit() && mentions(first_error().message, std::string(property));
  }

  /// Without the back end of the findings: what it says more than they do is where they stand.
  static const Backends& backends() {
    static const Backends all = [] {
      Backends usual = usual_backends();
      std::erase_if(usual, [](const auto& one) { return one->describe().name == "findings"; });
      return usual;
    }();
    return all;
  }
  static std::size_t view_count() { return 1 + rig_tables().size() + backends().size(); }
  static std::string view_name(std::size_t view) {
    if (view == 0)
      return "findings";
    return view <= rig_tables().size() ? std::string(rig_tables()[view - 1].name)
                                       : backends()[view - 1 - rig_tables().size()]->describe().name;
  }
  const std::string& view(std::size_t number) {
    const auto found = views_.find(number);
    return found != views_.end() ? found->second : views_.emplace(number, made(number)).first->second;
  }

private:
  /// Whether an error says that a value, a name or a sign cannot be read, which tells nothing of what it
  /// is for.
  static bool of_reading(const std::string& slug) {
    static const std::set<std::string_view> subjects{"The file itself",
                                                     "Numbers, texts, signs and names",
                                                     "How the words stand together",
                                                     "Files in use and the language line",
                                                     "What names stand for",
                                                     "Values and units"};
    for (const FindingTable& table : finding_tables())
      for (const CatalogueEntry& entry : table.entries)
        if (entry.slug == slug)
          return subjects.contains(table.subject);
    return true;
  }

  std::string made(std::size_t number) const {
    std::string text;
    if (number == 0) {
      for (const Diagnostic& finding : result_.findings)
        text += finding.slug + " " + std::string(name_of(finding.severity)) + ": " + finding.message + " " +
                finding.why + " " + finding.waived + " " + (finding.edit ? finding.edit->title : "") + " " +
                (finding.own_rule ? finding.own_rule->title + " " + finding.own_rule->help : "") + "\n";
      for (const CheckResult& check : result_.results->all)
        text += check.check + " " + check.subject + " " + std::string(name_of(check.outcome)) + " " +
                check.words + "\n";
    } else if (number <= rig_tables().size()) {
      text = render_text(rig_tables()[number - 1].build(*result_.checked));
    } else {
      BackendRequest request{*result_.checked};
      request.printed = false;
      for (const OutputFile& file : backends()[number - 1 - rig_tables().size()]->generate(request).files)
        text += file.bytes;
      text = without_digests(text);
    }
    return text;
  }

  std::string text_;
  Compilation result_;
  std::map<std::size_t, std::string> views_;
};

/// The views that list what is stated, whatever comes of it.
bool lists_all(const std::string& view) {
  return view == "sources" || view == "record" || view == "survey-report";
}

/// What a thing for the record does not touch.
bool shows_lengths_or_checks(const std::string& view) {
  static const std::set<std::string> views{"findings", "lengths",  "pieces", "take-up", "marks",
                                           "joints",   "strength", "checks", "results"};
  return views.contains(view);
}

class Trials {
public:
  explicit Trials(BoatText boat) : boat_(std::move(boat)) {
    whole_ = std::make_shared<Seen>(text_of(boat_));
    sources_ = view_named("sources");
    report_ = view_named("survey-report");
  }

  bool sound() const { return !whole_->errors(); }
  const BoatText& boat() const { return boat_; }
  std::string summary() const {
    return std::to_string(tried_) + " properties tried, " + std::to_string(for_record_) +
           " for the record, " + std::to_string(lost_) + " lost";
  }

  void try_row(const std::string& of, const PropertyRow& row, std::vector<Place> places) {
    if (!test::is_tried(asked_++))
      return;
    ++tried_;
    for_record_ += row.for_record ? 1 : 0;
    // Where it is stated is where it was meant to do something.
    std::stable_partition(places.begin(), places.end(), [&](const Place& place) {
      return value_in(boat_[place.chunk].text, place, row.name).has_value();
    });
    std::string why = places.empty() ? "no such thing in the boat" : "";
    std::set<std::string> errors;
    for (const Round& round : rounds_of(row)) {
      bool refused = false;
      for (std::size_t place = 0; place < places.size() && place < round.places; ++place) {
        const Outcome outcome = try_at(row, places[place], round, why, errors);
        if (outcome == Outcome::shown)
          return;
        refused = refused || outcome == Outcome::refused;
      }
      if (refused)
        return;
    }
    if (why.empty()) {
      why = "was an error wherever it was stated";
      for (const std::string& error : errors)
        why += "; " + error;
    }
    ++lost_;
    ADD_FAILURE() << of << ": " << row.name << " (" << why << ")";
  }

private:
  enum class Outcome { shown, refused, not_seen };
  /// Most is told by a few stays, a value or two and what is quickly made; the rest is looked for longer.
  struct Round {
    Extent extent;
    std::size_t places;
    std::size_t values;
    bool papers;
  };
  static constexpr std::array of_numbers{
      Round{Extent::one_stay, 2, 2, false},  Round{Extent::used_by, 3, 2, false},
      Round{Extent::one_stay, 2, 9, false},  Round{Extent::one_stay, 2, 1, true},
      Round{Extent::unbounded, 2, 9, false}, Round{Extent::whole, 2, 3, false},
      Round{Extent::whole, 1, 2, true}};
  static constexpr std::array of_words{
      Round{Extent::one_stay, 1, 1, false}, Round{Extent::one_stay, 3, 1, true},
      Round{Extent::used_by, 3, 3, true}, Round{Extent::unbounded, 2, 2, true}};
  static std::span<const Round> rounds_of(const PropertyRow& row) {
    const bool words = row.for_record || row.type == ValueType::text || row.type == ValueType::date;
    return words ? std::span<const Round>(of_words) : std::span<const Round>(of_numbers);
  }

  static std::size_t view_named(const std::string& name) {
    for (std::size_t view = 0; view < Seen::view_count(); ++view)
      if (Seen::view_name(view) == name)
        return view;
    return 0;
  }

  std::shared_ptr<Seen> look(const BoatText& boat, const Place& place, Extent extent, bool keep) {
    const std::string text = text_to_look_at(boat, place.chunk, extent);
    if (const auto found = kept_.find(text); found != kept_.end())
      return found->second;
    // What a shop states is seen when lengths are told as that shop takes them.
    const Chunk& changed = boat[place.chunk];
    auto seen = std::make_shared<Seen>(text, changed.kind == "shop" ? changed.name : "");
    if (keep && changed.kind != "shop")
      kept_.emplace(text, seen);
    return seen;
  }

  /// Shown when the row is as it should be, as far as can be seen here; else `why` says what is not.
  Outcome try_at(const PropertyRow& row, const Place& place, const Round& round, std::string& why,
                 std::set<std::string>& errors) {
    const std::string& text = boat_[place.chunk].text;
    const auto stated = value_in(text, place, row.name);
    std::string value(row.example);
    if (stated)
      value = trimmed(text.substr(stated->first, stated->second - stated->first));
    else if (const auto names = names_of(boat_, row.refers_to); !names.empty())
      value = names.front();
    // What can be stated in one way only is stated or not.
    const bool one_way = row.choices.size() == 1;
    const BoatText as_it_was = one_way  ? without(boat_, place, row.name)
                               : stated ? boat_
                                        : with(boat_, place, row.name, value);
    // A boat as it stands is kept for all rows that are stated in it.
    const auto before = look(as_it_was, place, round.extent, stated && !one_way);
    if (before->errors()) {
      errors.insert(before->error_words());
      return before->refuses(row.name) ? Outcome::refused : Outcome::not_seen;
    }
    std::size_t tries = 0;
    const std::vector<std::string> others =
        one_way ? std::vector{std::string(row.choices.front())} : other_values(boat_, row, value);
    for (const std::string& other : others) {
      if (tries == round.values)
        break;
      const auto after = look(with(boat_, place, row.name, other), place, round.extent, false);
      if (after->errors()) {
        if (!row.for_record && after->does_not_fit())
          return Outcome::shown;
        errors.insert(after->error_words());
        continue;
      }
      ++tries;
      if (row.for_record ? is_on_record(*before, *after, why) : shows(*before, *after, round.papers, why))
        return Outcome::shown;
    }
    return Outcome::not_seen;
  }

  bool is_on_record(Seen& before, Seen& after, std::string& why) const {
    why = "";
    for (const auto& [view, name] :
         {std::pair(sources_, "show sources"), std::pair(report_, "the survey report")})
      if (before.view(view) == after.view(view))
        why += std::string(why.empty() ? "" : "; ") + "for the record, and does not stand in " + name;
    for (std::size_t view = 0; view <= rig_tables().size(); ++view)
      if (shows_lengths_or_checks(Seen::view_name(view)) && before.view(view) != after.view(view))
        why += "; for the record, and changes " + Seen::view_name(view);
    return why.empty();
  }

  bool shows(Seen& before, Seen& after, bool papers, std::string& why) const {
    why = "changes nothing but lists of all that is stated";
    const std::size_t views = papers ? Seen::view_count() : 1 + rig_tables().size();
    for (std::size_t view = 0; view < views; ++view)
      if (!lists_all(Seen::view_name(view)) && before.view(view) != after.view(view))
        return true;
    return false;
  }

  BoatText boat_;
  std::shared_ptr<Seen> whole_;
  std::map<std::string, std::shared_ptr<Seen>> kept_;
  std::size_t sources_ = 0, report_ = 0;
  std::size_t asked_ = 0, tried_ = 0, for_record_ = 0, lost_ = 0;
};

/// One for all cases, since what was made of the boat as it stands serves them all.
Trials& trials() {
  static Trials all(read_boat(std::string(SHEERPOLE_GOLDEN_DIR) + "/inputs/every-kind.rig"));
  return all;
}

std::vector<Place> items_of_kind(const BoatText& boat, std::string_view kind) {
  std::vector<Place> places;
  for (const Chunk& chunk : boat)
    if (chunk.kind == kind)
      for (const Place& place : items_of(boat, chunk.name, true))
        places.push_back(place);
  return places;
}

/// A kind, `line` of a stack, or a type of end.
std::vector<std::string> subjects() {
  std::vector<std::string> names;
  for (const KindRow& kind : all_kinds())
    names.push_back("kind " + std::string(kind.name));
  names.push_back("item line");
  for (const EndRow& end : all_ends())
    names.push_back("end " + std::string(end.name));
  return names;
}

} // namespace

class NoStatedFactIsLost : public testing::TestWithParam<std::string> {
protected:
  static void TearDownTestSuite() { std::cout << trials().summary() << "\n"; }
};

TEST_P(NoStatedFactIsLost, EachPropertyChangesSomething) {
  Trials& all = trials();
  ASSERT_TRUE(all.sound());
  const std::string name = GetParam().substr(GetParam().find(' ') + 1);
  if (GetParam().starts_with("end"))
    for (const PropertyRow& row : find_end(name)->dimensions)
      all.try_row("end " + name, row, items_of(all.boat(), name, false));
  else if (GetParam().starts_with("item"))
    for (const PropertyRow& row : line_settings())
      all.try_row("line in a stack", row, items_of(all.boat(), name, true));
  else {
    for (const PropertyRow& row : find_kind(name)->properties)
      all.try_row(name, row, blocks_of(all.boat(), name));
    for (const PropertyRow& row : find_kind(name)->settings)
      all.try_row(name + " in a stack", row, items_of_kind(all.boat(), name));
  }
}

INSTANTIATE_TEST_SUITE_P(Of, NoStatedFactIsLost, testing::ValuesIn(subjects()), [](const auto& info) {
  std::string name = info.param;
  for (char& c : name)
    c = std::isalnum(static_cast<unsigned char>(c)) != 0 ? c : '_';
  return name;
});

} // namespace sheerpole::no_fact_lost_test
