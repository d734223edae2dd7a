#pragma once

#include <QByteArray>
#include <QString>
#include <optional>
#include <utility>
#include <vector>

#include "base/problem.h"

namespace creasewright {

/// Names and contents of files that belong together.
using FolderFiles = std::vector<std::pair<QString, QByteArray>>;

/// Writes all files into a folder, which is made when it is missing. Error: FileNotWritten (path,
/// reason); files written before it are taken away again.
std::optional<Problem> writeFolder(const QString& folder, const FolderFiles& files);

}  // namespace creasewright
