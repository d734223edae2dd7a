#pragma once

#include <QCoreApplication>
#include <QString>
#include <string_view>

#include "base/problem.h"

namespace creasewright {

/// Exit codes of every command, a contract for scripts.
enum ExitCode {
  ExitHolds = 0,  ///< done; all checks hold
  ExitFails = 1,  ///< some checks fail (only `check`)
  ExitUsage = 2   ///< unreadable input, bad usage, or nothing could be written
};

/// Translation context of the command line.
struct Cli {
  Q_DECLARE_TR_FUNCTIONS(cli)
};

/// What a person wrote, fit to stand in a sentence: on one line and not too long.
QString shown(std::string_view argument);

/// To be called before anything is opened: a closed output then fails when it is written to.
void guardOutput();

/// The exit code of a command that ended with `code`: ExitUsage, and a sentence, when standard
/// output did not take all that was printed.
int afterOutput(int code);

/// A line on standard output.
void printLine(const QString& line);

/// A sentence on standard error; returns ExitUsage.
int fail(const QString& sentence);

/// The problem with the argument it belongs to; returns ExitUsage.
int fail(const QString& argument, const Problem& problem);

}  // namespace creasewright
