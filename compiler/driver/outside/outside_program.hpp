#pragma once

#include "backend/backend.hpp"
#include "diagnostics/diagnostic.hpp"
#include "driver/process/run_program.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
