#pragma once

namespace creasewright {

/// The whole program: opens the window, or runs one command. Returns the exit code (cli/output.h).
int runCommandLine(int argc, char** argv);

}  // namespace creasewright
