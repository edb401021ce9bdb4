#include "driver/pdf/text_painter.hpp"

#include "base/code_point.hpp"

#include <cairo-ft.h>
#include <fontconfig/fcfreetype.h>
#include <pango/pangocairo.h>

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// A text takes no more room than was measured for it; where the face needs less, it is left as it is.
double stretch_to(double measured, double width) {
  return measured > 0.0 && width > measured ? measured / width : 1.0;
}

/// The blank inside a long number, which Liberation Sans has not: its own blank, narrower.
constexpr char32_t thin_blank = 0x202f;
constexpr double thin_blank_in_ems = 0.2;

/// Signs that stand beside each other as they come: no marks over others, no writing from right to left.
bool plain(char32_t sign) {
  return sign < 0x0300 || (sign >= 0x0370 && sign < 0x0483) || (sign >= 0x048a && sign < 0x0590) ||
         (sign >= 0x1e00 && sign < 0x200b) || (sign >= 0x2010 && sign < 0x2028) || sign == thin_blank ||
         (sign >= 0x2030 && sign < 0x2060) || (sign >= 0x2070 && sign < 0x20d0) ||
         (sign >= 0x2100 && sign < 0x2c00) || sign == 0xfffd;
}

} // namespace

struct TextPainter::Glyphs {
  struct Glyph {
    unsigned long index = 0; ///< 0: the face has none
    double advance = 0.0;
  };

  Glyphs(const std::string& file, double size) : size_(size) {
    // A pattern that names the file is taken as it is; nobody is asked for a font that is like it.
    FcPattern* pattern = FcPatternCreate();
    FcPatternAddString(pattern, FC_FILE, reinterpret_cast<const FcChar8*>(file.c_str()));
    FcPatternAddInteger(pattern, FC_INDEX, 0);
    face_ = cairo_ft_font_face_create_for_pattern(pattern);
    FcPatternDestroy(pattern);
    cairo_matrix_t em;
    cairo_matrix_t page;
    cairo_matrix_init_scale(&em, size, size);
    cairo_matrix_init_identity(&page);
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    scaled_ = cairo_scaled_font_create(face_, &em, &page, options);
    cairo_font_options_destroy(options);
  }
  ~Glyphs() {
    cairo_scaled_font_destroy(scaled_);
    cairo_font_face_destroy(face_);
  }
  Glyphs(const Glyphs&) = delete;
  Glyphs& operator=(const Glyphs&) = delete;

  cairo_scaled_font_t* scaled() const { return scaled_; }

  const Glyph& glyph(char32_t sign) {
    const auto [found, fresh] = known_.try_emplace(sign);
    if (fresh) {
      FT_Face face = cairo_ft_scaled_font_lock_face(scaled_);
      const auto index_of = [&](char32_t wanted) -> unsigned long {
        return face == nullptr ? 0 : FcFreeTypeCharIndex(face, static_cast<FcChar32>(wanted));
      };
      found->second.index = index_of(sign);
      const bool narrowed = found->second.index == 0 && sign == thin_blank;
      if (narrowed)
        found->second.index = index_of(U' ');
      if (face != nullptr)
        cairo_ft_scaled_font_unlock_face(scaled_);
      if (found->second.index != 0) {
        const cairo_glyph_t one{found->second.index, 0.0, 0.0};
        cairo_text_extents_t extents;
        cairo_scaled_font_glyph_extents(scaled_, &one, 1, &extents);
        found->second.advance = narrowed ? thin_blank_in_ems * size_ : extents.x_advance;
      }
    }
    return found->second;
  }

private:
  double size_;
  cairo_font_face_t* face_ = nullptr;
  cairo_scaled_font_t* scaled_ = nullptr;
  std::map<char32_t, Glyph> known_;
};

TextPainter::TextPainter(std::vector<std::string> faces, PaperFonts& fonts)
    : faces_(std::move(faces)), fonts_(fonts) {}
TextPainter::~TextPainter() = default;

std::optional<std::size_t> TextPainter::face(std::string_view name) const {
  const auto found = std::find(faces_.begin(), faces_.end(), name);
  return found == faces_.end() ? std::nullopt
                               : std::optional(static_cast<std::size_t>(found - faces_.begin()));
}

/// The glyphs of a run, from the beginning of the line as if nothing were stretched.
struct TextPainter::SetRun {
  Glyphs* face = nullptr;
  std::string words; ///< as a reader of the PDF gets them: of a thin blank the blank that is drawn
  std::vector<cairo_glyph_t> glyphs;
  std::vector<cairo_text_cluster_t> clusters;
};

TextPainter::Glyphs& TextPainter::glyphs(const PaintedText& text, double size) {
  auto& found = sizes_[{text.face, text.bold, size}];
  if (!found)
    found = std::make_unique<Glyphs>(fonts_.file(faces_[text.face], text.bold), size);
  return *found;
}

std::string TextPainter::drawable(std::string_view words) {
  std::string result;
  while (!words.empty()) {
    const CodePoint sign = first_code_point(words);
    const bool drawn = fonts_.draws(sign.value);
    if (!drawn)
      missing_.insert(sign.value);
    result += drawn ? words.substr(0, sign.bytes) : sign_for_missing;
    words.remove_prefix(sign.bytes);
  }
  return result;
}

std::optional<std::string> TextPainter::paint(cairo_t* context, const PaintedText& text) {
  std::vector<SetRun> set;
  set.reserve(text.runs.size());
  double width = 0.0;
  for (const PaintedRun& run : text.runs) {
    SetRun& here = set.emplace_back();
    here.face = &glyphs(text, run.size);
    here.glyphs.reserve(run.words.size());
    here.clusters.reserve(run.words.size());
    for (std::string_view rest = run.words; !rest.empty();) {
      const CodePoint sign = first_code_point(rest);
      const Glyphs::Glyph& glyph = here.face->glyph(sign.value);
      if (glyph.index == 0 || !plain(sign.value))
        return paint_with_pango(context, text);
      here.glyphs.push_back({glyph.index, width, text.y + run.moved});
      // A blank whose sign is another would be said in a span of its own, at which readers break off.
      const std::size_t before = here.words.size();
      here.words += sign.value == thin_blank ? std::string_view(" ") : rest.substr(0, sign.bytes);
      here.clusters.push_back({static_cast<int>(here.words.size() - before), 1});
      width += glyph.advance;
      rest.remove_prefix(sign.bytes);
    }
  }
  const double stretch = stretch_to(text.width, width);
  const double left = text.x - text.before * width * stretch;
  for (SetRun& here : set) {
    if (here.glyphs.empty())
      continue;
    if (const auto blank = here.face->glyph(U' ').index;
        text.goes_on && &here == &set.back() && blank != 0) {
      here.words += ' ';
      here.glyphs.push_back({blank, width, text.y + text.runs.back().moved});
      here.clusters.push_back({1, 1});
    }
    for (cairo_glyph_t& glyph : here.glyphs)
      glyph.x = left + glyph.x * stretch;
    cairo_set_scaled_font(context, here.face->scaled());
    cairo_show_text_glyphs(context, here.words.data(), static_cast<int>(here.words.size()),
                           here.glyphs.data(), static_cast<int>(here.glyphs.size()), here.clusters.data(),
                           static_cast<int>(here.clusters.size()),
                           static_cast<cairo_text_cluster_flags_t>(0));
  }
  return std::nullopt;
}

std::optional<std::string> TextPainter::paint_with_pango(cairo_t* context, const PaintedText& text) {
  if (const auto missing = fonts_.give_all_to_pango())
    return "the face " + *missing + " is not installed, and a text has signs that need it";
  std::string whole; // all in one size: what has other signs is set as the fonts have it
  for (const PaintedRun& run : text.runs)
    whole += run.words;
  const std::string words = drawable(whole);
  PangoLayout* layout = pango_cairo_create_layout(context);
  // Millimetres are small numbers: pango would put each glyph on a whole one.
  pango_context_set_round_glyph_positions(pango_layout_get_context(layout), FALSE);
  cairo_font_options_t* options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(pango_layout_get_context(layout), options);
  cairo_font_options_destroy(options);
  PangoFontDescription* face = pango_font_description_new();
  pango_font_description_set_family(face, PaperFonts::with_stand_ins(faces_[text.face]).c_str());
  pango_font_description_set_weight(face, text.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size(face, text.size * PANGO_SCALE);
  pango_layout_set_font_description(layout, face);
  pango_layout_set_single_paragraph_mode(layout, TRUE);
  pango_layout_set_text(layout, words.data(), static_cast<int>(words.size()));
  int units = 0;
  pango_layout_get_size(layout, &units, nullptr);
  const double width = static_cast<double>(units) / PANGO_SCALE;
  const double stretch = stretch_to(text.width, width);
  cairo_save(context);
  cairo_translate(context, text.x - text.before * width * stretch,
                  text.y - static_cast<double>(pango_layout_get_baseline(layout)) / PANGO_SCALE);
  cairo_scale(context, stretch, 1.0);
  pango_cairo_show_layout(context, layout);
  cairo_restore(context);
  pango_font_description_free(face);
  g_object_unref(layout);
  return std::nullopt;
}

} // namespace sheerpole
