#pragma once

#include <string>
#include <utility>

namespace creasewright {

/// An open file or folder, closed when it goes out of sight.
class Descriptor {
 public:
  Descriptor() = default;
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept;
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() { close(); }

  [[nodiscard]] bool isOpen() const { return number_ >= 0; }
  [[nodiscard]] int number() const { return number_; }
  void close();

 private:
  int number_ = -1;
};

/// A file or folder under a temporary name, locked while it is held: the lock goes with the process
/// however it ends, and what then lies there unlocked is swept.
struct Temporary {
  std::string path;
  Descriptor held;  ///< of a file open for writing; not open when none could be made (errno)
};

/// Fresh ones in `directory`, after what killed runs left there has been taken away.
Temporary temporaryFile(const std::string& directory);
Temporary temporaryFolder(const std::string& directory);

/// Takes temporary files and folders away whose process is gone.
void sweepTemporaries(const std::string& directory);

}  // namespace creasewright
