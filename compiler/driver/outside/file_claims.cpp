#include "driver/outside/file_claims.hpp"

#include "backend/process/file_name.hpp"

namespace sheerpole {

std::optional<std::string> FileClaims::clash(const std::string& file, const std::string& owner) const {
  for (const Claim& claim : claims_)
    if (file_names_clash(claim.file, file))
      return claim.owner != owner ? claim.owner + " writes `" + claim.file + "`"
             : claim.file == file ? "it writes that file already"
                                  : "it writes `" + claim.file + "` already";
  return std::nullopt;
}

} // namespace sheerpole
