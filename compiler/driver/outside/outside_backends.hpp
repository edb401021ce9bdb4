#pragma once

#include "backend/backend.hpp"
#include "diagnostics/diagnostic.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/process/run_program.hpp"
#include "service/compile.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What the command line says about programs outside. Nothing else can name one: a rig file comes from
/// anybody, and reading it must not start a program.
struct OutsideOptions {
  std::vector<std::string> programs; ///< paths
  int seconds = 10;                  ///< for each answer
};

/// What a program outside answered, and what is to be said about it. Without a value it has failed and a
/// finding says why.
template <class Value>
struct OutsideAnswer {
  std::optional<Value> value;
  std::vector<Diagnostic> findings;
};

/// A program that speaks the contract of a back end as JSON over its input and output: docs/backends/
/// outside.md. Each question is a run of its own, in an empty folder that is removed afterwards.
class OutsideProgram {
public:
  /// `path` from the folder in which the command was given; nothing is looked for.
  OutsideProgram(std::string path, ProgramLimits limits);

  /// How findings name it: as it was asked for, until it has said its name.
  const std::string& name() const { return name_; }

  OutsideAnswer<BackendDescription> describe();
  /// `request` is what generate_request() wrote.
  OutsideAnswer<OutputBundle> generate(const std::string& request) const;

private:
  std::string path_;
  std::string name_;
  ProgramLimits limits_;
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
