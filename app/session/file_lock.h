#pragma once

#include <QString>
#include <optional>

namespace creasewright {

/// A hold on a file that ends with its owner, however the program ends: no process number is kept
/// that another program could have later.
class FileLock {
 public:
  /// Makes the file when it is not there. Nothing when another program, or another FileLock of
  /// this one, holds it, or when the file cannot be made.
  static std::optional<FileLock> take(const QString& path);

  FileLock(FileLock&& other) noexcept;
  FileLock& operator=(FileLock&& other) noexcept;
  ~FileLock();

  /// What stands in the file; at most 64 KiB are read.
  [[nodiscard]] QString words() const;
  /// Replaces what stands in the file; false when that fails.
  bool write(const QString& words);

 private:
  explicit FileLock(int descriptor) : descriptor_(descriptor) {}

  int descriptor_ = -1;
};

}  // namespace creasewright
