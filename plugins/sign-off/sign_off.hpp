#pragma once

#include "backend/page/paper_files.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One pin or thread that can work out.
struct Fastening {
  std::optional<Length>
      height;        ///< of the nearer end of the stay above the waterline; nothing without a path
  bool aloft = true; ///< above the line of its stay
  std::string place; ///< name of the point there; empty without a path
  std::string stay;
  std::string joint;   ///< "turnbuckle-half to plate-half-inch"
  std::string what;    ///< "pin 1/2 in", "thread M12, right and left hand"
  std::string secured; ///< by what; empty: not stated
};

/// Every pin and thread, from aloft to deck: the highest first; at one height in the order of the rig.
/// Those whose height is not known come last, those above their line before those below it.
std::vector<Fastening> pin_list(const CheckedRig& checked);

/// Every pin and thread with boxes to tick.
std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);
/// One stay at a time: what holds the mast meanwhile, off, on, pinned, secured.
std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

/// The list by which every pin and thread is looked at before the rig is used, and the sheet by which stays
/// are replaced one at a time.
struct SignOff final : PagesBackend {
  SignOff();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
