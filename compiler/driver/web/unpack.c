/* LZMA in its "alone" form (5 bytes of properties, 8 of the size, the stream) to bytes, as WebAssembly that asks for nothing: a page
 * carries its compiler packed so, since it is a quarter smaller than what browsers can unpack by themselves. It is unpacked piece by
 * piece, so that a browser compiles the first while the next comes out. */
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

static CLzmaDec decoder;
static const unsigned char* next;
static const unsigned char* end;

/* Begins with what stands at `from`; it comes out at `to`, which has room for all of it. 0: it is no such thing. */
int unpack_begin(unsigned char* to, size_t room, const unsigned char* from, size_t length) {
  const ISzAlloc memory = {take, give};
  LzmaDec_Construct(&decoder);
  if (length < head || LzmaDec_AllocateProbs(&decoder, from, of_properties, &memory) != SZ_OK)
    return 0;
  decoder.dic = to;
  decoder.dicBufSize = room;
  LzmaDec_Init(&decoder);
  next = from + head;
  end = from + length;
  return 1;
}

/* Unpacks until so many bytes have come out in all. How many have: fewer, and what is packed is damaged. */
size_t unpack_until(size_t wanted) {
  ELzmaStatus status;
  SizeT in = (SizeT)(end - next);
  if (LzmaDec_DecodeToDic(&decoder, wanted, next, &in, LZMA_FINISH_ANY, &status) != SZ_OK)
    return 0;
  next += in;
  return decoder.dicPos;
}
