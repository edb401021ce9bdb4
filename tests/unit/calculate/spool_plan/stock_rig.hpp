#pragma once

#include "calculate/spool_plan/spool_plan.hpp"
#include "unit/calculate/compiled_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole::test {

/// A boat of bare wires between two terminals, each 50 mm long with 20 mm of the wire inside, so that a cut
/// is 60 mm shorter than its pin-to-pin length.
struct StockRig {
  std::string text;

  explicit StockRig(const std::string& boat, const std::string& line = "wire-4") : line_(line) {
    text = "language 1\nboat \"" + boat + "\" { }\nlimits {\n  second-measure: off\n}\n";
    text += "wire " + line + " {\n  construction: \"1x19\"\n  grade: \"316\"\n  size: \"4 mm\"\n}\n";
    text += "terminal upper {\n  length: 50 mm\n  lower: wire-socket (inserted: 20 mm)\n}\n";
    text += "terminal lower {\n  length: 50 mm\n  upper: wire-socket (inserted: 20 mm)\n}\n";
  }

  /// A stay whose cut is so long, mm; `more` are further properties.
  StockRig& stay(const std::string& name, int cut_mm, const std::string& more = "measured") {
    text += "stay " + name + " {\n  line: " + line_ + "\n  pin-to-pin: " + std::to_string(cut_mm + 60) +
            " mm " + more + "\n  stack {\n    upper\n    line\n    lower\n  }\n}\n";
    return *this;
  }
  /// A stay of unknown length.
  StockRig& unknown_stay(const std::string& name, const std::string& more = "") {
    text += "stay " + name + " {\n  line: " + line_ + "\n" + more +
            "  stack {\n    upper\n    line\n    lower\n  }\n}\n";
    return *this;
  }
  StockRig& more(const std::string& declarations) {
    text += declarations;
    return *this;
  }
  StockRig& stock(const std::string& name, const std::string& sort, int length_mm,
                  const std::string& more = "") {
    text += "stock " + name + " of " + line_ + " {\n  sort: " + sort +
            "\n  length: " + std::to_string(length_mm) + " mm\n" + more + "}\n";
    return *this;
  }
  StockRig& cutting(const std::string& properties) {
    text += "cutting of " + line_ + " {\n" + properties + "}\n";
    return *this;
  }

private:
  std::string line_;
};

/// The boat as it is handed to the plan; the compilation must live on.
inline SpoolBoat boat_of(const Compilation& compilation, const std::string& title,
                         const std::string& key = "") {
  SpoolBoat boat;
  boat.title = title;
  boat.rig = &*compilation.rig;
  boat.derived = &*compilation.derived;
  if (!key.empty())
    boat.source_keys = {key};
  boat.source_names = {"test.rig"};
  return boat;
}

} // namespace sheerpole::test
