#include "driver/writing/write_bundle.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/terminal.hpp"
#include "driver/writing/folder_handle.hpp"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <system_error>

namespace sheerpole {

namespace {

using Kind = WriteFailure::Kind;

constexpr const char* half_way_words =
    "A build was stopped while it gave its papers their names. The papers in this folder may be of two "
    "builds.\n"
    "Do not cut by them. Build again into this folder; that puts them right and takes this note away.\n";

bool stays_inside(const std::string& name) {
  if (name.empty() || name.find('\\') != std::string::npos || name.find('\0') != std::string::npos)
    return false;
  const std::filesystem::path path(name);
  if (path.is_absolute() || !path.has_filename())
    return false;
  return std::none_of(path.begin(), path.end(),
                      [](const auto& part) { return part == ".." || part == "."; });
}

std::optional<WriteFailure> fault_of_names(const std::vector<OutputFile>& files) {
  std::vector<std::string> names;
  for (const OutputFile& file : files) {
    if (!stays_inside(file.name))
      return WriteFailure{Kind::bad_name, file.name};
    names.push_back(file.name);
  }
  std::sort(names.begin(), names.end());
  if (const auto twice = std::adjacent_find(names.begin(), names.end()); twice != names.end())
    return WriteFailure{Kind::same_name, *twice};
  return std::nullopt;
}

/// One paper on its way to its name.
struct Paper {
  const OutputFile* file = nullptr;
  const FolderHandle* folder = nullptr;
  std::string name;      ///< within that folder
  std::string while_new; ///< its name until all are there
  std::string while_old; ///< the second name of the file that it replaces
  std::string path;      ///< as it is told
  bool replaces = false;
  bool kept_old = false;  ///< the old file has its second name
  bool moved_old = false; ///< and has lost its first
  bool placed = false;    ///< the new file has the name
};

/// The writing of one bundle, from the first temporary file to the last name.
class Writing {
public:
  Writing(const std::string& folder, const std::vector<std::string>& read) : path_(folder) {
    for (const std::string& each : read)
      if (const FoundIdentity file = identity_of(each); file.found)
        read_.insert(file.identity);
  }
  ~Writing() {
    for (const Paper& paper : papers_)
      paper.folder->remove(paper.while_new);
    if (noted_)
      root_.remove(note_);
  }

  std::optional<WriteFailure> take_folder() {
    root_ = FolderHandle(path_.string());
    if (!root_.is_open())
      return WriteFailure{Kind::folder, path_.generic_string(), errno};
    if (!root_.lock())
      return WriteFailure{Kind::in_use, path_.generic_string()};
    return std::nullopt;
  }

  /// Finds a paper's place and clears away what a killed build may have left there.
  std::optional<WriteFailure> add(const OutputFile& file) {
    const std::filesystem::path relative(file.name);
    Paper paper;
    paper.file = &file;
    paper.folder = &root_;
    paper.name = relative.filename().string();
    paper.while_new = ".sheerpole-new-" + paper.name;
    paper.while_old = ".sheerpole-old-" + paper.name;
    paper.path = (path_ / file.name).generic_string();
    std::filesystem::path so_far;
    for (const auto& part : relative.parent_path()) {
      so_far /= part;
      const auto known = inside_.find(so_far.string());
      if (known == inside_.end()) {
        auto inside = paper.folder->inside(part.string());
        if (!inside.ok())
          return WriteFailure{inside.error() == ELOOP || inside.error() == ENOTDIR ? Kind::link
                                                                                   : Kind::folder,
                              (path_ / so_far).generic_string(), inside.error()};
        paper.folder = &inside_.emplace(so_far.string(), std::move(inside.value())).first->second;
      } else {
        paper.folder = &known->second;
      }
    }
    put_back_what_was_left(paper);
    const auto there = paper.folder->look(paper.name);
    if (!there.ok() && there.error() != ENOENT)
      return WriteFailure{Kind::file, paper.path, there.error()};
    if (there.ok()) {
      if (S_ISDIR(there.value().st_mode) ||
          (!S_ISREG(there.value().st_mode) && !S_ISLNK(there.value().st_mode)))
        return WriteFailure{Kind::not_a_file, paper.path};
      if (const FoundIdentity file = identity_of(paper.path); file.found && read_.contains(file.identity))
        return WriteFailure{Kind::was_read, paper.path};
      paper.replaces = true;
    }
    papers_.push_back(std::move(paper));
    return std::nullopt;
  }

  /// Every paper under its temporary name.
  std::optional<WriteFailure> write() const {
    for (const Paper& paper : papers_)
      if (const int reason = paper.folder->make_file(paper.while_new, paper.file->bytes); reason != 0)
        return WriteFailure{Kind::file, paper.path, reason};
    return std::nullopt;
  }

  /// Every paper under its own name, or every old one as it was.
  std::optional<WriteFailure> place() {
    if (papers_.size() > 1) {
      root_.remove(note_);
      noted_ = true;
      if (const int reason = root_.make_file(note_, half_way_words); reason != 0)
        return WriteFailure{Kind::file, (path_ / half_way_note).generic_string(), reason};
    }
    for (Paper& paper : papers_) {
      int reason = paper.replaces ? paper.folder->keep_as(paper.name, paper.while_old, paper.moved_old) : 0;
      paper.kept_old = paper.replaces && reason == 0;
      if (reason == 0)
        reason = paper.folder->rename(paper.while_new, paper.name);
      paper.placed = reason == 0;
      if (reason != 0)
        return WriteFailure{put_back() ? Kind::file : Kind::mixed, paper.path, reason};
    }
    for (const Paper& paper : papers_)
      if (paper.kept_old)
        paper.folder->remove(paper.while_old);
    return std::nullopt;
  }

  std::vector<std::string> paths() const {
    std::vector<std::string> result;
    for (const Paper& paper : papers_)
      result.push_back(paper.path);
    return result;
  }

private:
  static void put_back_what_was_left(const Paper& paper) {
    paper.folder->remove(paper.while_new);
    if (paper.folder->look(paper.while_old).ok())
      restore(paper);
  }

  static bool restore(const Paper& paper) {
    const bool done = paper.folder->rename(paper.while_old, paper.name) == 0;
    // Where both are names of one file still, a rename leaves both.
    if (done)
      paper.folder->remove(paper.while_old);
    return done;
  }

  /// False when one of them could not be put back; the note is then left where it is.
  bool put_back() {
    bool all = true;
    for (const Paper& paper : papers_) {
      if (paper.kept_old && !paper.placed && !paper.moved_old)
        paper.folder->remove(paper.while_old); // it never lost its name
      else if (paper.kept_old)
        all = restore(paper) && all;
      else if (paper.placed)
        all = paper.folder->remove(paper.name) == 0 && all;
    }
    noted_ = noted_ && all;
    return all;
  }

  std::filesystem::path path_;
  FolderHandle root_;
  std::map<std::string, FolderHandle> inside_; ///< by the path from the root
  std::set<FileIdentity> read_;
  std::vector<Paper> papers_;
  const std::string note_{
      half_way_note}; ///< made before anything is placed: at the end there may be no memory
  bool noted_ = false;
};

} // namespace

Result<std::vector<std::string>, WriteFailure>
write_bundle(const OutputBundle& bundle, const std::string& folder, const std::vector<std::string>& read) {
  if (auto fault = fault_of_names(bundle.files))
    return *fault;
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error)
    return WriteFailure{Kind::folder, folder, error.value()};
  Writing writing(folder, read);
  if (auto failure = writing.take_folder())
    return *failure;
  for (const OutputFile& file : bundle.files)
    if (auto failure = writing.add(file))
      return *failure;
  if (auto failure = writing.write())
    return *failure;
  // Where memory runs out the papers are the old ones still; once they are placed nothing asks for any.
  std::vector<std::string> paths = writing.paths();
  if (auto failure = writing.place())
    return *failure;
  return paths;
}

std::string describe(const WriteFailure& failure) {
  const std::string what = printable(failure.what);
  const std::string because =
      failure.reason == 0 ? "" : ": " + std::generic_category().message(failure.reason);
  switch (failure.kind) {
  case Kind::bad_name:
    return "a back end wanted to write outside the folder: " + what;
  case Kind::same_name:
    return "two back ends wanted to write " + what;
  case Kind::folder:
    return "cannot make or write to the folder " + what + because;
  case Kind::in_use:
    return "another build is writing to the folder " + what;
  case Kind::link:
    return what + " is no folder but a link or a file, and papers belong below it";
  case Kind::not_a_file:
    return what + " is no file, so no paper can take its place";
  case Kind::was_read:
    return what + " is one of the files that the papers are made from; write into another folder";
  case Kind::file:
    return "cannot write " + what + because;
  case Kind::mixed:
    return "cannot write " + what + because +
           "; some papers were replaced and could not be put back. The papers there may be of two builds: "
           "do "
           "not cut by them, build again";
  }
  return what;
}

int write_and_tell(const OutputBundle& bundle, const std::string& folder,
                   const std::vector<std::string>& read, std::vector<std::string>* paths) {
  const auto written = write_bundle(bundle, folder, read);
  if (!written.ok()) {
    const bool mixed = written.error().kind == Kind::mixed;
    print_error("sheerpole: " + describe(written.error()) + (mixed ? "\n" : "; nothing was written\n"));
    return is_fault(written.error()) ? exit_fault : exit_usage;
  }
  for (const std::string& path : written.value())
    print_out("wrote " + printable(path) + "\n");
  if (paths != nullptr)
    *paths = written.value();
  return exit_clean;
}

} // namespace sheerpole
