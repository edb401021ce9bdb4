// Loaded before the C library (LD_PRELOAD): the n-th call of one kind fails, as on a full or broken disk.
//   FAIL_CALL    open, write, rename, link, close, fsync or malloc
//   FAIL_NTH     1 for the first one
//   FAIL_ON      `stays`: all that follow fail too
//   FAIL_REPORT  file that receives how many calls of this kind there were
#include <atomic>
#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace {

std::atomic<long> calls{0};

struct Wanted {
  const char* call = std::getenv("FAIL_CALL");
  long nth = std::getenv("FAIL_NTH") != nullptr ? std::atol(std::getenv("FAIL_NTH")) : 0;
  bool stays = std::getenv("FAIL_ON") != nullptr;
};

const Wanted& wanted() {
  static const Wanted value;
  return value;
}

/// Whether this call is the one.
bool fails(const char* call) {
  const Wanted& want = wanted();
  if (want.call == nullptr || std::strcmp(want.call, call) != 0)
    return false;
  const long number = ++calls;
  return number == want.nth || (want.stays && number > want.nth);
}

struct Report {
  ~Report() {
    const char* path = std::getenv("FAIL_REPORT");
    if (path == nullptr)
      return;
    char text[32];
    const int length = std::snprintf(text, sizeof text, "%ld\n", calls.load());
    const long file = syscall(SYS_openat, AT_FDCWD, path, O_WRONLY | O_CREAT | O_TRUNC, 0666);
    if (file >= 0 && length > 0)
      syscall(SYS_write, file, text, length);
  }
};
const Report report;

} // namespace

extern "C" {

ssize_t write(int file, const void* bytes, size_t size) {
  if (fails("write")) {
    errno = ENOSPC;
    return -1;
  }
  return syscall(SYS_write, file, bytes, size);
}

int open(const char* path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
  va_end(rest);
  if (fails("open")) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(syscall(SYS_openat, AT_FDCWD, path, flags, mode));
}

int openat(int folder, const char* path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
  va_end(rest);
  if (fails("open")) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(syscall(SYS_openat, folder, path, flags, mode));
}

int rename(const char* from, const char* to) {
  if (fails("rename")) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(syscall(SYS_renameat, AT_FDCWD, from, AT_FDCWD, to));
}

int renameat(int from_folder, const char* from, int to_folder, const char* to) {
  if (fails("rename")) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(syscall(SYS_renameat, from_folder, from, to_folder, to));
}

int linkat(int from_folder, const char* from, int to_folder, const char* to, int flags) {
  if (fails("link")) {
    errno = EPERM; // as on a disk that has no second names
    return -1;
  }
  return static_cast<int>(syscall(SYS_linkat, from_folder, from, to_folder, to, flags));
}

int close(int file) {
  const bool failing = fails("close");
  const long result = syscall(SYS_close, file);
  if (failing) {
    errno = ENOSPC;
    return -1;
  }
  return static_cast<int>(result);
}

int fsync(int file) {
  if (fails("fsync")) {
    errno = EIO;
    return -1;
  }
  return static_cast<int>(syscall(SYS_fsync, file));
}

#ifndef FAIL_WITHOUT_MALLOC // a sanitizer has an allocator of its own
extern void* __libc_malloc(size_t size);

void* malloc(size_t size) {
  if (fails("malloc")) {
    errno = ENOMEM;
    return nullptr;
  }
  return __libc_malloc(size);
}
#endif
}
