#include "service/seal.hpp"

#include "backend/json/json.hpp"
#include "base/byte_text.hpp"

#include <algorithm>
#include <exception>

namespace sheerpole {

namespace {

constexpr std::size_t sum_digits = 64;

bool is_hex_digit(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

} // namespace

bool leads_out(const std::string& name) {
  if (name.empty() || name.front() == '/' || name.find('\\') != std::string::npos)
    return true;
  for (std::size_t at = 0; at <= name.size();) {
    const std::size_t end = std::min(name.find('/', at), name.size());
    const std::string part = name.substr(at, end - at);
    if (part.empty() || part == "." || part == "..")
      return true;
    at = end + 1;
  }
  return false;
}

std::optional<std::string> digest(std::string text) {
  if (text.size() != sum_digits || !std::all_of(text.begin(), text.end(), is_hex_digit))
    return std::nullopt;
  for (char& c : text)
    if (c >= 'A' && c <= 'F')
      c = static_cast<char>(c - 'A' + 'a');
  return text;
}

SealSums read_sums(const std::string& list, std::vector<std::string>& bad_lines) {
  SealSums sums;
  for (std::size_t at = 0; at < list.size();) {
    const std::size_t end = std::min(list.find('\n', at), list.size());
    const std::string line = list.substr(at, end - at);
    at = end + 1;
    const bool shaped = line.size() > sum_digits + 2 && line.compare(sum_digits, 2, "  ") == 0 &&
                        std::all_of(line.begin(), line.begin() + sum_digits, is_hex_digit);
    const std::string name = shaped ? line.substr(sum_digits + 2) : "";
    if (!shaped || leads_out(name) || !sums.emplace(name, *digest(line.substr(0, sum_digits))).second)
      bad_lines.push_back(line);
  }
  return sums;
}

SealFaults compare_with_sums(const SealSums& sums, const SealSums& found) {
  SealFaults faults;
  for (const auto& [name, sum] : sums) {
    const auto file = found.find(name);
    if (file == found.end())
      faults.missing.push_back(name);
    else if (file->second != sum)
      faults.altered.push_back(name);
  }
  for (const auto& [name, sum] : found)
    if (!sums.contains(name))
      faults.extra.push_back(name);
  return faults;
}

std::optional<SealedHow> how_sealed(std::string_view facts_text, const SealSums& sums) {
  const Json facts = Json::parse(facts_text, nullptr, false);
  if (!facts.is_object())
    return std::nullopt;
  const Json rig = facts.value("rig", Json());
  const Json made = facts.value("made", Json());
  if (!rig.is_string() || !made.is_array() || !sums.contains(rig.get<std::string>()))
    return std::nullopt;
  SealedHow how;
  how.rig = rig.get<std::string>();
  if (const Json version = facts.value("version", Json()); version.is_string())
    how.version = version.get<std::string>();
  for (const Json& word : made) {
    if (!word.is_string())
      return std::nullopt;
    const std::string text = word.get<std::string>();
    const auto value_of = [&](std::string_view option) {
      return text.starts_with(option) ? std::optional(text.substr(option.size())) : std::nullopt;
    };
    if (const auto only = value_of("--only="))
      how.only.push_back(*only);
    else if (const auto paper = value_of("--paper="); paper == "a4" || paper == "letter")
      how.paper = *paper;
    else if (const auto shop = value_of("--shop="))
      how.shop = *shop;
    else if (text == "--pdf")
      how.pdf = true;
    else
      return std::nullopt;
  }
  return how;
}

namespace service {

namespace {

constexpr std::string_view drawn_elsewhere = ".pdf";

/// The papers as they are made here, with their sums; what a back end with a fault makes is missing.
void add_papers(SealSums& found, const CheckedRig& checked, BackendList backends,
                const std::vector<std::string>& names, const SealedHow& how) {
  for (const auto& backend : backends) {
    if (std::find(names.begin(), names.end(), backend->describe().name) == names.end())
      continue;
    BackendRequest request{checked};
    request.paper = how.paper == "letter" ? PaperSize::letter : PaperSize::a4;
    request.printed = how.pdf;
    try {
      for (const OutputFile& file : backend->generate(request).files)
        found[std::string(seal_papers_folder) + file.name] = sha256(file.bytes);
    } catch (const std::exception&) {
      continue;
    }
  }
}

/// What lies below rig/: every file that the boat was read from, and every one of the list that is there.
/// `base` stands before the names of the folder.
void add_rig_files(SealSums& found, const OpenBoat& boat, FileReader& reader, const SealSums& sums,
                   const std::string& base) {
  const SourceSet& sources = *boat.compiled.sources;
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const std::string path = reader.real_path(sources[SourceId{i}].name());
    const std::string name = path.starts_with(base) ? path.substr(base.size()) : path;
    found[std::string(seal_rig_folder) + name] = sha256(sources[SourceId{i}].file_bytes());
  }
  for (const auto& [name, sum] : sums) {
    if (!name.starts_with(seal_rig_folder))
      continue;
    const auto text = reader.read(base + name.substr(seal_rig_folder.size()), largest_source_bytes);
    if (text.ok())
      found[name] = sha256(text.value());
  }
}

/// The path of a file of rig/ below that folder.
std::string below_rig(const std::string& name) {
  return name.starts_with(seal_rig_folder) ? name.substr(seal_rig_folder.size()) : name;
}

} // namespace

SealCheck check_seal(const OpenBoat& boat, FileReader& reader, const CompileOptions& options,
                     BackendList backends, const SealedTexts& texts,
                     const std::vector<std::string>& names) {
  SealCheck check;
  check.seal = sha256(texts.sums);
  std::vector<std::string> bad_lines;
  SealSums sums = read_sums(texts.sums, bad_lines);
  check.files = sums.size();
  SealSums found;
  found[std::string(seal_facts)] = sha256(texts.facts);
  found[std::string(seal_words)] = sha256(texts.words);
  const auto how = how_sealed(texts.facts, sums);
  // The boat may lie in a folder of her own, which the seal does not know.
  const std::string root = how ? below_rig(how->rig) : boat.root;
  const bool is_root = boat.root == root || boat.root.ends_with("/" + root);
  const std::string base = is_root ? boat.root.substr(0, boat.root.size() - root.size()) : "";
  add_rig_files(found, boat, reader, sums, base);
  if (how) {
    check.version = how->version;
    CompileOptions again = options;
    again.shop = how->shop;
    again.wanted = Wanted::words;
    const OpenBoat sealed = read_boat(base + root, reader, again);
    if (sealed.compiled.checked)
      add_papers(found, *sealed.compiled.checked, backends, names, *how);
  }
  // What is not made here is neither there nor missing.
  std::erase_if(sums, [&](const auto& line) {
    const std::string& name = line.first;
    if (!name.starts_with(seal_papers_folder) || !name.ends_with(drawn_elsewhere))
      return false;
    check.not_checked.push_back(name);
    return true;
  });
  check.faults = compare_with_sums(sums, found);
  check.faults.bad_lines = std::move(bad_lines);
  return check;
}

} // namespace service

} // namespace sheerpole
