// Two hundred rigs by chance, with long names, names without a blank, other alphabets and each of the three
// units: on every page of every paper no text lies on another and none leaves its sheet. Read from the
// pages themselves, in the face that they name.
#include "backend/drawing/label_text.hpp"
#include "driver/built_in_backends.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>
#include <string>
#include <vector>

namespace sheerpole::random_papers_test {
namespace {

constexpr std::array titles{
    "Cap",
    "Upper shroud, continuous over both tips of both spreaders, aft of the lowers and seized to them",
    "Fockstagwirbelschäkelbolzensicherungsringhalterung am Vorschiff",
    "W W W W W W W W W W W W W W W W W W W W W W W W",
    "Étai de trinquette largable, sa latte-ridoir et l'émerillon du bas",
    "船首静索の上部 (forestay)"};
constexpr std::array names{"cap", "continuous-upper-shroud-over-both-spreaders-and-aft-of-the-lowers",
                           "stag-nummer-siebenundzwanzig-an-der-vorderkante", "a"};
constexpr std::array units{"millimetres", "inches", "feet-and-inches"};

class Chance {
public:
  explicit Chance(unsigned seed) : engine_(seed) {}
  /// The sequence of std::mt19937 is the standard's; that of its distributions is not.
  unsigned below(unsigned most) { return static_cast<unsigned>(engine_() % most); }
  template <class All>
  auto one_of(const All& all) {
    return all[below(static_cast<unsigned>(all.size()))];
  }
  double tenths(unsigned least, unsigned most) { return (least + below(most - least)) / 10.0; }
  bool yes() { return below(2) == 0; }

private:
  std::mt19937 engine_;
};

std::string any_rig(Chance& chance) {
  const std::string title = chance.one_of(titles);
  std::string text =
      fmt::format("language 1\nboat \"{}\" {{\n  revision: \"{}\"\n}}\n", chance.one_of(titles),
                  chance.yes() ? "C" : "as she came out of the yard, with the second mast");
  text += fmt::format(
      "limits {{\n  second-measure: {}\n}}\nshop loft {{\n  delivered-open: 50 %\n  unit: {}\n}}\n",
      chance.yes() ? "off" : "warn", chance.one_of(units));
  text += fmt::format(
      "rope line-rope \"{}\" {{\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}}\n",
      title);
  text +=
      fmt::format("wire line-wire \"{}\" {{\n  construction: \"1x19\"\n  size: \"5/16 in\"\n}}\n", title);
  text += fmt::format("splice bury {{\n  bury: {:.1f} mm\n  eye-allowance: {:.1f} mm\n{}}}\n",
                      chance.tenths(4600, 8000), chance.tenths(900, 2000),
                      chance.yes() ? "  contraction: 8 % measured\n" : "");
  text += fmt::format(
      "thimble ring \"{}\" {{\n  length: 16 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}}\n",
      chance.one_of(titles));
  text +=
      fmt::format("terminal eye \"{}\" {{\n  length: 62 mm\n  lower: wire-socket (inserted: 50 mm)\n}}\n",
                  chance.one_of(titles));
  text +=
      "turnbuckle bottle {\n  shortest: 265 mm\n  longest: 395 mm\n  thread: \"1/2-20 UNF\"\n  screw: "
      "pair\n  "
      "upper: wire-socket (inserted: 50 mm)\n}\nlashing cord {\n  shortest: 60 mm\n  longest: 260 mm\n}\n";
  text += "cord red { }\n";
  const unsigned stays = 1 + chance.below(3);
  for (unsigned i = 0; i < stays; ++i) {
    const std::string name = fmt::format("{}-{}", chance.one_of(names), i + 1);
    const bool rope = chance.yes();
    const bool by_cord = chance.below(3) == 0;
    text += fmt::format(
        "stay {} \"{}\" {{\n{}{}  line: {}\n  stack {{\n{}  }}\n}}\n", name, chance.one_of(titles),
        chance.yes() ? "  sides: port, starboard\n" : "",
        by_cord ? "" : fmt::format("  pin-to-pin: {:.1f} mm measured\n", chance.tenths(60'000, 190'000)),
        rope ? "line-rope" : "line-wire",
        rope ? "    ring (splice: bury)\n    line\n    ring (splice: bury)\n    cord (gap: 150 mm, passes: "
               "6)\n"
             : "    eye\n    line\n    bottle (open: 50 %)\n");
    if (by_cord)
      text += fmt::format(
          "reading of {} {{\n  method: messenger\n  cord: red\n  knots: {}\n  date: 2026-05-02\n}}\n", name,
          i + 1);
  }
  return text;
}

/// What lies on another or beyond the sheet, the first few.
std::vector<std::string> complaints(const Drawing& page) {
  constexpr double hair = 0.2; // millimetres; capitals with accents over descenders, which few texts have
  std::vector<LabelBox> boxes = set_boxes(page.content);
  std::sort(boxes.begin(), boxes.end(),
            [](const LabelBox& a, const LabelBox& b) { return a.box.top < b.box.top; });
  std::vector<std::string> found;
  for (std::size_t i = 0; i < boxes.size() && found.size() < 3; ++i) {
    PaperBox box = boxes[i].box;
    if (box.left < -hair || box.top < -hair || box.right > page.width + hair ||
        box.bottom > page.height + hair)
      found.push_back("`" + boxes[i].text + "` leaves the sheet");
    box = {box.left + hair, box.top + hair, box.right - hair, box.bottom - hair};
    for (std::size_t j = i + 1; j < boxes.size() && boxes[j].box.top < box.bottom; ++j)
      if (box.overlaps(boxes[j].box) && !boxes[i].text.empty() && !boxes[j].text.empty())
        found.push_back("`" + boxes[i].text + "` on `" + boxes[j].text + "`");
  }
  return found;
}

TEST(RandomPapers, HaveNoTextOnAnotherAndNoneBeyondTheSheet) {
  std::size_t pages = 0;
  for (unsigned seed = 1; seed <= 200; ++seed) {
    Chance chance(seed);
    const std::string text = any_rig(chance);
    const Compilation boat = test::compiled(text);
    ASSERT_TRUE(boat.checked) << text;
    for (const auto& backend : built_in_backends()) {
      const OutputBundle made = backend->generate(
          {.checked = *boat.checked, .paper = seed % 2 == 0 ? PaperSize::a4 : PaperSize::letter});
      for (const PagedFile& paper : made.papers) {
        if (paper.name.find("-tiles") != std::string::npos)
          continue; // each is a window on the drawing, which ends in the middle of words
        for (const Drawing& page : paper.pages) {
          ++pages;
          for (const std::string& complaint : complaints(page))
            ADD_FAILURE() << "rig " << seed << ", " << paper.name << ", " << page.title << ": "
                          << complaint;
        }
      }
    }
    if (HasFailure())
      break; // one rig tells enough
  }
  EXPECT_GT(pages, HasFailure() ? 0u : 4000u);
}

} // namespace
} // namespace sheerpole::random_papers_test
