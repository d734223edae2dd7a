#pragma once

#include <QStringList>

namespace creasewright {

/// Opens a window for each of `files`, or one with a fresh design, offers work that a crash has
/// left, and stays until the last window closes. `argc` and `argv` are what `main` got. Returns the
/// program's exit code.
int runWindow(int argc, char** argv, const QStringList& files);

}  // namespace creasewright
