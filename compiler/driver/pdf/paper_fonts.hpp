#pragma once

#include <fontconfig/fontconfig.h>
#include <pango/pango.h>

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole {

/// A sign that no font of the papers has is drawn as this one: U+FFFD, a question mark on a dark rhombus.
inline constexpr std::string_view sign_for_missing = "\xef\xbf\xbd";

/// The fonts of the papers: certain files of certain packages and no others, whatever else the machine has
/// and however it is set up. The faces of which the pages ask are opened by themselves; the rest is read
/// when a text first has a sign that its face has not, since that takes time.
class PaperFonts {
public:
  /// `folder` is that below which the files lie. Files are looked for where Debian puts them, then anywhere
  /// below, by their names.
  explicit PaperFonts(std::filesystem::path folder);
  ~PaperFonts();
  PaperFonts(const PaperFonts&) = delete;
  PaperFonts& operator=(const PaperFonts&) = delete;

  /// The file of a face; empty when it is none of those of the papers or is not there.
  std::string file(std::string_view face, bool bold) const;

  /// Reads all of them and makes them those that pango has. Returns what is missing, or nothing; later
  /// calls give the same answer.
  std::optional<std::string> give_all_to_pango();

  /// Whether one of them has the sign, or the sign has no shape of its own. Only after all are given.
  bool draws(char32_t sign) const;

  /// Names for pango of a face and of those that stand in for it, in order.
  static std::string with_stand_ins(std::string_view face);

private:
  std::filesystem::path folder_;
  std::map<std::string, std::string> files_; ///< by name, those that are there
  FcConfig* config_ = nullptr;               ///< fontconfig's own once it is the current one
  FcCharSet* signs_ = nullptr;
  std::optional<std::string> missing_;
};

/// "Liberation Sans (Debian: fonts-liberation)", for a face that is not installed.
std::string face_and_package(std::string_view face);

} // namespace sheerpole
