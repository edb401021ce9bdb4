#include "driver/seal/sealed_folder.hpp"

#include "backend/json/json.hpp"
#include "base/byte_text.hpp"
#include "calculate/facts.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/process/run_program.hpp"
#include "driver/terminal.hpp"
#include "driver/version.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <filesystem>
#include <iterator>

namespace sheerpole {

namespace {

using Path = std::filesystem::path;

/// What the signature is for, so that one made for another purpose is none here.
constexpr std::string_view signature_space = "sheerpole-seal";

/// What the paths share from the left, in whole folders.
Path common_folder(const std::vector<Path>& paths) {
  Path common = paths.front().parent_path();
  for (const Path& path : paths) {
    const Path folder = path.parent_path();
    Path shared;
    auto a = common.begin();
    auto b = folder.begin();
    for (; a != common.end() && b != folder.end() && *a == *b; ++a, ++b)
      shared /= *a;
    common = shared;
  }
  return common;
}

std::string facts_in_words(const SealContent& content, const std::string& root) {
  return "Rig of " + (content.boat.empty() ? std::string("a boat without a name") : content.boat) +
         (content.revision.empty() ? "" : ", revision " + content.revision) +
         (content.report_date.empty() ? "" : ", " + content.report_date) +
         "\n\n"
         "rig/         the files that she is described in; " +
         root +
         " is the one to begin with\n"
         "papers/      what was made from them\n"
         "seal.json    what made it, and what each file is\n"
         "SHA256SUMS   the SHA-256 of every file here but itself\n\n"
         "Everything is text, SVG, HTML or PDF and can be read without the program that made it.\n"
         "Whether anything was altered:\n\n"
         "    sha256sum --check SHA256SUMS      on any machine that has it; names what is altered or "
         "missing\n"
         "    sheerpole verify .                the same, and names files that do not belong here\n"
         "    sheerpole verify . --again        and makes the papers again, to compare every byte\n\n"
         "Who alters a file can alter SHA256SUMS as well. Write down the seal, the SHA-256 of SHA256SUMS,\n"
         "where the folder does not lie:\n\n"
         "    sheerpole verify . --seal DIGEST\n\n"
         "That is a sum and no signature: it does not say who made the folder. SHA256SUMS.sig, where it "
         "lies\n"
         "here, is one, as `ssh-keygen -Y sign -n " +
         std::string(signature_space) +
         "` makes it:\n\n"
         "    ssh-keygen -Y verify -n " +
         std::string(signature_space) +
         " -s SHA256SUMS.sig -f SIGNERS -I NAME < SHA256SUMS\n\n"
         "The papers report what the files state; they do not judge a rig.\n";
}

Json file_json(const std::string& path, std::string_view role, const std::string& bytes) {
  return {{"path", path}, {"role", role}, {"bytes", bytes.size()}, {"sha256", sha256(bytes)}};
}

} // namespace

std::vector<std::string> paths_in_seal(const std::vector<SealedSource>& sources) {
  std::vector<Path> paths;
  for (const SealedSource& source : sources)
    paths.push_back(std::filesystem::absolute(source.path).lexically_normal());
  const Path common = paths.empty() ? Path() : common_folder(paths);
  std::vector<std::string> result;
  for (const Path& path : paths)
    result.push_back("rig/" + path.lexically_relative(common).generic_string());
  return result;
}

OutputBundle sealed_folder(const SealContent& content) {
  const std::vector<std::string> paths = paths_in_seal(content.sources);
  OutputBundle bundle;
  Json files = Json::array();
  std::string root;
  for (std::size_t i = 0; i < content.sources.size(); ++i) {
    const bool first = content.sources[i].path == content.root;
    if (first)
      root = paths[i];
    const SealedSource& source = content.sources[i];
    files.push_back(file_json(paths[i],
                              first            ? "rig"
                              : source.picture ? "photograph"
                                               : "library",
                              source.bytes));
    bundle.files.push_back({paths[i], content.sources[i].bytes});
  }
  for (const OutputFile& output : content.outputs) {
    const std::string path = "papers/" + output.name;
    files.push_back(file_json(path, "paper", output.bytes));
    bundle.files.push_back({path, output.bytes});
  }
  std::sort(files.begin(), files.end(), [](const Json& a, const Json& b) { return a["path"] < b["path"]; });
  bundle.files.push_back({std::string(seal_facts), write_json({{"seal", 1},
                                                               {"program", "sheerpole"},
                                                               {"version", content.version},
                                                               {"commit", content.commit},
                                                               {"language", 1},
                                                               {"boat", content.boat},
                                                               {"revision", content.revision},
                                                               {"report_date", content.report_date},
                                                               {"rig", root},
                                                               {"made", content.made},
                                                               {"files", std::move(files)}})});
  bundle.files.push_back({std::string(seal_words), facts_in_words(content, root)});
  std::vector<std::pair<std::string, std::string>> sums;
  for (const OutputFile& file : bundle.files)
    sums.emplace_back(file.name, sha256(file.bytes));
  std::sort(sums.begin(), sums.end());
  std::string list;
  for (const auto& [name, sum] : sums)
    list += sum + "  " + name + "\n";
  bundle.files.push_back({std::string(seal_sums), std::move(list)});
  return bundle;
}

namespace {

/// The words that make the same papers again.
std::vector<std::string> words_for_again(const SealRequest& request) {
  std::vector<std::string> words;
  for (const std::string& name : request.only)
    words.push_back("--only=" + name);
  if (request.pdf)
    words.emplace_back("--pdf");
  words.push_back("--paper=" + request.paper);
  if (!request.rig.shop.empty())
    words.push_back("--shop=" + request.rig.shop);
  return words;
}

std::vector<SealedSource> sources_of(const SourceSet& texts) {
  std::vector<SealedSource> sources;
  for (std::uint32_t i = 0; i < texts.size(); ++i)
    sources.push_back({texts[SourceId{i}].name(), texts[SourceId{i}].file_bytes()});
  return sources;
}

} // namespace

Result<OutputBundle, SealFailure> make_seal(const SealRequest& request) {
  const ChosenBackends chosen = choose_backends(request.only, {}, false);
  if (!chosen.unknown.empty()) {
    print_error(chosen.unknown);
    return SealFailure{exit_usage};
  }
  print_progress("reading " + request.file + "\n");
  DiskFileReader reader;
  Compilation compilation = compile(request.file, reader, request.rig);
  if (!compilation.checked) {
    print_error(show_findings(compilation, "text", error_has_colour()));
    print_error("nothing was sealed: an error stands\n");
    return SealFailure{exit_errors};
  }
  std::vector<SealedSource> sources = sources_of(*compilation.sources);
  for (const Photograph& photograph : *compilation.photographs)
    sources.push_back({photograph.path, *photograph.bytes, true});
  for (const std::string& path : paths_in_seal(sources))
    if (leads_out(path) || printable(path) != path) {
      print_error(
          "sheerpole: " + printable(path) +
          " is no name that a list of sums can hold; nothing was sealed. Give the file a name without "
          "backslashes and signs that do not show\n");
      return SealFailure{exit_usage};
    }
  OutputBundle papers;
  FileClaims claims;
  const BackendRequest of_papers{.checked = *compilation.checked,
                                 .fleet = {},
                                 .paper = request.paper == "letter" ? PaperSize::letter : PaperSize::a4,
                                 .printed = request.pdf};
  const std::string faults = make_papers(chosen.backends, of_papers, claims, papers, [](const auto&) {});
  const Boat& boat = compilation.checked->rig().boat;
  PdfReport pdfs;
  if (request.pdf && faults.empty())
    pdfs = add_pdfs(papers, boat.report_date, *compilation.sources);
  std::move(pdfs.findings.begin(), pdfs.findings.end(), std::back_inserter(compilation.findings));
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, "text", error_has_colour()));
  print_error(faults + pdfs.fault);
  if (!faults.empty() || !pdfs.fault.empty())
    return SealFailure{exit_fault};
  return sealed_folder({.root = (*compilation.sources)[compilation.names->root].name(),
                        .sources = std::move(sources),
                        .outputs = std::move(papers.files),
                        .boat = boat.title,
                        .revision = fact_text(boat.particulars, fact_names.revision),
                        .report_date = boat.report_date,
                        .version = SHEERPOLE_VERSION,
                        .commit = std::string(built_from_commit()),
                        .made = words_for_again(request)});
}

std::optional<SealRequest> request_in(std::string_view facts_text, const SealSums& sums,
                                      const std::string& folder) {
  const auto how = how_sealed(facts_text, sums);
  if (!how)
    return std::nullopt;
  SealRequest request;
  request.file = (Path(folder) / how->rig).generic_string();
  request.rig.folders = {(Path(folder) / "rig").generic_string()};
  request.rig.shop = how->shop;
  request.only = how->only;
  request.pdf = how->pdf;
  request.paper = how->paper;
  return request;
}

namespace {

/// What a program that did not do it says, in one line; or how it ended.
std::string failure_of(const ProgramEnd& end) {
  if (end.how == ProgramEnd::How::not_started)
    return "it cannot be started";
  std::string words = end.errors + end.output;
  std::replace(words.begin(), words.end(), '\n', ' ');
  words.erase(std::remove(words.begin(), words.end(), '\r'), words.end());
  while (words.ends_with(' '))
    words.pop_back();
  return words.empty() ? "it ended with " + std::to_string(end.code) : words;
}

} // namespace

std::optional<std::string> sign_sums(const Signer& signer, const std::string& list, std::string& fault) {
  const ProgramEnd end =
      run_program({.path = signer.program,
                   .arguments = {"-Y", "sign", "-n", std::string(signature_space), "-f", signer.key}},
                  list);
  if (end.well() && !end.output.empty())
    return end.output;
  fault = failure_of(end);
  return std::nullopt;
}

std::optional<std::string> signature_fault(const Signer& signer, const std::string& list,
                                           const std::string& signature) {
  const ProgramEnd end =
      run_program({.path = signer.program,
                   .arguments = {"-Y", "verify", "-n", std::string(signature_space), "-f", signer.known,
                                 "-I", signer.name, "-s", signature}},
                  list);
  return end.well() ? std::nullopt : std::optional(failure_of(end));
}

} // namespace sheerpole
