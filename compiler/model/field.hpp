#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>

namespace sheerpole {

/// What a property of the model is for, which decides who meets it.
enum class FieldRole : std::uint8_t {
  identity,  ///< what the thing is: its name, kind, side, what it is of, where it stands in the file
  geometry,  ///< moves a length, or may
  evidence,  ///< says how good a number or a part is: a grade, a strength, who, when; checks look at it
  for_record ///< is read by people alone
};

/// One member of a type of the model. `property` is the word of the language that states it; empty where
/// the language has none, since it follows from where the thing stands.
template <class Owner, class Member>
struct Field {
  std::string_view name; ///< of the member; JSON has it as its key
  std::string_view property;
  Member Owner::*member;
  FieldRole role;
};

template <class Owner, class Member>
constexpr Field<Owner, Member> field(std::string_view name, std::string_view property,
                                     Member Owner::*member, FieldRole role) {
  return {name, property, member, role};
}

/// A type of the model with its members typed once: next to the type stands
/// `constexpr auto fields_of(const Type*)`, a tuple of its fields in the order in which they are printed.
template <class Type>
concept HasFields = requires {
  fields_of(static_cast<const Type*>(nullptr));
};

namespace fields_detail {

struct Anything {
  template <class Member>
  operator Member() const; // never defined: only asked whether it would do
};

template <class Type, std::size_t... numbers>
consteval bool takes(std::index_sequence<numbers...>) {
  return requires {
    Type{(static_cast<void>(numbers), Anything{})...};
  };
}

template <class Type, std::size_t count = 1>
consteval std::size_t member_count() {
  if constexpr (takes<Type>(std::make_index_sequence<count>{}) &&
                !takes<Type>(std::make_index_sequence<count + 1>{}))
    return count;
  else
    return member_count<Type, count + 1>();
}

} // namespace fields_detail

/// Whether the fields of a type are all of its members and no member stands twice. Each type asserts it, so
/// that a member that is added and not listed does not compile.
template <class Type>
consteval bool all_members_are_listed() {
  using Fields = decltype(fields_of(static_cast<const Type*>(nullptr)));
  constexpr std::size_t listed = std::tuple_size_v<Fields>;
  if (listed != fields_detail::member_count<Type>())
    return false;
  std::string_view names[listed];
  std::size_t at = 0;
  std::apply([&](const auto&... fields) { ((names[at++] = fields.name), ...); },
             fields_of(static_cast<const Type*>(nullptr)));
  for (std::size_t i = 0; i < listed; ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (names[i] == names[j])
        return false;
  return true;
}

/// Calls visitor(field, member) for each member of the object, in the order of its table. The object may be
/// const.
template <class Object, class Visitor>
constexpr void visit_fields(Object& object, Visitor&& visitor) {
  std::apply([&](const auto&... fields) { (visitor(fields, object.*fields.member), ...); },
             fields_of(static_cast<const std::remove_const_t<Object>*>(nullptr)));
}

} // namespace sheerpole
