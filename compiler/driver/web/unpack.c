/* LZMA in its "alone" form (5 bytes of properties, 8 of the size, the stream) to bytes, as WebAssembly that asks for nothing: a page
 * carries its compiler packed so, since it is a quarter smaller than what browsers can unpack by themselves. */
#include "LzmaDec.h"

enum { head = 13, of_properties = 5 };

static unsigned char probabilities[64 * 1024]; /* of literals with few context bits, as xz packs */

static void* take(ISzAllocPtr which, size_t size) {
  (void)which;
  return size <= sizeof probabilities ? probabilities : 0;
}
static void give(ISzAllocPtr which, void* taken) {
  (void)which;
  (void)taken;
}

/* How many bytes came out at `to`, which has room for `room`; 0: what stands at `from` is no such thing. */
size_t unpack(unsigned char* to, size_t room, const unsigned char* from, size_t length) {
  const ISzAlloc memory = {take, give};
  ELzmaStatus status;
  SizeT out = room;
  SizeT in = length - head;
  if (length < head || LzmaDecode(to, &out, from + head, &in, from, of_properties, LZMA_FINISH_ANY, &status, &memory) != SZ_OK)
    return 0;
  return out;
}
