#pragma once

#include "service/open_boat.hpp"

#include <optional>
#include <vector>

namespace sheerpole::service {

/// What a name stands for, or the file that a `use` reads.
struct Definition {
  Span from; ///< the word that was asked about
  Span to;   ///< where it is declared; of a file its beginning
};

/// Of the word at the byte `offset`; nothing where no name of the file stands.
std::optional<Definition> definition(const OpenBoat& boat, SourceId source, std::uint32_t offset);

/// Every place at which the name at the byte `offset` stands for the same thing, in all files of the boat,
/// in their order. With or without the place where it is declared.
std::vector<Span> references(const OpenBoat& boat, SourceId source, std::uint32_t offset,
                             bool with_declaration);

/// The places of one symbol.
std::vector<Span> places_of(const OpenBoat& boat, SymbolId symbol);

/// The symbol of the name at the byte `offset`; the poison symbol where none stands.
SymbolId symbol_of(const OpenBoat& boat, SourceId source, std::uint32_t offset);

} // namespace sheerpole::service
