// Memory of the program as it is released: blocks of up to half a kilobyte come from free lists of their
// size, one for each thread. A boat is made of many small things that are let go together, and the C
// library, which sorts and joins what it is given back, took a sixth of all instructions for them. What is
// larger, and every other program, has the memory of the C library.

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <mutex>
#include <new>

namespace {

constexpr std::size_t step = 16; // sizes go by it, and every block is so aligned
constexpr std::size_t largest = 512;
constexpr std::size_t sizes = largest / step + 1;
constexpr std::size_t page_bits = 14; // all blocks of a page have one size
constexpr std::size_t chunk_bits = 20;
constexpr std::size_t page_bytes = std::size_t{1} << page_bits;
constexpr std::size_t chunk_bytes = std::size_t{1} << chunk_bits;
constexpr std::size_t pages = chunk_bytes / page_bytes;

struct FreeBlock {
  FreeBlock* next;
};

/// A piece of memory that begins at a multiple of its size; the first of its pages is this.
struct Chunk {
  std::array<std::uint8_t, pages> size_of_page;
};

/// What one thread has, by size.
struct Lists {
  std::array<FreeBlock*, sizes> free;
  std::array<char*, sizes> fresh; ///< the part of its newest page that was never given out
  std::array<char*, sizes> end;
  Lists* next; ///< of those that no thread has
};

// Which addresses lie in a chunk of ours: one bit for each chunk that there could be. Of the 16 MB nearly
// all is never touched, and so is no memory.
constexpr std::size_t address_bits = 47;
constinit std::array<std::atomic<std::uint8_t>, (std::size_t{1} << (address_bits - chunk_bits)) / 8> ours{};

constinit std::mutex common; // of what follows
constinit Chunk* newest = nullptr;
constinit std::size_t pages_used = pages;
constinit Lists* idle = nullptr;

constinit thread_local Lists* mine = nullptr;
constinit thread_local bool ended = false;

/// Hands the lists of a thread that ends to the next one.
struct Return {
  bool armed = false;
  ~Return() {
    ended = true;
    if (mine == nullptr)
      return;
    const std::lock_guard lock(common);
    mine->next = idle;
    idle = mine;
    mine = nullptr;
  }
};
thread_local Return at_the_end;

std::size_t place_of(std::size_t bytes) {
  return (bytes + step - 1) / step;
}

std::size_t bytes_of(std::size_t place) {
  return place == 0 ? step : place * step;
}

Chunk* chunk_of(void* block) {
  return reinterpret_cast<Chunk*>(reinterpret_cast<std::uintptr_t>(block) & ~(chunk_bytes - 1));
}

bool is_ours(void* block) {
  const std::uintptr_t chunk = reinterpret_cast<std::uintptr_t>(block) >> chunk_bits;
  return chunk >> (address_bits - chunk_bits) == 0 &&
         (ours[chunk >> 3U].load(std::memory_order_relaxed) >> (chunk & 7U) & 1U) != 0;
}

/// Under `common`. Null when there is no more memory.
char* new_page(std::size_t place) {
  if (pages_used == pages) {
    void* const memory = std::aligned_alloc(chunk_bytes, chunk_bytes);
    if (memory == nullptr)
      return nullptr;
    const std::uintptr_t chunk = reinterpret_cast<std::uintptr_t>(memory) >> chunk_bits;
    if (chunk >> (address_bits - chunk_bits) != 0) // nowhere that Linux puts things unasked
      return nullptr;
    ours[chunk >> 3U].fetch_or(static_cast<std::uint8_t>(1U << (chunk & 7U)), std::memory_order_relaxed);
    newest = static_cast<Chunk*>(memory);
    pages_used = 1;
  }
  newest->size_of_page[pages_used] = static_cast<std::uint8_t>(place);
  return reinterpret_cast<char*>(newest) + page_bytes * pages_used++;
}

/// Null when there is no more memory.
void* take(Lists& lists, std::size_t place) {
  if (FreeBlock* const block = lists.free[place]) {
    lists.free[place] = block->next;
    return block;
  }
  const std::size_t bytes = bytes_of(place);
  if (static_cast<std::size_t>(lists.end[place] - lists.fresh[place]) < bytes) {
    const std::lock_guard lock(common);
    char* const page = new_page(place);
    if (page == nullptr)
      return nullptr;
    lists.fresh[place] = page;
    lists.end[place] = page + page_bytes;
  }
  char* const block = lists.fresh[place];
  lists.fresh[place] += bytes;
  return block;
}

void put(Lists& lists, std::size_t place, void* block) {
  auto* const freed = static_cast<FreeBlock*>(block);
  freed->next = lists.free[place];
  lists.free[place] = freed;
}

/// Lists for a thread: those of one that has ended, or new ones. Null when there is no more memory.
Lists* find_lists() {
  const std::lock_guard lock(common);
  if (idle == nullptr)
    return static_cast<Lists*>(std::calloc(1, sizeof(Lists)));
  Lists* const found = idle;
  idle = found->next;
  return found;
}

/// The first time in a thread, and behind its end, when things are let go that outlive it: then the lists
/// are lent for this once.
template <class Work>
void* with_lists(const Work& work) {
  Lists* const lists = find_lists();
  if (lists == nullptr)
    return nullptr;
  if (!ended) {
    at_the_end.armed = true; // it is made now, and ends with the thread
    mine = lists;
    return work(*lists);
  }
  void* const result = work(*lists);
  const std::lock_guard lock(common);
  lists->next = idle;
  idle = lists;
  return result;
}

/// As operator new does: asks the handler for memory until there is some or the handler throws.
template <class Ask>
void* until_there_is_some(const Ask& ask) {
  for (;;) {
    if (void* const block = ask())
      return block;
    const std::new_handler handler = std::get_new_handler();
    if (handler == nullptr)
      throw std::bad_alloc();
    handler();
  }
}

[[gnu::noinline]] void* new_block(std::size_t bytes) {
  return until_there_is_some([bytes]() -> void* {
    if (bytes > largest)
      return std::malloc(bytes);
    const auto work = [bytes](Lists& lists) { return take(lists, place_of(bytes)); };
    return mine != nullptr ? work(*mine) : with_lists(work);
  });
}

void give_back(void* block, std::size_t place) {
  if (mine != nullptr)
    put(*mine, place, block);
  else
    with_lists([&](Lists& lists) {
      put(lists, place, block);
      return static_cast<void*>(nullptr);
    });
}

} // namespace

void* operator new(std::size_t bytes) {
  if (bytes <= largest && mine != nullptr) {
    const std::size_t place = place_of(bytes);
    if (FreeBlock* const block = mine->free[place]) {
      mine->free[place] = block->next;
      return block;
    }
  }
  return new_block(bytes);
}

void operator delete(void* block) noexcept {
  if (block == nullptr)
    return;
  if (is_ours(block)) {
    const std::uintptr_t in_chunk = reinterpret_cast<std::uintptr_t>(block) & (chunk_bytes - 1);
    give_back(block, chunk_of(block)->size_of_page[in_chunk >> page_bits]);
  } else {
    std::free(block);
  }
}

void operator delete(void* block, std::size_t bytes) noexcept {
  if (block == nullptr)
    return;
  if (bytes <= largest)
    give_back(block, place_of(bytes));
  else
    std::free(block);
}
