#pragma once

#include "service/open_boat.hpp"
#include "service/papers.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// What a sealed folder says of its files, and whether it is so. Who looks may have the folder or only the
// texts of it.
namespace sheerpole {

/// Names in a sealed folder. The list of sums is what `sha256sum --check` reads.
inline constexpr std::string_view seal_sums = "SHA256SUMS";
inline constexpr std::string_view seal_facts = "seal.json";
inline constexpr std::string_view seal_words = "READ-ME.txt";
/// The signature over the list of sums, when there is one. It stands on no list: it is made of the list.
inline constexpr std::string_view seal_signature = "SHA256SUMS.sig";
/// The folders of the rig files and of the papers.
inline constexpr std::string_view seal_rig_folder = "rig/";
inline constexpr std::string_view seal_papers_folder = "papers/";

/// What differs between a folder and its list of sums.
struct SealFaults {
  std::vector<std::string> altered; ///< their sum is another
  std::vector<std::string> missing;
  std::vector<std::string> extra;     ///< on no list
  std::vector<std::string> bad_lines; ///< of the list, that are no sum and name

  bool none() const { return altered.empty() && missing.empty() && extra.empty() && bad_lines.empty(); }
};

/// One line of the list: the name and its sum.
using SealSums = std::map<std::string, std::string>;

/// A SHA-256 as this program writes it, from one in small or capital letters; nothing when it is none.
std::optional<std::string> digest(std::string text);

/// Whether a path of the folder could lead out of it, or is none.
bool leads_out(const std::string& name);

/// Reads "64 hexadecimal digits, two blanks, a name" a line. Names that lead out of the folder are bad
/// lines.
SealSums read_sums(const std::string& list, std::vector<std::string>& bad_lines);

/// `found` holds every file of the folder but the list itself: its name and its sum.
SealFaults compare_with_sums(const SealSums& sums, const SealSums& found);

/// Of what and how sealed papers were made, by the text of seal.json.
struct SealedHow {
  std::string rig; ///< path in the folder
  std::vector<std::string> only;
  bool pdf = false;
  std::string paper = "a4";
  std::string shop;
  std::string version; ///< of the program; empty when it is not told
};

/// Nothing when the text is not what a seal holds: a rig outside the folder, or one that is not on the
/// list, is not the one that was sealed.
std::optional<SealedHow> how_sealed(std::string_view facts_text, const SealSums& sums);

namespace service {

/// The texts of a sealed folder that are about its files.
struct SealedTexts {
  std::string sums;
  std::string facts;
  std::string words;
};

/// What was looked at and what came of it.
struct SealCheck {
  std::string seal;                     ///< SHA-256 of the list
  std::size_t files = 0;                ///< on the list
  SealFaults faults;                    ///< of the texts, and of the papers as they are made again here
  std::vector<std::string> not_checked; ///< papers on the list that are drawn by another program: PDF
  std::string version;                  ///< of the program that sealed; empty: seal.json does not say it
};

/// Holds the texts of a boat against the list: her files, what is said of the folder, and her papers, which
/// are made again. `names` are the back ends that the sealed papers are of. The signature is not looked at.
SealCheck check_seal(const OpenBoat& boat, FileReader& reader, const CompileOptions& options,
                     BackendList backends, const SealedTexts& texts, const std::vector<std::string>& names);

} // namespace service

} // namespace sheerpole
