#include "kinds/kind_row.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace sheerpole::user_rules_test {
namespace {

std::string declared(Category category, const std::string& names) {
  std::string text;
  std::size_t begin = 0;
  while (begin < names.size()) {
    std::size_t end = names.find_first_of(", ", begin);
    end = std::min(end, names.size());
    std::string name = names.substr(begin, end - begin);
    name = name.substr(0, name.find('.'));
    begin = end + 1;
    if (name.empty() || name == ">" || name == "free")
      continue;
    const std::string number = std::to_string(begin);
    if (category == Category::material)
      text += "rope " + name + " {\n  construction: \"braid\"\n  size: \"4 mm\"\n}\n";
    else if (category == Category::point)
      text += "points { " + name + ": (0 m, 0 m, " + number + " m) }\n";
    else if (category == Category::part && text.find(" " + name + " {") == std::string::npos)
      text += "toggle " + name + " {\n  length: 40 mm\n}\n"; // named as often as there are
  }
  return text;
}

/// A property as its example states it, and what the example names.
std::string stated(const PropertyRow& row) {
  return "  " + std::string(row.name) + ": " + std::string(row.example) + "\n";
}
std::string needed_by(const PropertyRow& row) {
  if (row.type == ValueType::reference || row.type == ValueType::reference_list)
    return declared(row.refers_to, std::string(row.example));
  return row.type == ValueType::path ? declared(Category::point, std::string(row.example)) : "";
}

/// A declaration of the kind with what it must state and this property.
std::string declaration(const KindRow& kind, const std::string& name, const PropertyRow& wanted) {
  std::string text = std::string(kind.name) + " " + name + " {\n";
  for (const PropertyRow& row : kind.properties) {
    const bool screw = (wanted.name == "thread" && row.name == "screw") ||
                       (wanted.name == "screw" && row.name == "thread");
    if (row.need == Need::required || row.name == wanted.name || screw)
      text += stated(row);
  }
  // A shape is that of a rope-seat.
  if (wanted.name == "shape")
    text += "  lower: rope-seat\n";
  return text + "}\n";
}

std::string needed(const KindRow& kind, const PropertyRow& wanted) {
  std::string text;
  for (const PropertyRow& row : kind.properties)
    if (row.need == Need::required || row.name == wanted.name)
      text += needed_by(row);
  return text;
}

std::string setting_of(const KindRow& kind) {
  if (!kind.adjuster)
    return "";
  for (const auto& [setting, words] :
       {std::pair{"open", " (open: 50 %)"}, {"gap", " (gap: 100 mm)"}, {"hole", " (hole: 3)"}})
    if (find_property(kind.settings, setting) != nullptr)
      return words;
  return " (length: 100 mm)";
}

const std::string rope = "rope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n";

std::string stay_of(const std::string& line, const std::string& items) {
  return "stay one {\n  pin-to-pin: 50 m\n  line: " + line + "\n  stack {\n" + items + "  }\n}\n";
}

std::string with_rule(const std::string& rig, const std::string& asks) {
  return "language 1\n" + rig + "rule ours {\n" + asks + "  severity: warning\n  message: \"ours\"\n}\n";
}

/// A rig that states this property once where the rule can see it.
std::string rig_with(const KindRow& kind, const PropertyRow& row) {
  switch (kind.category) {
  case Category::part: {
    const std::string item = "    a-part" + setting_of(kind) + "\n";
    return needed(kind, row) + rope + declaration(kind, "a-part", row) +
           stay_of("rope-9", kind.name == "chainplate" ? "    line\n" + item : item + "    line\n");
  }
  case Category::material:
    return declaration(kind, "a-line", row) + stay_of("a-line", "    line\n");
  case Category::splice:
    return rope + declaration(kind, "a-splice", row) +
           "thimble a-thimble {\n  length: 16 mm\n  wrap: 159 mm\n}\n" +
           stay_of("rope-9", "    a-thimble (splice: a-splice)\n    line\n");
  case Category::spreader: {
    std::string text =
        "points {\n  a-root: (0 m, 0.1 m, 5 m) mirrored\n  a-tip: (0 m, 1 m, 5 m) mirrored\n}\n"
        "spreader one {\n  root: a-root\n  tip: a-tip\n";
    return text + (row.need == Need::required ? "" : stated(row)) + "}\n";
  }
  default: {
    std::string text = needed(kind, row) + (row.name == "line" ? "" : rope) + "stay one {\n";
    text += row.name == "line" ? "" : "  line: rope-9\n";
    text += stated(row);
    // Neither of the two says anything without the other.
    for (const auto& [one, other] : {std::pair{"cut-from", "cut-from-reason: \"a reason\""},
                                     std::pair{"cut-from-reason", "cut-from: drawing"}})
      if (row.name == one)
        text += std::string("  ") + other + "\n";
    text += "  stack {\n    line\n  }\n}\n";
    return text;
  }
  }
}

std::vector<CheckResult> results_of_ours(const std::string& text) {
  const Compilation compilation = test::compiled(text);
  std::vector<CheckResult> results;
  for (const CheckResult& result : compilation.results->all)
    if (result.check == "ours")
      results.push_back(result);
  return results;
}

TEST(UserRules, SeeEveryPropertyOfWhatTheyLookAt) {
  const std::pair<Category, std::string> looked_at[] = {{Category::stay, "stays"},
                                                        {Category::part, "parts"},
                                                        {Category::material, "lines"},
                                                        {Category::splice, "splices"},
                                                        {Category::spreader, "spreaders"}};
  std::size_t seen = 0;
  for (const auto& [category, word] : looked_at)
    for (const KindRow& kind : all_kinds()) {
      if (kind.category != category)
        continue;
      for (const PropertyRow& row : kind.properties) {
        SCOPED_TRACE(std::string(kind.name) + ": " + std::string(row.name));
        const auto results = results_of_ours(with_rule(
            rig_with(kind, row),
            "  looks-at: " + word + "\n  property: " + std::string(row.name) + "\n  stated: yes\n"));
        ASSERT_FALSE(results.empty());
        for (const CheckResult& result : results)
          EXPECT_EQ(result.outcome, CheckOutcome::pass) << result.subject << ": " << result.words;
        ++seen;
      }
    }
  EXPECT_GT(seen, 300u);
}

const std::string two_screws = rope +
                               "turnbuckle left {\n  shortest: 300 mm\n  longest: 450 mm\n"
                               "  locked: \"split pins\"\n  break-load: 40 kN\n}\n"
                               "turnbuckle right {\n  shortest: 300 mm\n  longest: 450 mm\n}\n"
                               "toggle between {\n  length: 60 mm\n  break-load: 30 kN\n}\n" +
                               stay_of("rope-9", "    left (open: 50 %)\n    line\n    between\n"
                                                 "    right (open: 50 %)\n");

std::string outcomes(const std::string& asks) {
  std::string text;
  for (const CheckResult& result : results_of_ours(with_rule(two_screws, asks)))
    text += result.subject + " " + std::string(name_of(result.outcome)) + ": " + result.words + "\n";
  return text;
}

TEST(UserRules, HoldAWordAgainstWhatIsStated) {
  EXPECT_EQ(outcomes("  looks-at: parts\n  sort: turnbuckle\n  property: locked\n  is: \"split pins\"\n"),
            "left pass: locked \"split pins\"\nright not checked: locked is not stated\n");
  EXPECT_EQ(outcomes("  looks-at: parts\n  property: locked\n  is: \"wire\"\n"),
            "left finding: left: ours (locked \"split pins\", not \"wire\")\n"
            "right not checked: locked is not stated\n")
      << "a toggle has no such property";
  EXPECT_EQ(outcomes("  looks-at: parts\n  property: locked\n  is-not: \"split pins\"\n  stated: yes\n"),
            "left finding: left: ours (locked \"split pins\", which it should not be)\n"
            "right finding: right: ours (locked is not stated)\n");
}

TEST(UserRules, HoldANumberAgainstItsBounds) {
  EXPECT_EQ(outcomes("  looks-at: parts\n  property: break-load\n  at-least: 40 kN\n"),
            "left pass: break-load 40 kN\nright not checked: break-load is not stated\n"
            "between finding: between: ours (break-load 30 kN, less than 40 kN)\n");
  EXPECT_EQ(outcomes("  looks-at: parts\n  sort: toggle\n  property: length\n  at-most: 60 mm\n"),
            "between pass: length 60 mm\n");
  EXPECT_EQ(outcomes("  looks-at: lines\n  property: size\n  is: \"9 mm\"\n"),
            "rope-9 pass: size \"9 mm\"\n");
  EXPECT_EQ(outcomes("  quantity: body\n  at-least: 50 m\n"),
            "one finding: one: ours (body 49190 mm, less than 50000 mm)\n");
}

TEST(UserRules, WhatIsInNoStayIsNotLookedAt) {
  EXPECT_EQ(outcomes("  looks-at: splices\n  property: locking\n  stated: yes\n"), "");
  EXPECT_EQ(outcomes("  looks-at: parts\n  sort: lashing\n  property: cord\n  stated: yes\n"), "");
}

} // namespace
} // namespace sheerpole::user_rules_test
