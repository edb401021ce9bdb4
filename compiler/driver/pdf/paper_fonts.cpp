#include "driver/pdf/paper_fonts.hpp"

#include <algorithm>
#include <array>
#include <system_error>
#include <vector>

namespace sheerpole {

namespace {

struct FontFile {
  std::string_view face;
  bool bold;
  std::string_view place; ///< of Debian, below the folder of all fonts
  std::string_view name;
  std::string_view package; ///< of Debian
};

// The first two faces have the metrics by which pages are measured. DejaVu adds Hebrew, Arabic and signs of
// mathematics and technique, Droid Sans Fallback Chinese, Japanese and Korean; it has no bold.
constexpr std::array font_files{
    FontFile{"Liberation Sans", false, "truetype/liberation", "LiberationSans-Regular.ttf",
             "fonts-liberation"},
    FontFile{"Liberation Sans", true, "truetype/liberation", "LiberationSans-Bold.ttf", "fonts-liberation"},
    FontFile{"Liberation Mono", false, "truetype/liberation", "LiberationMono-Regular.ttf",
             "fonts-liberation"},
    FontFile{"Liberation Mono", true, "truetype/liberation", "LiberationMono-Bold.ttf", "fonts-liberation"},
    FontFile{"DejaVu Sans", false, "truetype/dejavu", "DejaVuSans.ttf", "fonts-dejavu-core"},
    FontFile{"DejaVu Sans", true, "truetype/dejavu", "DejaVuSans-Bold.ttf", "fonts-dejavu-core"},
    FontFile{"DejaVu Sans Mono", false, "truetype/dejavu", "DejaVuSansMono.ttf", "fonts-dejavu-core"},
    FontFile{"DejaVu Sans Mono", true, "truetype/dejavu", "DejaVuSansMono-Bold.ttf", "fonts-dejavu-core"},
    FontFile{"Droid Sans Fallback", false, "truetype/droid", "DroidSansFallbackFull.ttf",
             "fonts-droid-fallback"}};

const FontFile* wanted(std::string_view name) {
  const auto found = std::find_if(font_files.begin(), font_files.end(),
                                  [&](const FontFile& one) { return one.name == name; });
  return found == font_files.end() ? nullptr : &*found;
}

/// The files below the folder that have a name of the table; of two, the one whose path comes first.
std::map<std::string, std::string> files_below(const std::filesystem::path& folder) {
  std::map<std::string, std::string> found;
  std::error_code fault;
  const auto options = std::filesystem::directory_options::skip_permission_denied;
  for (auto at = std::filesystem::recursive_directory_iterator(folder, options, fault);
       !fault && at != std::filesystem::recursive_directory_iterator(); at.increment(fault)) {
    const std::string name = at->path().filename().string();
    if (wanted(name) == nullptr)
      continue;
    std::string& path = found[name];
    if (path.empty() || at->path().string() < path)
      path = at->path().string();
  }
  return found;
}

/// Signs that fonts need not have: what joins, parts or turns others, and what picks one of their shapes.
bool without_shape(char32_t sign) {
  return sign < 0x20 || pango_is_zero_width(sign) != FALSE || (sign >= 0xfe00 && sign <= 0xfe0f) ||
         (sign >= 0xe0000 && sign <= 0xe0fff);
}

} // namespace

PaperFonts::PaperFonts(std::filesystem::path folder) : folder_(std::move(folder)) {
  std::error_code ignored;
  for (const FontFile& font : font_files)
    if (const auto usual = folder_ / font.place / font.name;
        std::filesystem::is_regular_file(usual, ignored))
      files_.emplace(font.name, usual.string());
  if (files_.size() < font_files.size())
    files_.merge(files_below(folder_));
}

PaperFonts::~PaperFonts() {
  if (signs_ != nullptr)
    FcCharSetDestroy(signs_);
}

std::string PaperFonts::file(std::string_view face, bool bold) const {
  for (const FontFile& font : font_files)
    if (font.face == face && font.bold == bold)
      if (const auto found = files_.find(std::string(font.name)); found != files_.end())
        return found->second;
  return {};
}

std::optional<std::string> PaperFonts::give_all_to_pango() {
  if (config_ != nullptr)
    return missing_;
  // Without a rule and without a folder: nothing of the machine's own setting comes in.
  config_ = FcConfigCreate();
  for (const FontFile& font : font_files) {
    const auto found = files_.find(std::string(font.name));
    if (found == files_.end() || FcConfigAppFontAddFile(config_, reinterpret_cast<const FcChar8*>(
                                                                     found->second.c_str())) == FcFalse) {
      missing_ = face_and_package(font.face);
      return missing_;
    }
  }
  FcConfigSetCurrent(config_);
  signs_ = FcCharSetCreate();
  const FcFontSet* fonts = FcConfigGetFonts(config_, FcSetApplication);
  for (int i = 0; i < fonts->nfont; ++i)
    if (FcCharSet* of_font = nullptr;
        FcPatternGetCharSet(fonts->fonts[i], FC_CHARSET, 0, &of_font) == FcResultMatch)
      FcCharSetMerge(signs_, of_font, nullptr);
  return missing_;
}

bool PaperFonts::draws(char32_t sign) const {
  return without_shape(sign) || FcCharSetHasChar(signs_, static_cast<FcChar32>(sign)) != FcFalse;
}

std::string PaperFonts::with_stand_ins(std::string_view face) {
  std::string names(face);
  if (face.ends_with(" Mono")) // columns stay columns where that can be
    names += ",DejaVu Sans Mono";
  return names + ",DejaVu Sans,Droid Sans Fallback";
}

std::string face_and_package(std::string_view face) {
  const auto found = std::find_if(font_files.begin(), font_files.end(),
                                  [&](const FontFile& one) { return one.face == face; });
  return "`" + std::string(face) + "`" +
         (found == font_files.end() ? "" : " (Debian: " + std::string(found->package) + ")");
}

} // namespace sheerpole
