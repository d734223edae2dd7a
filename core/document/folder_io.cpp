#include "document/folder_io.h"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <system_error>
#include <thread>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "document/file_io.h"
#include "document/temporary.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;
using std::chrono::steady_clock;

constexpr std::string_view kListName = ".creasewright-files";
constexpr std::int64_t kLargestList = 1 << 20;
constexpr std::chrono::seconds kPatience{20};  // for another process that puts its files in place
constexpr std::chrono::milliseconds kPause{5};

using Names = std::vector<std::string>;

Problem failure(const fs::path& path, int error) {
  return {ProblemCode::FileNotWritten, path.string(), {std::generic_category().message(error)}};
}

/// A name of a file in the folder itself.
bool isPlain(std::string_view name) {
  return !name.empty() && name != "." && name != ".." &&
         name.find_first_of(std::string_view("/\0\n", 3)) == std::string_view::npos;
}

Names namesIn(const fs::path& list) {
  const Result<std::string> text = readFile(list.string(), kLargestList);
  Names names;
  if (!text) return names;
  for (std::size_t at = 0; at < text->size();) {
    const std::size_t end = std::min(text->find('\n', at), text->size());
    if (const std::string name = text->substr(at, end - at); isPlain(name)) names.push_back(name);
    at = end + 1;
  }
  return names;
}

/// Makes the folder's parents; those that were missing are put in `made`, the outermost first.
std::optional<Problem> makeParents(const fs::path& folder, std::vector<fs::path>& made) {
  std::error_code error;
  std::vector<fs::path> missing;
  for (fs::path up = folder.parent_path(); !up.empty() && !fs::exists(up, error);
       up = up.parent_path())
    missing.push_back(up);
  std::ranges::reverse(missing);
  for (const fs::path& path : missing) {
    if (::mkdir(path.c_str(), 0777) != 0 && errno != EEXIST) return failure(path, errno);
    made.push_back(path);
  }
  return std::nullopt;
}

/// All files and the list of their names in `staging`.
std::optional<Problem> stage(const fs::path& staging, const fs::path& folder,
                             const NamedFiles& files) {
  std::string list;
  const auto put = [&](const std::string& name, std::string_view bytes) {
    std::optional<Problem> problem = writeFileAtomically((staging / name).string(), bytes);
    if (problem) problem->where = (folder / name).string();
    return problem;
  };
  for (const auto& [name, bytes] : files) {
    if (auto problem = put(name, bytes)) return problem;
    list += name + '\n';
  }
  return put(std::string(kListName), list);
}

/// Nothing when another process holds the folder for too long, or it is gone (errno).
Descriptor lockedFolder(const fs::path& folder) {
  Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  const auto end = steady_clock::now() + kPatience;
  while (opened.isOpen() && ::flock(opened.number(), LOCK_EX | LOCK_NB) != 0) {
    if (errno != EWOULDBLOCK && errno != EINTR) break;  // a file system without locks
    if (steady_clock::now() > end) return errno = EBUSY, Descriptor();
    std::this_thread::sleep_for(kPause);
  }
  return opened;
}

/// Puts staged files in place one by one and can take that back.
class Exchange {
 public:
  Exchange(fs::path staging, fs::path folder)
      : staging_(std::move(staging)), folder_(std::move(folder)) {}

  std::optional<Problem> bring(const std::string& name) {
    const fs::path target = folder_ / name;
    struct stat old {};
    const bool exists = ::lstat(target.c_str(), &old) == 0;
    if (exists && S_ISDIR(old.st_mode)) return failure(target, EISDIR);
    if (exists && ::access(target.c_str(), W_OK) != 0) return failure(target, errno);
    if (exists && S_ISREG(old.st_mode)) ::chmod((staging_ / name).c_str(), old.st_mode & 07777);
    if (exists && !keepAside(name)) return failure(target, errno);
    if (std::rename((staging_ / name).c_str(), target.c_str()) == 0) {
      if (!exists) brought_.push_back(name);
      return std::nullopt;
    }
    return failure(target, errno);
  }

  void remove(const std::string& name) { setAside(name); }

  void takeBack() {
    for (const std::string& name : brought_) ::unlink((folder_ / name).c_str());
    for (const std::string& name : aside_)
      std::rename(asidePath(name).c_str(), (folder_ / name).c_str());
  }

 private:
  [[nodiscard]] fs::path asidePath(const std::string& name) const {
    return staging_ / ("old " + name);
  }

  /// A second name, so that the first is there at every moment; where none can be given, it moves.
  bool keepAside(const std::string& name) {
    if (::link((folder_ / name).c_str(), asidePath(name).c_str()) != 0) return setAside(name);
    aside_.push_back(name);
    return true;
  }

  bool setAside(const std::string& name) {
    if (std::rename((folder_ / name).c_str(), asidePath(name).c_str()) != 0) return false;
    aside_.push_back(name);
    return true;
  }

  fs::path staging_;
  fs::path folder_;
  Names brought_;  // that were not there before
  Names aside_;
};

/// The staged files into a folder that is there already.
std::optional<Problem> bringInto(const fs::path& staging, const fs::path& folder,
                                 const NamedFiles& files) {
  const Descriptor lock = lockedFolder(folder);
  if (!lock.isOpen()) return failure(folder, errno);
  const Names before = namesIn(folder / kListName);
  Exchange exchange(staging, folder);
  Names names;
  for (const auto& [name, bytes] : files) names.push_back(name);
  names.emplace_back(kListName);
  for (const std::string& name : names)
    if (auto problem = exchange.bring(name)) return exchange.takeBack(), problem;
  for (const std::string& name : before)
    if (std::ranges::count(names, name) == 0) exchange.remove(name);
  ::fsync(lock.number());
  return std::nullopt;
}

/// Nothing has to be there yet: the whole folder comes into being at once. False with EEXIST when
/// another process was quicker.
bool renameFolder(const fs::path& staging, const fs::path& folder) {
  if (::renameat2(AT_FDCWD, staging.c_str(), AT_FDCWD, folder.c_str(), RENAME_NOREPLACE) == 0)
    return true;
  if (errno != EINVAL && errno != ENOSYS) return false;
  // A file system that cannot promise it; an empty folder may be replaced.
  if (std::rename(staging.c_str(), folder.c_str()) == 0) return true;
  if (errno == ENOTEMPTY) errno = EEXIST;
  return false;
}

std::optional<Problem> write(const fs::path& folder, const NamedFiles& files) {
  std::error_code error;
  const bool isNew = !fs::exists(folder, error);
  if (!isNew && !fs::is_directory(folder, error)) return failure(folder, ENOTDIR);
  fs::path parent = folder.parent_path();
  if (parent.empty()) parent = ".";
  const Temporary staging = temporaryFolder((isNew ? parent : folder).string());
  if (!staging.held.isOpen()) return failure(folder, errno);
  std::optional<Problem> problem = stage(staging.path, folder, files);
  if (!problem) {
    if (isNew && renameFolder(staging.path, folder)) return std::nullopt;
    if (isNew && errno != EEXIST)
      problem = failure(folder, errno);
    else
      problem = bringInto(staging.path, folder, files);
  }
  fs::remove_all(staging.path, error);
  return problem;
}

}  // namespace

std::optional<Problem> writeFolderAtomically(const std::string& folder, const NamedFiles& files) {
  fs::path path = fs::path(folder).lexically_normal();
  if (!path.has_filename()) path = path.parent_path();  // of `class/`
  for (const auto& [name, bytes] : files)
    if (!isPlain(name)) return failure(path / name, EINVAL);
  std::vector<fs::path> made;
  std::optional<Problem> problem = makeParents(path, made);
  if (!problem) problem = write(path, files);
  if (problem)
    for (auto parent = made.rbegin(); parent != made.rend(); ++parent) ::rmdir(parent->c_str());
  return problem;
}

}  // namespace creasewright
