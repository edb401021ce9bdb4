#include "plugins/order-list/order_list.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/html_pages.hpp"
#include "backend/page/page_flow.hpp"
#include "plugins/order-list/order_items.hpp"
#include "plugins/order-list/order_pages.hpp"

#include <utility>

namespace sheerpole {

namespace {

std::string stays_text(const OrderItem& item) {
  std::string text;
  for (const auto& [stay, amount] : item.stays)
    text += (text.empty() ? "" : "; ") + stay + " " + amount_text(item, amount);
  return text;
}

std::string notes_text(const OrderItem& item) {
  std::string text;
  for (const std::string& note : item.notes)
    text += (text.empty() ? "" : "; ") + note;
  return text;
}

Table table_of(const std::vector<OrderItem>& items) {
  Table table{.title = "Order list",
              .columns = {{"group"},
                          {"item"},
                          {"what"},
                          {"size"},
                          {"needed", true},
                          {"in hand", true},
                          {"to order", true},
                          {"stays"},
                          {"note"}},
              .rows = {},
              .notes = {}};
  for (const OrderItem& item : items)
    table.rows.push_back({item.group, item.name, item.what, item.size, amount_text(item, item.needed),
                          amount_text(item, item.in_hand), amount_text(item, item.to_order()),
                          stays_text(item), notes_text(item)});
  return table;
}

} // namespace

BackendDescription OrderList::describe() const {
  return {.name = "order-list",
          .summary = "what is to be bought: lines, hardware and small parts, less what is in hand",
          .outputs = {"order-list.html", "order-list.csv"},
          .papers = {"order-list.pdf"}};
}

OutputBundle OrderList::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  const std::vector<OrderItem> items = order_items(request.checked);
  std::vector<Drawing> pages = order_pages(request.checked, items, boat, request.paper);
  OutputBundle bundle;
  bundle.files.push_back({"order-list.html", html_of_pages("Order list of " + boat, pages)});
  bundle.files.push_back({"order-list.csv", render_csv(table_of(items))});
  bundle.papers.push_back({"order-list.pdf", "Order list of " + boat, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
