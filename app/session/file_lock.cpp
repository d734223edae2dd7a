#include "session/file_lock.h"

#include <QFile>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace creasewright {

namespace {

constexpr std::size_t kLongestWords = 64 * 1024;

}  // namespace

std::optional<FileLock> FileLock::take(const QString& path) {
  const int descriptor =
      ::open(QFile::encodeName(path).constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
  if (descriptor < 0) return {};
  FileLock lock(descriptor);
  if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) return {};
  return lock;
}

FileLock::FileLock(FileLock&& other) noexcept : descriptor_(std::exchange(other.descriptor_, -1)) {}

FileLock& FileLock::operator=(FileLock&& other) noexcept {
  std::swap(descriptor_, other.descriptor_);
  return *this;
}

FileLock::~FileLock() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

QString FileLock::words() const {
  QByteArray bytes(static_cast<qsizetype>(kLongestWords), '\0');
  const ssize_t count = ::pread(descriptor_, bytes.data(), kLongestWords, 0);
  return QString::fromUtf8(bytes.left(std::max<ssize_t>(0, count)));
}

bool FileLock::write(const QString& words) {
  const QByteArray bytes = words.toUtf8();
  return ::ftruncate(descriptor_, 0) == 0 &&
         ::pwrite(descriptor_, bytes.constData(), static_cast<std::size_t>(bytes.size()), 0) ==
             bytes.size();
}

}  // namespace creasewright
