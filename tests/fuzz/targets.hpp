#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

// What is read from strangers, each as a function of bytes: nothing that is given may do more than be
// refused. A promise that does not hold ends the program by abort(), as a stray pointer does.
namespace sheerpole::fuzz {

/// As `LLVMFuzzerTestOneInput` wants it; returns 0.
using Try = int (*)(const std::uint8_t* data, std::size_t size);

int try_rig(const std::uint8_t* data, std::size_t size); ///< rig text: all phases, tidy, every paper
int try_table(const std::uint8_t* data,
              std::size_t size); ///< a table of lengths: what it makes has no error
int try_reply(const std::uint8_t* data, std::size_t size); ///< answers of a program outside
int try_seal(const std::uint8_t* data, std::size_t size);  ///< seal.json and a list of sums

struct Target {
  std::string_view name;
  Try run;
  std::string_view ending;               ///< of the files of its corpus
  std::vector<std::string_view> folders; ///< from the folder of the project: where its corpus lies
  std::vector<std::string> words;        ///< what its inputs are made of
};

const std::vector<Target>& targets();

/// Ends the program with these words unless what was promised holds.
void promise(bool holds, std::string_view words);

} // namespace sheerpole::fuzz
