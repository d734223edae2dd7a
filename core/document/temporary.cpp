#include "document/temporary.h"

#include <cerrno>
#include <filesystem>
#include <string_view>
#include <system_error>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace creasewright {
namespace {

namespace fs = std::filesystem;

constexpr int kMostNames = 200;  // tried
constexpr std::string_view kStart = ".creasewright-";
constexpr std::string_view kEnd = ".tmp";

/// Whether the path still names what is open, not something put in its place.
bool names(const std::string& path, const Descriptor& file) {
  struct stat there {};
  struct stat open {};
  return ::lstat(path.c_str(), &there) == 0 && ::fstat(file.number(), &open) == 0 &&
         there.st_ino == open.st_ino && there.st_dev == open.st_dev;
}

void sweep(const std::string& path) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
  if (!file.isOpen() || ::flock(file.number(), LOCK_EX | LOCK_NB) != 0) return;
  if (!names(path, file)) return;
  std::error_code ignored;
  fs::remove_all(path, ignored);
}

Descriptor openedFile(const std::string& path) {
  return Descriptor(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
}

Descriptor openedFolder(const std::string& path) {
  if (::mkdir(path.c_str(), 0777) != 0) return Descriptor();
  return Descriptor(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

Temporary made(const std::string& directory, Descriptor (*open)(const std::string&)) {
  sweepTemporaries(directory);
  for (int i = 0; i < kMostNames; ++i) {
    const std::string name = std::string(kStart) + std::to_string(::getpid()) + "-" +
                             std::to_string(i) + std::string(kEnd);
    Temporary fresh{(fs::path(directory) / name).string(), Descriptor()};
    fresh.held = open(fresh.path);
    if (!fresh.held.isOpen() && errno != EEXIST && errno != ENOENT) return fresh;
    std::error_code error;
    if (!fresh.held.isOpen() && !fs::is_directory(directory, error))
      return errno = ENOENT, Temporary{};
    if (!fresh.held.isOpen()) continue;
    // Another run may have swept it before it was locked. A file system without locks sweeps none.
    const bool locked = ::flock(fresh.held.number(), LOCK_EX | LOCK_NB) == 0;
    if ((locked || errno != EWOULDBLOCK) && names(fresh.path, fresh.held)) return fresh;
  }
  errno = EEXIST;
  return {};
}

}  // namespace

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
  close();
  number_ = std::exchange(other.number_, -1);
  return *this;
}

void Descriptor::close() {
  if (number_ >= 0) ::close(number_);
  number_ = -1;
}

Temporary temporaryFile(const std::string& directory) { return made(directory, openedFile); }

Temporary temporaryFolder(const std::string& directory) { return made(directory, openedFolder); }

void sweepTemporaries(const std::string& directory) {
  std::error_code error;
  for (fs::directory_iterator entry(directory, error), end; !error && entry != end;
       entry.increment(error)) {
    const std::string name = entry->path().filename().string();
    if (name.starts_with(kStart) && name.ends_with(kEnd)) sweep(entry->path().string());
  }
}

}  // namespace creasewright
