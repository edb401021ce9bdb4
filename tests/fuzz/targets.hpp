#pragma once

#include "fuzz/mutate.hpp"
#include "source/source_text.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

// What is read from strangers, each as a function of bytes: nothing that is given may do more than be
// refused. A promise that does not hold ends the program by abort(), as a stray pointer does.
namespace sheerpole::fuzz {

/// As `LLVMFuzzerTestOneInput` wants it; returns 0.
using Try = int (*)(const std::uint8_t* data, std::size_t size);

int try_parse(const std::uint8_t* data, std::size_t size);   ///< rig text: its tree and its layout, no more
int try_text(const std::uint8_t* data, std::size_t size);    ///< rig text: all phases, findings, tidy
int try_rig(const std::uint8_t* data, std::size_t size);     ///< the same with every paper, so far slower
int try_table(const std::uint8_t* data, std::size_t size);   ///< a table of lengths: it makes no error
int try_reply(const std::uint8_t* data, std::size_t size);   ///< answers of a program outside
int try_seal(const std::uint8_t* data, std::size_t size);    ///< seal.json and a list of sums
int try_service(const std::uint8_t* data, std::size_t size); ///< rig text: all that can be asked of it
int try_editor(const std::uint8_t* data, std::size_t size);  ///< what an editor sends

/// What rig texts are made of: the words of the language, the examples of the findings, declarations by the
/// tables of kinds.
Material rig_material();

/// The layout of a text that can be read: what is tidy stays as it is.
void look_at_layout(const SourceText& source);

struct Target {
  std::string_view name;
  Try run;
  std::string_view ending;               ///< of the files of its corpus
  std::vector<std::string_view> folders; ///< from the folder of the project: where its corpus lies
  Material material;
};

const std::vector<Target>& targets();

/// Ends the program with these words unless what was promised holds.
void promise(bool holds, std::string_view words);

} // namespace sheerpole::fuzz
