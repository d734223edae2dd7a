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

/// A title as a part of a file's name: small letters and digits, all else a hyphen, not too long.
QString fileNamePart(const QString& title);

/// Writes all files into a folder, which is made when it is missing. Error: FileNotWritten (path,
/// reason); files written before it are taken away again.
std::optional<Problem> writeFolder(const QString& folder, const FolderFiles& files);

}  // namespace creasewright
