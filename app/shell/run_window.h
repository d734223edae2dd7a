#pragma once

#include <QStringList>

namespace creasewright {

/// Opens a window for each of `files`, or one with a fresh design, on the application that exists,
/// offers work that a crash has left, and stays until the last window closes. `language` (`de`,
/// `en`) overrides the one remembered and the system's. Returns the program's exit code.
int runWindow(const QStringList& files, const QString& language = {});

}  // namespace creasewright
