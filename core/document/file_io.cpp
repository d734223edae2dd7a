#include "document/file_io.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "document/temporary.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kChunk = 1 << 16;
constexpr int kMostLinks = 40;  // as the kernel follows

Problem failure(ProblemCode code, const std::string& path, int error) {
  return {code, path, {std::generic_category().message(error)}};
}

Problem notRegular(ProblemCode code, const std::string& path, const struct stat& status) {
  return failure(code, path, S_ISDIR(status.st_mode) ? EISDIR : EINVAL);
}

/// Where writing to `path` ends: the last target of its symbolic links, there or not.
fs::path finalTarget(const fs::path& path) {
  fs::path target = path;
  std::error_code error;
  for (int i = 0; i < kMostLinks && fs::is_symlink(target, error); ++i) {
    const fs::path next = fs::read_symlink(target, error);
    if (error) break;
    target = target.parent_path() / next;  // an absolute `next` replaces the whole
  }
  return target;
}

bool writeAll(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t count = ::write(file, bytes.data(), std::min(bytes.size(), kChunk));
    if (count < 0 && errno == EINTR) continue;
    if (count <= 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(count));
  }
  return true;
}

/// Best effort: the new bytes are safe already, only the renaming may be lost in a power cut.
void flushDirectory(const fs::path& directory) {
  const Descriptor opened(::open(directory.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (opened.isOpen()) ::fsync(opened.number());
}

/// Fills the temporary file and puts it in the place of `target`. False and errno on failure.
bool fillAndRename(const Temporary& temporary, const fs::path& target, const struct stat* old,
                   std::string_view bytes) {
  const int file = temporary.held.number();
  if (old != nullptr) {
    // The owner may only be kept by root; without that the file becomes the writer's.
    [[maybe_unused]] const int kept = ::fchown(file, old->st_uid, old->st_gid);
    if (::fchmod(file, old->st_mode & 07777) != 0) return false;
  }
  // Renamed while it is open and so still locked: no other run sweeps it before.
  return writeAll(file, bytes) && ::fsync(file) == 0 &&
         std::rename(temporary.path.c_str(), target.c_str()) == 0;
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::int64_t limit) {
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (!file.isOpen()) return failure(ProblemCode::FileUnreadable, path, errno);
  struct stat status {};
  if (::fstat(file.number(), &status) != 0)
    return failure(ProblemCode::FileUnreadable, path, errno);
  if (!S_ISREG(status.st_mode)) return notRegular(ProblemCode::FileUnreadable, path, status);

  std::string bytes;
  std::string chunk(kChunk, '\0');
  std::int64_t size = status.st_size;
  while (size <= limit) {
    const ssize_t count = ::read(file.number(), chunk.data(), chunk.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return failure(ProblemCode::FileUnreadable, path, errno);
    if (count == 0) return bytes;
    bytes.append(chunk, 0, static_cast<std::size_t>(count));
    size = std::max(size, static_cast<std::int64_t>(bytes.size()));
  }
  return Problem{ProblemCode::FileTooLarge, path, {size, limit}};
}

std::optional<Problem> writeFileAtomically(const std::string& path, std::string_view bytes) {
  const fs::path target = finalTarget(path);
  struct stat status {};
  const bool exists = ::stat(target.c_str(), &status) == 0;
  if (!exists && errno != ENOENT) return failure(ProblemCode::FileNotWritten, path, errno);
  if (exists && !S_ISREG(status.st_mode))
    return notRegular(ProblemCode::FileNotWritten, path, status);
  if (exists && ::access(target.c_str(), W_OK) != 0)
    return failure(ProblemCode::FileNotWritten, path, errno);

  const fs::path directory = target.has_parent_path() ? target.parent_path() : fs::path(".");
  const Temporary temporary = temporaryFile(directory.string());
  if (!temporary.held.isOpen()) return failure(ProblemCode::FileNotWritten, path, errno);
  if (!fillAndRename(temporary, target, exists ? &status : nullptr, bytes)) {
    const int error = errno;
    ::unlink(temporary.path.c_str());
    return failure(ProblemCode::FileNotWritten, path, error);
  }
  flushDirectory(directory);
  return std::nullopt;
}

}  // namespace creasewright
