#include "cli/output.h"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>

#include <fcntl.h>
#include <unistd.h>

#include "base/excerpt.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"

namespace creasewright {

namespace {

int lossReason = 0;  // errno of the first loss

bool writeLine(std::FILE* stream, const QString& line) {
  const QByteArray bytes = line.toUtf8() + '\n';
  const auto size = static_cast<std::size_t>(bytes.size());
  return std::fwrite(bytes.constData(), 1, size, stream) == size;
}

void noteLoss(bool written) {
  if (!written && lossReason == 0) lossReason = errno;
}

}  // namespace

void guardOutput() {
  std::signal(SIGPIPE, SIG_IGN);  // a reader that went away is an error like another
  for (const int stream : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
    // A file opened later must not get the number of a closed stream. Nothing can be written to
    // what is opened for reading: the loss is seen.
    if (::fcntl(stream, F_GETFD) < 0 && errno == EBADF) [[maybe_unused]]
      const int taken = ::open("/dev/null", O_RDONLY);
  }
}

int afterOutput(int code) {
  noteLoss(std::fflush(stdout) == 0);
  if (lossReason == 0) return code;
  return fail(Cli::tr("The output cannot be written (%1). Send it where there is room and somebody "
                      "reads it.")
                  .arg(QString::fromLocal8Bit(std::strerror(lossReason))));
}

void printLine(const QString& line) { noteLoss(writeLine(stdout, line)); }

int fail(const QString& sentence) {
  writeLine(stderr, sentence);
  return ExitUsage;
}

int fail(const QString& argument, const Problem& problem) {
  return fail(QStringLiteral("%1: %2").arg(argument, problemSentence(problem, Unit::Millimetre)));
}

QString shown(std::string_view argument) { return text(pathExcerpt(argument)); }

}  // namespace creasewright
