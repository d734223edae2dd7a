#pragma once

#include <QByteArray>
#include <QString>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "base/problem.h"

namespace creasewright {

/// Names and contents of files that belong together.
using FolderFiles = std::vector<std::pair<QString, QByteArray>>;

/// A title as a part of a file's name: small letters and digits, all else a hyphen, not too long.
QString fileNamePart(const QString& title);

/// The same for one of several titles: a number tells it from those `taken` before.
QString freeNamePart(const QString& title, std::set<QString>& taken);

/// Writes all files into a folder, which is made when it is missing: it is new or old as a whole
/// (document/folder_io.h). Error: FileNotWritten (path, reason).
std::optional<Problem> writeFolder(const QString& folder, const FolderFiles& files);

}  // namespace creasewright
