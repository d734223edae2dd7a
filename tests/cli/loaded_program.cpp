#include <algorithm>
#include <array>
#include <cstdlib>
#include <cstring>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include "cli/command_line.h"

// The program, loaded once and run many times: loading its 75 libraries takes longer than most
// commands. Each message on the socket that is standard input holds the arguments of one run, each
// with its zero byte, and three files to run with; a child that nothing has run in before does so.
// What it ended with, as waitpid() tells it, is the answer.

namespace {

constexpr std::size_t kFiles = 3;

struct Order {
  std::string words;
  std::array<int, kFiles> files{-1, -1, -1};
};

/// False when there is no more, or a message that is none.
bool take(int socket, Order& order) {
  static std::vector<char> room(1U << 18U);
  alignas(cmsghdr) std::array<char, CMSG_SPACE(sizeof(int) * kFiles)> beside{};
  iovec part{room.data(), room.size()};
  msghdr message{};
  message.msg_iov = &part;
  message.msg_iovlen = 1;
  message.msg_control = beside.data();
  message.msg_controllen = beside.size();
  const ssize_t length = recvmsg(socket, &message, MSG_CMSG_CLOEXEC);
  const cmsghdr* files = length > 0 ? CMSG_FIRSTHDR(&message) : nullptr;
  if (files == nullptr || files->cmsg_len != CMSG_LEN(sizeof(int) * kFiles)) return false;
  order.words.assign(room.data(), static_cast<std::size_t>(length));
  std::memcpy(order.files.data(), CMSG_DATA(files), sizeof(int) * kFiles);
  return order.words.back() == '\0';
}

/// What a run is and what it writes: the command, and how its last word ends.
std::string kindOf(std::string_view words) {
  words.remove_suffix(1);
  const std::size_t name = words.find('\0') + 1;  // 0 where the program's own is alone
  if (name == 0) return {};
  const std::string_view command = words.substr(name, words.find('\0', name) - name);
  const std::string_view last = words.substr(words.rfind('\0') + 1);
  return std::string(command) + std::string(last.substr(std::min(last.size(), last.rfind('.'))));
}

/// Whether a run ends as the program does, by taking down all that its libraries hold: that takes
/// as long as the run, and is the same for all of a kind. The others end as soon as they are done;
/// what they wrote must be out by then. Sanitizers look for what is lost at the very end.
bool endsWhole([[maybe_unused]] const Order& order) {
#ifdef __SANITIZE_ADDRESS__
  return true;
#else
  static std::set<std::string> ended;
  return ended.insert(kindOf(order.words)).second;
#endif
}

[[noreturn]] void run(int socket, Order& order, bool whole) {
  close(socket);
  for (std::size_t i = 0; i < kFiles; ++i) dup2(order.files[i], static_cast<int>(i));
  for (const int file : order.files) close(file);
  std::vector<char*> words;
  for (std::size_t at = 0; at < order.words.size(); at = order.words.find('\0', at) + 1)
    words.push_back(order.words.data() + at);
  const int count = static_cast<int>(words.size());
  words.push_back(nullptr);
  const int code = creasewright::runCommandLine(count, words.data());
  if (!whole) _exit(code);
  std::exit(code);
}

}  // namespace

int main() {
  const int socket = dup(STDIN_FILENO);
  Order order;
  while (take(socket, order)) {
    const bool whole = endsWhole(order);
    const pid_t child = fork();
    if (child == 0) run(socket, order, whole);
    for (const int file : order.files) close(file);
    int ended = 0;
    if (child < 0 || waitpid(child, &ended, 0) != child) return 1;
    if (send(socket, &ended, sizeof ended, 0) != sizeof ended) return 1;
  }
}
