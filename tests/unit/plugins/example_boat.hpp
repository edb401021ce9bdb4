#pragma once

#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <string>
#include <utility>

namespace sheerpole::test {

/// One of the examples, with more text at the end of its file.
inline Compilation example_with(const std::string& name, std::string more, const std::string& shop = {}) {
  class MoreText final : public FileReader {
  public:
    MoreText(std::string path, std::string more) : path_(std::move(path)), more_(std::move(more)) {}
    Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
      auto text = disk_.read(path, limit);
      if (path == path_ && text.ok())
        return text.value() + more_;
      return text;
    }

  private:
    DiskFileReader disk_;
    std::string path_;
    std::string more_;
  };
  const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig";
  MoreText reader(path, std::move(more));
  return compile(path, reader, {.settings = {}, .folders = {}, .shop = shop});
}

/// The text of a rig with 40 pairs of stays, 20 of rope and 20 of wire, whose names are long and not of the
/// Latin alphabet alone.
inline std::string forty_pairs() {
  std::string text =
      "language 1\nboat \"Ærøskøbing Šljivovica Ἀργώ 波の上の長い名前の船 Ærøskøbing\" { }\n"
      "rope tau \"Tauwerk über alles gezähltes zwölfsträngig\" {\n"
      "  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
      "wire wire-8 {\n  construction: \"1x19\"\n  size: \"5/16 in\"\n}\n"
      "splice bury-72 {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
      "thimble ring {\n  length: 30 mm\n  upper: eye (hole: 12.5 mm, thickness: 9 mm)\n"
      "  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
      "terminal eye-62 \"Wantenspanneröse mit einem sehr langen Namen für Śląsk\" {\n"
      "  length: 62 mm\n  upper: eye (hole: 13 mm)\n  lower: wire-socket (inserted: 50 mm)\n}\n"
      "turnbuckle bottle {\n  shortest: 265 mm\n  longest: 395 mm\n  thread: \"1/2-20 UNF\"\n  screw: "
      "pair\n"
      "  upper: wire-socket (inserted: 50 mm)\n  lower: jaw (gap: 14 mm, pin: \"1/2 in\")\n}\n"
      "lashing cord-260 {\n  shortest: 60 mm\n  longest: 260 mm\n}\n";
  for (int i = 1; i <= 40; ++i) {
    const std::string number = std::to_string(i);
    text += "stay shroud-that-has-a-name-of-some-length-indeed-" + number +
            " \"Überlanger Name mit Ærøskøbing, Ἀργώ und 波の上の長い名前 " + number + "\" {\n" +
            "  sides: port, starboard\n  pin-to-pin: " + std::to_string(8000 + 137 * i) + " mm\n";
    text += i % 2 == 0
                ? "  line: tau\n  stack {\n    ring (splice: bury-72)\n    line\n    ring (splice: "
                  "bury-72)\n    cord-260 (gap: 150 mm, passes: 6)\n  }\n}\n"
                : "  line: wire-8\n  stack {\n    eye-62\n    line\n    bottle (open: 50 %)\n  }\n}\n";
  }
  return text;
}

} // namespace sheerpole::test
