#include "driver/process/run_program.hpp"

#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <mutex>
#include <system_error>

namespace sheerpole {

namespace {

using Clock = std::chrono::steady_clock;

/// How many milliseconds to wait at most before looking whether the program has ended: its output may stay
/// open when it has, and be closed long before.
constexpr int look_again = 10;
constexpr int look_again_when_closed = 1;
/// How long whoever watches may take to end all that a program has started.
constexpr std::chrono::seconds longest_ending{5};

struct Pipe {
  FileDescriptor read;
  FileDescriptor write;

  bool open() {
    int ends[2];
    if (pipe2(ends, O_CLOEXEC) != 0)
      return false;
    read = clear_of_streams(ends[0]);
    write = clear_of_streams(ends[1]);
    return read.is_open() && write.is_open();
  }

private:
  /// Ours may have been started without one of the three streams; its number is not for a pipe.
  static FileDescriptor clear_of_streams(int number) {
    FileDescriptor end(number);
    return number > STDERR_FILENO ? std::move(end)
                                  : FileDescriptor(fcntl(number, F_DUPFD_CLOEXEC, STDERR_FILENO + 1));
  }
};

/// A program that ends before it has read everything is told by its end, not by a signal to us. The signal
/// goes to the thread that writes, so it is held back in this one alone: others may talk to programs of
/// their own.
class WithoutPipeSignal {
public:
  WithoutPipeSignal() {
    sigemptyset(&pipe_);
    sigaddset(&pipe_, SIGPIPE);
    pthread_sigmask(SIG_BLOCK, &pipe_, &before_);
  }
  WithoutPipeSignal(const WithoutPipeSignal&) = delete;
  WithoutPipeSignal& operator=(const WithoutPipeSignal&) = delete;
  ~WithoutPipeSignal() {
    if (sigismember(&before_, SIGPIPE) == 0) {
      const timespec at_once{};
      while (sigtimedwait(&pipe_, nullptr, &at_once) < 0 && errno == EINTR) {
      }
    }
    pthread_sigmask(SIG_SETMASK, &before_, nullptr);
  }

private:
  sigset_t pipe_{};
  sigset_t before_{};
};

std::vector<char*> pointers(std::vector<std::string>& words) {
  std::vector<char*> result;
  result.reserve(words.size() + 1);
  for (std::string& word : words)
    result.push_back(word.data());
  result.push_back(nullptr);
  return result;
}

void limit(decltype(RLIMIT_CORE) resource, std::uint64_t most) {
  const rlimit both{most, most};
  setrlimit(resource, &both); // one that is stricter already stays
}

/// A signal that asks us to end, and came while there was something to be cleared away; 0: none.
volatile std::sig_atomic_t asked_to_end = 0;

/// Keeps the program's own children from outliving it: a process between it and us to which all of them
/// come back when their parents end, whatever session they are in (PR_SET_CHILD_SUBREAPER). It lives until
/// none of them does, and takes the end of the program for its own. Calls of the system only.
class Watch {
public:
  [[noreturn]] static void over(pid_t program) {
    prctl(PR_SET_PDEATHSIG, SIGTERM); // told by us to stop, or by our end
    if (getppid() == 1)
      stop(0);
    close_range(0, ~0U, 0); // the pipes are the program's
    watched_ = program;
    int status = 0;
    while (waitpid(program, &status, 0) < 0 && errno == EINTR) {
    }
    end_all();
    if (!WIFSIGNALED(status))
      _exit(WEXITSTATUS(status));
    signal(WTERMSIG(status), SIG_DFL);
    kill(getpid(), WTERMSIG(status));
    _exit(127);
  }

  /// To be called before the program is started: it must never be that none watches.
  static bool begin() {
    const rlimit none{};
    struct sigaction on_stop {};
    on_stop.sa_handler = stop;
    return setpgid(0, 0) == 0 && setrlimit(RLIMIT_CORE, &none) == 0 &&
           sigaction(SIGTERM, &on_stop, nullptr) == 0 && prctl(PR_SET_CHILD_SUBREAPER, 1) == 0;
  }

private:
  static inline pid_t watched_ = 0;

  static void stop(int) {
    end_all();
    _exit(127);
  }

  /// Ends every child, and the children that come to us by that, until there is none.
  static void end_all() {
    for (;;) {
      kill_children();
      const pid_t ended = waitpid(-1, nullptr, 0);
      if (ended < 0 && errno == ECHILD)
        return;
    }
  }

  static void kill_children() {
    const int file = open("/proc/thread-self/children", O_RDONLY | O_CLOEXEC);
    if (file < 0) { // a system that does not tell them; its group is what can be reached
      kill(-watched_, SIGKILL);
      return;
    }
    char buffer[4096];
    pid_t number = 0;
    for (ssize_t got = 0; (got = read(file, buffer, sizeof buffer)) > 0;)
      for (ssize_t i = 0; i < got; ++i) {
        if (buffer[i] >= '0' && buffer[i] <= '9') {
          number = number * 10 + (buffer[i] - '0');
        } else if (number > 0) {
          kill(number, SIGKILL);
          number = 0;
        }
      }
    close(file);
  }
};

/// What the child does before it becomes the program: calls of the system only, none that takes memory.
struct Child {
  const ProgramStart& start;
  char* const* arguments;
  char* const* environment;
  int input;
  int output;
  int errors;
  int failure; ///< the error number goes here when the program can not be started

  [[noreturn]] void become() const {
    const bool ready = (!start.limits || (watched() && confine())) && dup2(input, STDIN_FILENO) >= 0 &&
                       dup2(output, STDOUT_FILENO) >= 0 && dup2(errors, STDERR_FILENO) >= 0 &&
                       (start.folder.empty() || chdir(start.folder.c_str()) == 0);
    if (ready)
      execve(start.path.c_str(), arguments, environment);
    const int reason = errno;
    const ssize_t told = write(failure, &reason, sizeof reason);
    _exit(told > 0 ? 127 : 126);
  }

  /// Goes on in a child of its own; this process watches over it.
  static bool watched() {
    if (!Watch::begin())
      return false;
    const pid_t number = fork();
    if (number > 0)
      Watch::over(number);
    signal(SIGTERM, SIG_DFL);
    return number == 0;
  }

  bool confine() const {
    if (setpgid(0, 0) != 0)
      return false;
    prctl(PR_SET_PDEATHSIG, SIGKILL); // it has nobody to answer when we are gone
    const ProgramLimits& most = *start.limits;
    limit(RLIMIT_CORE, 0);
    limit(RLIMIT_CPU, static_cast<std::uint64_t>(most.processor_time.count()));
    limit(RLIMIT_FSIZE, most.file_bytes);
    limit(RLIMIT_NOFILE, most.open_files);
#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
    // A program under a sanitizer maps terabytes that it never uses.
    limit(RLIMIT_DATA, most.memory_bytes);
#endif
    // What we have open beyond the three streams is none of its business.
    close_range(STDERR_FILENO + 1, ~0U, CLOSE_RANGE_CLOEXEC);
    return true;
  }
};

/// The signals as a shell would hand them on: none ignored by us, none blocked.
void usual_signals() {
  signal(SIGPIPE, SIG_DFL);
  sigset_t none;
  sigemptyset(&none);
  sigprocmask(SIG_SETMASK, &none, nullptr);
}

/// One run, from the first byte written to the end of the program.
class Conversation {
public:
  Conversation(pid_t child, const std::optional<ProgramLimits>& limits, std::string_view input,
               FileDescriptor to, FileDescriptor from, FileDescriptor errors)
      : child_(child), limits_(limits), input_(input), to_(std::move(to)), from_(std::move(from)),
        errors_(std::move(errors)), begun_(Clock::now()) {
    for (const FileDescriptor* each : {&to_, &from_, &errors_})
      fcntl(each->number(), F_SETFL, fcntl(each->number(), F_GETFL) | O_NONBLOCK);
  }

  ProgramEnd hold() {
    std::optional<ProgramEnd::How> stopped;
    while (!stopped && !has_ended()) {
      wait_for_news();
      stopped = exchange();
      if (!stopped && limits_ && (asked_to_end != 0 || Clock::now() - begun_ >= limits_->time))
        stopped = ProgramEnd::How::late;
    }
    if (limits_)
      end_watched();
    // What it wrote last is still in the pipes.
    if (const auto too_much = exchange(); too_much && !stopped)
      stopped = too_much;
    int status = 0;
    while (waitpid(child_, &status, 0) < 0 && errno == EINTR) {
    }
    end_.how = WIFSIGNALED(status) ? ProgramEnd::How::by_signal : ProgramEnd::How::exited;
    end_.code = WIFSIGNALED(status) ? WTERMSIG(status) : WEXITSTATUS(status);
    if (stopped)
      end_.how = *stopped;
    else if (end_.how == ProgramEnd::How::by_signal && end_.code == SIGXCPU)
      end_.how = ProgramEnd::How::late;
    return std::move(end_);
  }

private:
  /// Ends the program and all that it has started. Who watches over it does so when told, but a program may
  /// have stopped that one.
  void end_watched() const {
    kill(child_, SIGTERM);
    kill(child_, SIGCONT);
    for (const auto told = Clock::now(); !has_ended() && Clock::now() - told < longest_ending;)
      poll(nullptr, 0, look_again_when_closed);
    kill(-child_, SIGKILL);
  }

  /// Whether the program has ended; its number stays taken until we ask for its status.
  bool has_ended() const {
    siginfo_t found{};
    while (waitid(P_PID, static_cast<id_t>(child_), &found, WEXITED | WNOHANG | WNOWAIT) < 0 &&
           errno == EINTR) {
    }
    return found.si_pid == child_;
  }

  void wait_for_news() const {
    std::array<pollfd, 3> watched{};
    nfds_t count = 0;
    if (to_.is_open())
      watched[count++] = {to_.number(), POLLOUT, 0};
    for (const FileDescriptor* each : {&from_, &errors_})
      if (each->is_open())
        watched[count++] = {each->number(), POLLIN, 0};
    poll(watched.data(), count, from_.is_open() || errors_.is_open() ? look_again : look_again_when_closed);
  }

  /// Writes and reads what can be written and read now.
  std::optional<ProgramEnd::How> exchange() {
    if (to_.is_open())
      put();
    if (errors_.is_open()) {
      get(errors_, end_.errors, std::string::npos);
      if (end_.errors.size() > kept_error_bytes) // the last words say most
        end_.errors.erase(0, end_.errors.size() - kept_error_bytes);
    }
    if (from_.is_open()) {
      const std::size_t most = limits_ ? limits_->output_bytes : std::string::npos;
      if (!get(from_, end_.output, most))
        return ProgramEnd::How::too_much_output;
    }
    return std::nullopt;
  }

  void put() {
    while (!input_.empty()) {
      const ssize_t written = write(to_.number(), input_.data(), input_.size());
      if (written > 0)
        input_.remove_prefix(static_cast<std::size_t>(written));
      else if (errno == EAGAIN)
        return;
      else if (errno != EINTR)
        input_ = {}; // it reads no more
    }
    to_.shut();
  }

  /// Reads what is there. Keeps at most `most` bytes in all and drops the rest; false when it dropped some.
  static bool get(FileDescriptor& from, std::string& kept, std::size_t most) {
    std::array<char, 65536> buffer;
    bool all_kept = true;
    // A program that never stops writing must not keep us from looking at the clock.
    for (int turn = 0; turn < 64; ++turn) {
      const ssize_t got = read(from.number(), buffer.data(), buffer.size());
      if (got < 0 && errno == EINTR)
        continue;
      if (got < 0 && errno == EAGAIN)
        break;
      if (got <= 0) {
        from.shut();
        break;
      }
      const auto size = static_cast<std::size_t>(got);
      const std::size_t room = most - std::min(most, kept.size());
      kept.append(buffer.data(), std::min(size, room));
      all_kept = all_kept && size <= room;
    }
    return all_kept;
  }

  pid_t child_;
  const std::optional<ProgramLimits>& limits_;
  std::string_view input_;
  FileDescriptor to_;
  FileDescriptor from_;
  FileDescriptor errors_;
  Clock::time_point begun_;
  ProgramEnd end_;
};

ProgramEnd not_started(int reason) {
  ProgramEnd end;
  end.code = reason;
  return end;
}

} // namespace

ProgramEnd run_program(const ProgramStart& start, std::string_view input) {
  Pipe in;
  Pipe out;
  Pipe errors;
  Pipe failure;
  if (!in.open() || !out.open() || !errors.open() || !failure.open())
    return not_started(errno);
  std::vector<std::string> words{start.path};
  words.insert(words.end(), start.arguments.begin(), start.arguments.end());
  const std::vector<char*> arguments = pointers(words);
  std::vector<std::string> settings = start.environment.value_or(std::vector<std::string>());
  const std::vector<char*> own = pointers(settings);
  const Child child{.start = start,
                    .arguments = arguments.data(),
                    .environment = start.environment ? own.data() : environ,
                    .input = in.read.number(),
                    .output = out.write.number(),
                    .errors = errors.write.number(),
                    .failure = failure.write.number()};
  const pid_t number = fork();
  if (number < 0)
    return not_started(errno);
  if (number == 0) {
    usual_signals();
    child.become();
  }
  for (FileDescriptor* theirs : {&in.read, &out.write, &errors.write, &failure.write})
    theirs->shut();
  int reason = 0;
  ssize_t told = 0;
  do
    told = read(failure.read.number(), &reason, sizeof reason);
  while (told < 0 && errno == EINTR);
  if (told == sizeof reason) {
    waitpid(number, nullptr, 0);
    return not_started(reason);
  }
  const WithoutPipeSignal quiet;
  return Conversation(number, start.limits, input, std::move(in.write), std::move(out.read),
                      std::move(errors.read))
      .hold();
}

namespace {

namespace fs = std::filesystem;

/// Gives back the rights that a program took from its own folders, without which they can not be emptied.
void open_folders(const fs::path& folder) {
  std::error_code ignored;
  fs::permissions(folder, fs::perms::owner_all, fs::perm_options::add, ignored);
  for (fs::directory_iterator each(folder, ignored), end; !ignored && each != end; each.increment(ignored))
    if (each->is_directory(ignored) && !each->is_symlink(ignored))
      open_folders(each->path());
}

/// Holds back the signals that ask us to end while there are temporary folders.
class EndHeldBack {
public:
  static void begin() {
    const std::lock_guard lock(mutex());
    if (folders()++ > 0)
      return;
    struct sigaction held {};
    held.sa_handler = [](int number) { asked_to_end = number; };
    held.sa_flags = SA_RESTART;
    for (std::size_t i = 0; i < signals.size(); ++i) {
      sigaction(signals[i], nullptr, &before()[i]);
      if (before()[i].sa_handler != SIG_IGN) // as behind nohup
        sigaction(signals[i], &held, nullptr);
    }
  }

  static void end() {
    const std::lock_guard lock(mutex());
    if (--folders() > 0)
      return;
    for (std::size_t i = 0; i < signals.size(); ++i)
      sigaction(signals[i], &before()[i], nullptr);
    if (asked_to_end != 0)
      raise(static_cast<int>(asked_to_end));
  }

private:
  static constexpr std::array signals{SIGINT, SIGTERM, SIGHUP};
  static std::mutex& mutex() {
    static std::mutex one;
    return one;
  }
  static int& folders() {
    static int count = 0;
    return count;
  }
  static std::array<struct sigaction, signals.size()>& before() {
    static std::array<struct sigaction, signals.size()> all{};
    return all;
  }
};

} // namespace

TemporaryFolder::TemporaryFolder() {
  EndHeldBack::begin();
  std::error_code error;
  const fs::path among = fs::temp_directory_path(error);
  if (error)
    return;
  std::string name = (among / "sheerpole-XXXXXX").string();
  if (mkdtemp(name.data()) != nullptr)
    path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code error;
  if (!path_.empty())
    fs::remove_all(path_, error);
  if (error) {
    open_folders(path_);
    fs::remove_all(path_, error);
  }
  EndHeldBack::end();
}

} // namespace sheerpole
