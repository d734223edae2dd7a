#pragma once

namespace creasewright {

/// Parses the command line and runs the command that was asked for; returns the exit code.
int runArguments(int argc, char** argv);

}  // namespace creasewright
