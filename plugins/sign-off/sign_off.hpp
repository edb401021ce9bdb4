#pragma once

#include "backend/page/paper_files.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One joint of the rig, or the thread of a screw: what can work out, wear or break.
struct Fastening {
  std::optional<Length>
      height; ///< above the waterline, of the nearer end of the stay or of what lies between; or nothing
  bool aloft = true;    ///< above the line of its stay
  bool between = false; ///< between two lines of its stay: an insulator, a link
  std::string place;    ///< "masthead of the mizzen"; empty without a path
  std::string mast;     ///< whose stay it is; empty when the file states none
  std::string stay;
  std::string joint; ///< "turnbuckle-half to plate-half-inch"
  /// "pin 1/2 in", "eye, long-bury", "thread M12, right and left hand"; with a blank where the file does
  /// not say.
  std::string what;
  std::string secured; ///< by what; empty: not stated
  bool pin = false;    ///< joined by a pin, or by what the file does not say: a pin is likely
  bool known = true;   ///< of a pin: its size is stated
  bool screw = false;  ///< the thread of an adjuster, which is no joint of its stack
};

/// Every joint of every stack, what its outermost parts hang on and every screw: by mast, in each from
/// aloft to deck, at one height in the order of the rig. Those whose height is not known come last, those
/// above their line before those below it.
std::vector<Fastening> fastenings(const CheckedRig& checked);

/// "37 pins, 4 of them unknown"
std::string pins_counted(const std::vector<Fastening>& all);

/// Every joint and thread with boxes to tick, a table for each mast.
std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);
/// One stay at a time: what holds the mast meanwhile, off, on, pinned, secured.
std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

/// The list by which every joint and thread is looked at before the rig is used, and the sheet by which
/// stays are replaced one at a time.
struct SignOff final : PagesBackend {
  SignOff();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
