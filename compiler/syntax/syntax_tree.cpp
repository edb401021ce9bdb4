#include "syntax/syntax_tree.hpp"

#include <fmt/format.h>

#include <string_view>

namespace sheerpole {

namespace {

constexpr std::string_view shape_name(ValueShape shape) {
  switch (shape) {
  case ValueShape::single:
    return "value";
  case ValueShape::list:
    return "list";
  case ValueShape::path:
    return "path";
  }
  return "value";
}

constexpr std::string_view kind_name(ExpressionKind kind) {
  switch (kind) {
  case ExpressionKind::number:
    return "number";
  case ExpressionKind::length:
    return "length";
  case ExpressionKind::date:
    return "date";
  case ExpressionKind::text:
    return "text";
  case ExpressionKind::name:
    return "name";
  case ExpressionKind::negate:
    return "negate";
  case ExpressionKind::add:
    return "add";
  case ExpressionKind::subtract:
    return "subtract";
  case ExpressionKind::multiply:
    return "multiply";
  case ExpressionKind::divide:
    return "divide";
  case ExpressionKind::vector:
    return "vector";
  case ExpressionKind::construct:
    return "construct";
  case ExpressionKind::error:
    return "error";
  }
  return "error";
}

std::string quoted(std::string_view text) {
  std::string result = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\')
      result += '\\';
    result += c;
  }
  result += '"';
  return result;
}

class TreePrinter {
public:
  std::string print(const SyntaxTree& tree) {
    for (const Statement& statement : tree.statements)
      std::visit([this](const auto& each) { node(each); }, statement);
    return std::move(out_);
  }

private:
  /// One line, and what belongs below it one step to the right.
  template <class Below>
  void line(const std::string& text, Below below) {
    out_.append(depth_ * 2, ' ');
    out_ += text;
    out_ += '\n';
    ++depth_;
    below();
    --depth_;
  }
  void line(const std::string& text) {
    line(text, [] {});
  }

  static std::string reference(const std::string& name, const Name& side) {
    return side.missing() ? name : fmt::format("{}.{}", name, side.text);
  }
  static std::string titled(std::string head, const std::optional<Text>& title) {
    return title ? fmt::format("{} {}", head, quoted(title->text)) : head;
  }

  void node(const LanguageLine& each) { line(fmt::format("language {}", each.version)); }
  void node(const Use& each) { line(fmt::format("use {}", quoted(each.path.text))); }
  void node(const Let& each) {
    line(fmt::format("let {}", each.name.text), [&] { node(each.value); });
  }
  void node(const Expect& each) {
    std::string head = fmt::format("expect {}", reference(each.stay.text, each.side));
    if (!each.quantity.missing())
      head += fmt::format(".{}", each.quantity.text);
    line(head, [&] { node(each.value); });
  }
  void node(const ErrorEntry&) { line("unreadable"); }
  void node(const Declaration& each) {
    std::string head = fmt::format("declaration {}", each.kind.text);
    if (!each.name.missing())
      head += fmt::format(" {}", reference(each.name.text, each.side));
    head = titled(std::move(head), each.title);
    if (!each.from.missing())
      head += fmt::format(" from {}", each.from.text);
    if (!each.of.missing())
      head += fmt::format(" of {}", reference(each.of.text, each.of_side));
    if (!each.on.missing())
      head += fmt::format(" on {}", each.on.text);
    line(head, [&] {
      for (const Entry& entry : each.block.entries)
        std::visit([this](const auto& inner) { node(inner); }, entry);
    });
  }
  void node(const Property& each) {
    line(titled(fmt::format("property {}", reference(each.name.text, each.side)), each.title),
         [&] { node(each.value); });
  }
  void node(const Item& each) {
    const std::string count = each.count ? fmt::format("{} x ", each.count->text) : std::string();
    line(fmt::format("item {}{}", count, each.name.text), [&] { settings(each.settings); });
  }
  void settings(const std::vector<Setting>& all) {
    for (const Setting& each : all)
      line(fmt::format("setting {}", each.name.text), [&] { node(each.value); });
  }

  void node(const Value& value) {
    std::string head(shape_name(value.shape));
    if (value.mirrored)
      head += " mirrored";
    if (value.source) {
      head += fmt::format(" {}", value.source->word);
      if (value.source->note)
        head += fmt::format(" {}", quoted(value.source->note->text));
    }
    line(head, [&] {
      for (const Stop& stop : value.stops)
        node(stop.expression,
             stop.passage.missing() ? std::string() : fmt::format(" {}", stop.passage.text));
      if (value.tolerance)
        line("tolerance", [&] { node(value.tolerance->amount); });
    });
  }

  void node(const Expression& each, const std::string& tail = {}) {
    std::string head(kind_name(each.kind));
    if (each.kind == ExpressionKind::text)
      head += fmt::format(" {}", quoted(each.text));
    else if (!each.text.empty())
      head += fmt::format(" {}", reference(each.text, each.side));
    if (!each.unit.missing())
      head += fmt::format(" in {}", each.unit.text);
    line(head + tail, [&] {
      for (const Expression& operand : each.operands)
        node(operand);
      settings(each.settings);
    });
  }

  std::string out_;
  std::size_t depth_ = 0;
};

} // namespace

std::string print_tree(const SyntaxTree& tree) {
  return TreePrinter().print(tree);
}

} // namespace sheerpole
