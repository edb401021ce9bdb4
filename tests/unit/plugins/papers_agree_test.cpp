// Every paper that says how a rope is cut and buried says the same: the sums are worked here from the
// numbers that are put into the text of the rig, and read back from what the back ends write.
#include "backend/json/json.hpp"
#include "backend/tenths.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/emergency-splice-card/emergency_splice_card.hpp"
#include "plugins/labels/labels.hpp"
#include "plugins/order-list/order_list.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "units/quantity_text.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <optional>

namespace sheerpole::papers_agree_test {
namespace {

/// The words that people read in what a back end writes: without marks of HTML, one blank between words.
std::string read(const Backend& backend, const CheckedRig& checked, const std::string& file) {
  for (const OutputFile& one : backend.generate({checked}).files) {
    if (one.name != file)
      continue;
    std::string text;
    bool inside = false;
    for (const char c : without_thin_blanks(one.bytes)) {
      if (c == '<')
        inside = true;
      else if (c == '>' && inside) {
        inside = false;
        text += ' ';
      } else if (!inside)
        text += c == '\n' ? ' ' : c;
    }
    std::string words;
    for (const char c : text)
      if (c != ' ' || words.empty() || words.back() != ' ')
        words += c;
    return words;
  }
  ADD_FAILURE() << "no file " << file;
  return {};
}

bool has(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

/// What is put into a rig, all in millimetres.
struct Given {
  int diameter = 9;
  int bury_diameters = 72;
  int wrap = 120;
  int contraction = 8; ///< per cent
  int tail = 0;
  std::optional<int> length;      ///< between the pins; nothing: a mark on a cord
  std::array<int, 2> spare{0, 0}; ///< stated, aloft and below
  std::optional<int> over;        ///< in hand over the least cut without spare bury
};

Given any_rig() {
  Given given;
  given.diameter = *rc::gen::inRange(5, 15);
  given.bury_diameters = *rc::gen::inRange(55, 90);
  given.wrap = *rc::gen::inRange(60, 300);
  given.contraction = *rc::gen::inRange(0, 13);
  given.tail = *rc::gen::element(0, 0, 20, 45);
  if (*rc::gen::arbitrary<bool>())
    given.length = *rc::gen::inRange(9000, 25'000);
  for (int& spare : given.spare)
    spare = *rc::gen::element(0, 0, 150, 333, 700);
  if (*rc::gen::arbitrary<bool>())
    given.over = *rc::gen::inRange(1600, 4000);
  return given;
}

/// Worked from what is given, in the way of the bench.
struct Worked {
  double body;
  double bury;
  std::array<double, 2> spare;
  double cut; ///< or what is added to X
  /// The same as the sum of rows of 0.1 mm, as every paper has it.
  double printed;
};

double to_tenths(double millimetres) {
  return Tenths::of(Length::millimetres(millimetres)).length().millimetres();
}

Worked work(const Given& given) {
  Worked result{};
  const double in_weave = 1.0 + given.contraction / 100.0;
  result.body = given.length.value_or(0) - 2 * 20.0; // two thimbles of 20 mm
  result.bury = given.bury_diameters * given.diameter;
  double rest = given.over.value_or(0);
  int takers = 0;
  for (std::size_t end = 0; end < 2; ++end) {
    result.spare[end] = given.spare[end];
    rest -= given.spare[end] * in_weave;
    takers += given.spare[end] == 0 ? 1 : 0;
  }
  for (std::size_t end = 0; given.over && end < 2; ++end)
    if (given.spare[end] == 0)
      result.spare[end] = rest / takers / in_weave;
  result.cut = result.printed = result.body;
  for (const double spare : result.spare) {
    result.cut += given.wrap + given.tail + (result.bury + spare) * in_weave;
    result.printed += given.wrap + given.tail + result.bury + to_tenths(spare) +
                      to_tenths(result.bury * (given.contraction / 100.0)) +
                      to_tenths(spare * (given.contraction / 100.0));
  }
  return result;
}

std::string text_of(const Given& given) {
  const auto eye = [&](int spare) {
    return fmt::format("    ring (splice: eye{})\n",
                       spare == 0 ? "" : fmt::format(", spare-bury: {} mm measured", spare));
  };
  std::string text = fmt::format(
      "language 1\nboat \"Ray\" {{ }}\nlimits {{\n  second-measure: off\n}}\nrope cord {{\n  construction: "
      "\"12-strand HMPE heat-set\"\n  size: "
      "\"{} mm\"\n}}\n"
      "splice eye {{\n  bury: {} d measured\n  contraction: {} % measured\n{}}}\n"
      "thimble ring {{\n  length: 20 mm measured\n  wrap: {} mm measured\n}}\n"
      "stay shroud {{\n  line: cord\n{}  stack {{\n{}    line{}\n{}  }}\n}}\n",
      given.diameter, given.bury_diameters, given.contraction,
      given.tail == 0 ? "" : fmt::format("  tail-to-trim: {} mm measured\n", given.tail), given.wrap,
      given.length ? fmt::format("  pin-to-pin: {} mm measured\n", *given.length) : "", eye(given.spare[0]),
      given.over ? fmt::format(" (in-hand-over: {} mm measured)", *given.over) : "", eye(given.spare[1]));
  if (!given.length)
    text += "reading of shroud {\n  method: messenger\n  mark: \"red\"\n}\n";
  return text;
}

std::string whole(double millimetres) {
  return std::to_string(static_cast<long>(std::floor(millimetres + 0.5 + 1e-9)));
}

/// "13046 mm", "X + 1003 mm"
std::string cut_words(const Given& given, const Worked& worked) {
  return (given.length ? "" : "X + ") + whole(worked.printed) + " mm";
}

/// "bury 648 mm (72 d) + spare 300 mm = 948 mm"
std::string bury_text(const Given& given, const Worked& worked, std::size_t end) {
  const long bury = std::stol(whole(worked.bury));
  const long total = std::stol(whole(worked.bury + worked.spare[end]));
  std::string words = fmt::format("bury {} mm ({} d)", bury, given.bury_diameters);
  return total == bury ? words : words + fmt::format(" + spare {} mm = {} mm", total - bury, total);
}

void expect_json(const Given& given, const Worked& worked, const CheckedRig& checked) {
  for (const OutputFile& file : CutList().generate({checked}).files) {
    if (file.name != "cut-list.json")
      continue;
    const Json piece = Json::parse(file.bytes)["pieces"][0];
    EXPECT_EQ(piece["unknown"].get<bool>(), !given.length);
    if (given.length) {
      EXPECT_NEAR(piece["cut"]["length_mm"].get<double>(), worked.cut, 0.5);
    }
    for (const std::size_t end : {0u, 1u}) {
      const Json& buried = piece[end == 0 ? "above" : "below"]["buried"];
      EXPECT_NEAR(buried["bury_mm"].get<double>(), worked.bury, 1e-6);
      EXPECT_NEAR(buried["spare_mm"].get<double>(), worked.spare[end], 1e-6);
      EXPECT_NEAR(buried["total_mm"].get<double>(), worked.bury + worked.spare[end], 1e-6);
    }
    EXPECT_EQ(piece["in_hand"].is_null(), !given.over);
    const bool both_stated = given.spare[0] != 0 && given.spare[1] != 0;
    if (given.over) {
      EXPECT_EQ(piece["in_hand"]["cut_nothing"].get<bool>(), !both_stated);
    }
    return;
  }
  ADD_FAILURE() << "no JSON";
}

void look_at_papers(const Given& given) {
  const Worked worked = work(given);
  const Compilation rig = test::compiled(text_of(given));
  ASSERT_TRUE(rig.checked.has_value());
  const CheckedRig& checked = *rig.checked;
  const auto note = [&](const char* paper) { return paper + std::string(" of\n") + text_of(given); };

  expect_json(given, worked, checked);
  const std::string bench = read(BenchCard(), checked, "bench-cards.html");
  const std::string dry_fit = read(DryFitCard(), checked, "dry-fit-cards.html");
  const std::string emergency = read(EmergencySpliceCard(), checked, "emergency-splice-cards.html");
  const std::string labels = read(Labels(), checked, "labels.html");
  const std::string order = read(OrderList(), checked, "order-list.txt");
  const std::string list = read(CutList(), checked, "cut-list.txt");

  const std::string cut = cut_words(given, worked);
  const bool nothing_cut = given.over && (given.spare[0] == 0 || given.spare[1] == 0);
  EXPECT_TRUE(has(bench, (nothing_cut ? "CUT NOTHING, USE " : "CUT ") + cut)) << note("bench card");
  // The steps cut at marks by their numbers and say the length behind them.
  EXPECT_TRUE(has(bench, nothing_cut ? "Cut nothing" : ": " + cut + ". Take off the seizings."))
      << note("bench card, step");
  // On a paper of several stays X says whose it is.
  const std::string of_stay = given.length ? cut : "X(shroud)" + cut.substr(1);
  EXPECT_TRUE(has(emergency, of_stay + " for shroud")) << note("emergency card");
  EXPECT_TRUE(has(labels, "cut " + of_stay)) << note("label");
  EXPECT_EQ(has(list, "CUT NOTHING"), nothing_cut) << note("cut list");
  for (const std::size_t end : {0u, 1u}) {
    const std::string words = bury_text(given, worked, end);
    EXPECT_TRUE(has(bench, words)) << words << "\n" << note("bench card");
    if (!has(words, "spare"))
      continue;
    EXPECT_TRUE(has(dry_fit, words)) << words << "\n" << note("dry-fit card");
    EXPECT_TRUE(has(emergency, words)) << words << "\n" << note("emergency card");
    const std::size_t spare = words.find("spare ");
    EXPECT_TRUE(has(labels, "spare bury " + words.substr(spare + 6, words.find(" =") - spare - 6)))
        << note("label");
  }
  if (given.over) {
    EXPECT_TRUE(has(order, "shroud is made of the line in hand for it")) << note("order list");
  } else if (given.length) {
    EXPECT_FALSE(has(order, "X(shroud)")) << note("order list");
  } else {
    const double up = std::ceil(worked.cut - 1e-6) / 1000.0;
    EXPECT_TRUE(has(order, fmt::format("X(shroud) + {:.3f} m", up))) << note("order list");
    EXPECT_FALSE(has(order, "0.0 m")) << note("order list");
  }
}

// Two rigs each time: 200 in all.
RC_GTEST_PROP(Papers, AgreeAboutSpareBuryXAndTheCut, ()) {
  look_at_papers(any_rig());
  look_at_papers(any_rig());
}

} // namespace
} // namespace sheerpole::papers_agree_test
