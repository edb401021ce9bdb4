#pragma once

#include "backend/backend.hpp"
#include "base/result.hpp"
#include "driver/terminal.hpp"
#include "service/compile.hpp"
#include "service/seal.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One rig file as it lies on the disk.
struct SealedSource {
  std::string path;     ///< as it was opened
  std::string bytes;    ///< as they lie there
  bool picture = false; ///< that the inspection log names
};

/// What a sealed folder is made of.
struct SealContent {
  std::string root;                  ///< path of the rig file, as it was opened
  std::vector<SealedSource> sources; ///< all files that were read, the rig file among them
  std::vector<OutputFile> outputs;   ///< papers
  std::string boat;
  std::string revision;          ///< may be empty
  std::string report_date;       ///< may be empty
  std::string version;           ///< of the program
  std::string commit;            ///< that it was built from, or "unknown"
  std::vector<std::string> made; ///< words of the command line that the papers depend on
};

/// The files of the folder: rig/ with the sources as they lie beside each other, papers/, a page that says
/// what it is, the facts as JSON, and the list of sums of all of them. The same content gives the same
/// bytes; nothing in it says when or where.
OutputBundle sealed_folder(const SealContent& content);

/// Where each source lies below rig/: its path from the folder that all of them share.
std::vector<std::string> paths_in_seal(const std::vector<SealedSource>& sources);

/// What is to be sealed.
struct SealRequest {
  std::string file;
  CompileOptions rig; ///< nothing is set: a trial is not sealed
  std::vector<std::string> only;
  bool pdf = false;
  std::string paper = "a4";
};

/// Why there is no sealed folder; said to the user where it happened.
struct SealFailure {
  int code = exit_errors;
};

/// A program that signs and checks as `ssh-keygen -Y` does, and what it is told. Only the command line
/// names one, by its path; none is looked for.
struct Signer {
  std::string program; ///< empty: there is none
  std::string key;     ///< to sign with: the file of the private key, or of the public one of an agent
  std::string known;   ///< to check with: the file of names and their public keys
  std::string name;    ///< to check with: who is said to have signed
};

/// The signature over the list of sums; nothing when there is none, and `fault` is what the program said.
std::optional<std::string> sign_sums(const Signer& signer, const std::string& list, std::string& fault);

/// Nothing when `signer.name` signed this list, with a key that stands beside that name; else what the
/// program said. `signature` is the path of the signature.
std::optional<std::string> signature_fault(const Signer& signer, const std::string& list,
                                           const std::string& signature);

/// What the text of seal.json says that is needed to make the papers again. Nothing when it is not what a
/// seal holds: a rig outside the folder, or one that is not on the list, is not the one that was sealed.
std::optional<SealRequest> request_in(std::string_view facts_text, const SealSums& sums,
                                      const std::string& folder);

/// Compiles the rig, makes the papers and puts all of it together. Nothing is written.
Result<OutputBundle, SealFailure> make_seal(const SealRequest& request);

} // namespace sheerpole
