#include <array>
#include <cstdlib>
#include <cstring>
#include <string>
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

[[noreturn]] void run(int socket, Order& order) {
  close(socket);
  for (std::size_t i = 0; i < kFiles; ++i) dup2(order.files[i], static_cast<int>(i));
  for (const int file : order.files) close(file);
  std::vector<char*> words;
  for (std::size_t at = 0; at < order.words.size(); at = order.words.find('\0', at) + 1)
    words.push_back(order.words.data() + at);
  const int count = static_cast<int>(words.size());
  words.push_back(nullptr);
  std::exit(creasewright::runCommandLine(count, words.data()));
}

}  // namespace

int main() {
  const int socket = dup(STDIN_FILENO);
  Order order;
  while (take(socket, order)) {
    const pid_t child = fork();
    if (child == 0) run(socket, order);
    for (const int file : order.files) close(file);
    int ended = 0;
    if (child < 0 || waitpid(child, &ended, 0) != child) return 1;
    if (send(socket, &ended, sizeof ended, 0) != sizeof ended) return 1;
  }
}
