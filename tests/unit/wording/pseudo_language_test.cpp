#include "base/translator.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/built_in_backends.hpp"
#include "kinds/kind_row.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/plugins/paper_text.hpp"
#include "wording/language_words.hpp"
#include "wording/phrase.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <set>
#include <string>
#include <vector>

// A text of a paper comes from a table of phrases, from the rig file or is a number: a language whose
// letters all have marks shows any that does not.
namespace sheerpole::pseudo_language_test {
namespace {

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// English with a mark on each letter, so that it stays as wide and is seen wherever lines are broken.
class MarkedEnglish final : public Translator {
public:
  std::string_view phrase(std::string_view, std::uint16_t, std::string_view english) const override {
    const auto [found, added] = phrases_.try_emplace(english);
    if (added)
      found->second = marked(english);
    return found->second;
  }

  static std::string marked(std::string_view english) {
    static constexpr std::array<const char*, 26> small{"á", "ƀ", "ç", "ð", "é", "ƒ", "ğ", "ĥ", "í",
                                                       "ĵ", "ķ", "ł", "ɱ", "ñ", "ó", "þ", "ɋ", "ŕ",
                                                       "š", "ţ", "ú", "ṽ", "ŵ", "ẋ", "ý", "ž"};
    static constexpr std::array<const char*, 26> large{"Á", "Ɓ", "Ç", "Đ", "É", "Ƒ", "Ğ", "Ĥ", "Í",
                                                       "Ĵ", "Ķ", "Ł", "Ṁ", "Ñ", "Ó", "Þ", "Ɋ", "Ŕ",
                                                       "Š", "Ţ", "Ú", "Ṽ", "Ŵ", "Ẋ", "Ý", "Ž"};
    std::string text;
    bool named = false;
    for (const char c : english) {
      named = c == '{' || (named && c != '}');
      if (named || !is_letter(c))
        text += c;
      else
        text +=
            c >= 'a' ? small[static_cast<std::size_t>(c - 'a')] : large[static_cast<std::size_t>(c - 'A')];
    }
    return text;
  }

private:
  mutable std::map<std::string_view, std::string> phrases_;
};

/// What a rig file and its parts say: words of the language and names, and texts in quotes.
struct SaidInFiles {
  std::set<std::string, std::less<>> words; ///< in pieces of letters
  std::string texts;
};

void add_words(std::string_view text, std::set<std::string, std::less<>>& words) {
  std::string word;
  for (std::size_t i = 0; i <= text.size(); ++i)
    if (i < text.size() && is_letter(text[i]))
      word += text[i];
    else if (!word.empty()) {
      words.insert(word);
      word.clear();
    }
}

SaidInFiles said_in_files(const Compilation& compilation) {
  SaidInFiles said;
  for (std::uint32_t i = 0; i < compilation.sources->size(); ++i) {
    const std::string_view text = (*compilation.sources)[SourceId{i}].bytes();
    add_words((*compilation.sources)[SourceId{i}].name(), said.words);
    bool quoted = false;
    bool comment = false;
    std::string plain;
    for (const char c : text) {
      comment = (comment && c != '\n') || (c == '#' && !quoted);
      if (comment)
        continue;
      if (c == '"') {
        quoted = !quoted;
        said.texts += '\n';
      } else if (quoted)
        said.texts += c;
      plain += quoted ? ' ' : c;
    }
    add_words(plain, said.words);
    // A name that begins a sentence has a capital.
    const std::set<std::string, std::less<>> names = said.words;
    for (std::string name : names) {
      name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
      said.words.insert(std::move(name));
    }
  }
  const auto add_properties = [&](std::span<const PropertyRow> rows) {
    for (const PropertyRow& row : rows) {
      add_words(row.name, said.words);
      for (const std::string_view choice : row.choices)
        add_words(choice, said.words);
    }
  };
  for (const KindRow& kind : all_kinds()) {
    add_words(kind.name, said.words);
    add_properties(kind.properties);
    add_properties(kind.settings);
  }
  for (const EndRow& end : all_ends()) {
    add_words(end.name, said.words);
    add_properties(end.dimensions);
  }
  for (const Keyword& keyword : keywords())
    add_words(keyword.word, said.words);
  // Provenance that elaboration notes, and the units and letters of a drawing.
  said.texts += "from the range of\n";
  add_words("mm kN deg degC kg ft in N m lbf GPa kNm rad UNF UNC X U L A B C", said.words);
  return said;
}

/// The pieces of a text that are letters and blanks alone.
std::vector<std::vector<std::string>> runs_of_words(const std::string& text) {
  std::vector<std::vector<std::string>> runs(1);
  std::string word;
  for (std::size_t at = 0; at <= text.size(); ++at) {
    const char sign = at < text.size() ? text[at] : '\n';
    if (is_letter(sign)) {
      word += sign;
      continue;
    }
    if (!word.empty())
      runs.back().push_back(std::move(word));
    word.clear();
    if (sign != ' ' && !runs.back().empty())
      runs.emplace_back();
  }
  return runs;
}

/// How many words from `first` on the files have, one behind the other: as a text in quotes, as a word of
/// their own, or as one that a narrow cell has broken. None: 0.
std::size_t known_words(const std::vector<std::string>& run, std::size_t first, const SaidInFiles& said) {
  for (std::size_t count = run.size() - first; count > 0; --count) {
    std::string text;
    std::string broken;
    for (std::size_t i = first; i < first + count; ++i) {
      text += (text.empty() ? "" : " ") + run[i];
      broken += run[i];
    }
    if ((text.size() > 2 && said.texts.find(text) != std::string::npos) || said.words.contains(broken))
      return count;
  }
  return 0;
}

/// The words of the text that neither a table nor the files have, each with those beside it.
std::vector<std::string> left_in_code(const std::string& text, const SaidInFiles& said) {
  std::vector<std::string> left;
  for (const std::vector<std::string>& run : runs_of_words(text)) {
    std::string unknown;
    for (std::size_t i = 0; i < run.size();) {
      const std::size_t known = known_words(run, i, said);
      // One letter beside a marked one or a number is that of a mark, of a size or of a thread.
      if (known == 0 && run[i].size() > 1)
        unknown += (unknown.empty() ? "" : " ") + run[i];
      i += std::max<std::size_t>(known, 1);
    }
    if (!unknown.empty())
      left.push_back(std::move(unknown));
  }
  return left;
}

/// What stands beside the words of a paper and is none: names of files and of findings, blanks of markup,
/// the digest of the rig.
std::string without_names(std::string text, const CheckedRig& checked) {
  static const std::vector<std::string> names = [] {
    std::vector<std::string> all{"&nbsp;"};
    for (const auto& backend : built_in_backends()) {
      const BackendDescription description = backend->describe();
      for (const auto* files : {&description.outputs, &description.sometimes, &description.papers})
        all.insert(all.end(), files->begin(), files->end());
    }
    for (const CatalogueEntry* entry : all_entries())
      all.emplace_back("(" + std::string(entry->slug) + ")");
    return all;
  }();
  const auto take_out = [&](const std::string& name) {
    for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name, at))
      text.replace(at, name.size(), "|");
  };
  for (const std::string& name : names)
    take_out(name);
  take_out(std::string(checked.digest()));
  return text;
}

/// Papers that say what programs read too, with what it is. This list may only grow shorter.
const std::map<std::string, std::string, std::less<>> read_by_programs{
    {"checks", "headings of its tables, which are those of its CSV"},
    {"tune-sheet", "headings of its tables, which are those of its CSV"},
    {"findings", "what stands around a finding in a terminal"},
    {"echo", "JSON alone"},
    {"survey-report", "names of checks, findings and properties, and the digests of files"},
    {"change-sheet", "the words of findings, which are a table of their own"},
};

class PseudoLanguage : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, PseudoLanguage,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "quillwort",
                                         "tansyholm", "sallow"));

TEST_P(PseudoLanguage, NoTextOfAPaperIsLeftInCode) {
  const MarkedEnglish marked;
  const Speaking speaking(marked);
  DiskFileReader reader;
  const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + GetParam() + ".rig";
  const Compilation compilation = compile(path, reader);
  ASSERT_TRUE(compilation.checked);
  const Compilation before = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/smallest.rig", reader);
  ASSERT_TRUE(before.checked);
  SaidInFiles said = said_in_files(compilation);
  const SaidInFiles also = said_in_files(before);
  said.words.insert(also.words.begin(), also.words.end());
  said.texts += also.texts;
  BackendRequest request{*compilation.checked};
  request.previous = &*before.checked;
  request.name = "1";
  request.previous_name = "2";

  std::map<std::string, std::set<std::string>> left;
  for (const auto& backend : built_in_backends()) {
    const std::string name = backend->describe().name;
    const OutputBundle bundle = backend->generate(request);
    for (const OutputFile& file : bundle.files) {
      const bool markup = file.name.ends_with(".html") || file.name.ends_with(".svg");
      if (!markup && !file.name.ends_with(".txt"))
        continue;
      const std::string text = markup ? test::words_of_markup(file.bytes) : file.bytes;
      for (std::string& run :
           left_in_code(without_names(test::one_blank_between(text), *compilation.checked), said))
        left[name].insert(std::move(run));
    }
    for (const PagedFile& file : bundle.papers)
      for (const Drawing& drawing : file.pages) {
        test::PaperPage page;
        test::read_group(drawing.content, page);
        for (std::string& run :
             left_in_code(without_names(test::one_blank_between(page.words), *compilation.checked), said))
          left[name].insert(std::move(run));
      }
  }
  for (const auto& [paper, runs] : left)
    if (!read_by_programs.contains(paper))
      for (const std::string& run : runs)
        ADD_FAILURE() << paper << " says \"" << run << "\", which is in no table of compiler/wording";
}

TEST(MarkedLanguage, ArgumentsStayBetweenTheWords) {
  const MarkedEnglish marked;
  EXPECT_EQ(marked.phrase("any", 0, "cut {} and {name}, {0}"), "çúţ {} áñð {name}, {0}");
  EXPECT_EQ(spoken_language(), nullptr);
  {
    const Speaking speaking(marked);
    EXPECT_EQ(word_of(WhichEnd::upper), "áłóƒţ");
    EXPECT_EQ(joined({"1", "2"}, Join::and_word), "1 áñð 2");
  }
  EXPECT_EQ(word_of(WhichEnd::upper), "aloft");
}

TEST(Phrase, IsFilledInByOrderAndByPlace) {
  const std::array<PhraseArgument, 2> two{PhraseArgument("rope"), PhraseArgument(-12)};
  EXPECT_EQ(filled_in("{} of {} mm", two), "rope of -12 mm");
  EXPECT_EQ(filled_in("{1} mm of {0}, {0}", two), "-12 mm of rope, rope");
  EXPECT_EQ(filled_in("nothing", two), "nothing");
}

} // namespace
} // namespace sheerpole::pseudo_language_test
