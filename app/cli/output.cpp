#include "cli/output.h"

#include <cstdio>

#include "bridge/problem_text.h"

namespace creasewright {

namespace {

void writeLine(std::FILE* stream, const QString& line) {
  const QByteArray bytes = line.toUtf8() + '\n';
  std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
}

}  // namespace

void printLine(const QString& line) { writeLine(stdout, line); }

int fail(const QString& sentence) {
  writeLine(stderr, sentence);
  return ExitUsage;
}

int fail(const QString& argument, const Problem& problem) {
  return fail(QStringLiteral("%1: %2").arg(argument, problemSentence(problem, Unit::Millimetre)));
}

}  // namespace creasewright
