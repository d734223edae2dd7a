#pragma once

#include <QString>

namespace creasewright {

/// Opens the window on the application that exists, with `file` in it when not empty, and stays
/// until it closes. `language` (`de`, `en`) overrides the one remembered and the system's. Returns
/// the program's exit code.
int runWindow(const QString& file, const QString& language = {});

}  // namespace creasewright
