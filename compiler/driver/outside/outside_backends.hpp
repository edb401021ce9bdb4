#pragma once

#include "driver/compile.hpp"
#include "driver/outside/file_claims.hpp"
#include "driver/outside/outside_program.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What the command line says about programs outside. Nothing else can name one: a rig file comes from
/// anybody, and reading it must not start a program.
struct OutsideOptions {
  std::vector<std::string> programs; ///< paths
  int seconds = 10;                  ///< for each answer
};

/// The programs outside that the command line names.
class OutsideBackends {
public:
  /// Asks each what it is.
  explicit OutsideBackends(const OutsideOptions& options);

  /// What those that answered say of themselves.
  std::vector<BackendDescription> descriptions() const;
  /// Everything that is to be said about them so far.
  const std::vector<Diagnostic>& findings() const { return findings_; }
  /// Whether one of them has failed.
  bool fault() const { return fault_; }

  /// Lets each that answered make its papers. Those of one that fails, or whose names are taken, are left
  /// out, all of them.
  void generate(const CheckedRig& checked, const CompileOptions& options, PaperSize paper,
                FileClaims& claims, OutputBundle& bundle);

private:
  struct Described {
    OutsideProgram program;
    BackendDescription description;
  };
  void take(const Described& from, OutputBundle made, FileClaims& claims, OutputBundle& bundle);
  void say(std::vector<Diagnostic> findings);

  std::vector<Described> described_;
  std::vector<Diagnostic> findings_;
  bool fault_ = false;
};

} // namespace sheerpole
