#pragma once

#include "elaborate/elaboration.hpp"
#include "model/field.hpp"
#include "model/remark.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace sheerpole {

/// One property on its way into a member of the model.
struct StatedProperty {
  const ResolvedProperty& property;
  const std::string& owner; ///< for messages

  const Value& value() const { return property.syntax->value; }
  const PropertyRow& row() const { return *property.row; }
};

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<Sourced<Length>>& member) {
  member = elaboration.read.length(stated.value(), stated.row(), stated.owner);
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<Sourced<Force>>& member) {
  member = elaboration.read.force(stated.value(), stated.row(), stated.owner);
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<Sourced<double>>& member) {
  member = elaboration.read.ratio(stated.value(), stated.row(), stated.owner);
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<Sourced<Angle>>& member) {
  const auto read = elaboration.read.ratio(stated.value(), stated.row(), stated.owner);
  if (!read)
    return;
  member = Sourced<Angle>{Angle{read->value}, read->provenance, std::nullopt, read->influences};
  if (read->tolerance)
    member->tolerance = Angle{*read->tolerance};
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<Sourced<RopeMeasure>>& member) {
  member = elaboration.read.rope_measure(stated.value(), stated.row(), stated.owner);
}

/// A required one, which stays as it is when it cannot be read.
inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      Sourced<RopeMeasure>& member) {
  if (auto read = elaboration.read.rope_measure(stated.value(), stated.row(), stated.owner))
    member = *read;
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::vector<Sourced<Length>>& member) {
  member = elaboration.read.lengths(stated.value(), stated.row(), stated.owner);
}

inline void read_into(Elaboration& elaboration, const StatedProperty& stated, std::optional<int>& member) {
  if (const auto read = elaboration.read.count(stated.value(), stated.row(), stated.owner))
    member = read->value;
}

/// What a material is declared as; one that could not be elaborated has been reported.
inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::optional<MaterialId>& member) {
  const SymbolId id = elaboration.tree.symbol_at(stated.value().expression().span);
  if (const auto found = elaboration.materials.find(id.value); found != elaboration.materials.end())
    member = found->second;
}

/// A text, a date, a word of a choice, or the name of a declaration that is kept as written.
void read_into(Elaboration& elaboration, const StatedProperty& stated, std::string& member);

/// Words of a choice, or texts.
inline void read_into(Elaboration& elaboration, const StatedProperty& stated,
                      std::vector<std::string>& member) {
  member = stated.row().type == ValueType::text_list
               ? elaboration.read.texts(stated.value(), stated.row(), stated.owner)
               : elaboration.read.words(stated.value());
}

template <NamedWord Word>
void read_into(Elaboration& elaboration, const StatedProperty& stated, Word& member) {
  member = read_choice<Word>(elaboration, stated.property, stated.owner);
}

/// `yes` that has no other word: to state it is to say it.
inline void read_into(Elaboration&, const StatedProperty&, bool& member) {
  member = true;
}

/// Members that need more than the words of their property: the side, other properties, what is declared
/// elsewhere. Who elaborates the kind reads them. A member of a type that is neither here nor read above
/// does not compile.
template <class Member>
inline constexpr bool read_by_hand =
    std::is_same_v<Member, End> || std::is_same_v<Member, std::optional<Screw>> ||
    std::is_same_v<Member, Construction> || std::is_same_v<Member, NamedSize> ||
    std::is_same_v<Member, Sourced<Length>> || std::is_same_v<Member, MaterialId> ||
    std::is_same_v<Member, PointId> || std::is_same_v<Member, Side> || std::is_same_v<Member, Vector3> ||
    std::is_same_v<Member, std::array<std::array<double, 3>, 3>> ||
    std::is_same_v<Member, std::vector<PathStop>> || std::is_same_v<Member, std::vector<PartId>>;

template <class Object, std::size_t number>
void read_field(Elaboration& elaboration, const ResolvedDeclaration& declaration, const std::string& owner,
                Object& object) {
  constexpr auto field = std::get<number>(fields_of(static_cast<const Object*>(nullptr)));
  using Member = std::remove_reference_t<decltype(object.*field.member)>;
  if constexpr (!field.property.empty() && !read_by_hand<Member>)
    if (const ResolvedProperty* property = declaration.find(field.property))
      read_into(elaboration, StatedProperty{*property, owner}, object.*field.member);
}

/// Reads every property that has a field in `object` into it, in the order of its fields. `owner` is the
/// thing for messages: "long-bury".
template <HasFields Object>
void read_fields(Elaboration& elaboration, const ResolvedDeclaration& declaration, const std::string& owner,
                 Object& object) {
  constexpr std::size_t count = std::tuple_size_v<decltype(fields_of(static_cast<const Object*>(nullptr)))>;
  [&]<std::size_t... numbers>(std::index_sequence<numbers...>) {
    (read_field<Object, numbers>(elaboration, declaration, owner, object), ...);
  }
  (std::make_index_sequence<count>{});
}

/// The words of the language that become fields of these types.
template <HasFields... Types>
std::vector<std::string_view> properties_with_fields() {
  std::vector<std::string_view> result;
  const auto collect = [&]<class Type>(const Type*) {
    std::apply([&](const auto&... fields) { (result.push_back(fields.property), ...); },
               fields_of(static_cast<const Type*>(nullptr)));
  };
  (collect(static_cast<const Types*>(nullptr)), ...);
  return result;
}

/// What is stated and has no field in any of these types: kept as written. `owner` is as above.
template <HasFields... Types>
std::vector<Particular> particulars_beside(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                                           const std::string& owner) {
  static const std::vector<std::string_view> fields = properties_with_fields<Types...>();
  return elaboration.particulars(declaration, fields, owner);
}

} // namespace sheerpole
