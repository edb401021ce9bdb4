#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// Which back end writes which file: no two of them one.
class FileClaims {
public:
  void add(std::string file, std::string owner) { claims_.push_back({std::move(file), std::move(owner)}); }

  /// Why this one can not have the file, in words that go on from "but"; nothing when it can.
  std::optional<std::string> clash(const std::string& file, const std::string& owner) const;

private:
  struct Claim {
    std::string file;
    std::string owner;
  };
  std::vector<Claim> claims_;
};

} // namespace sheerpole
