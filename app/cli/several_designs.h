#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "document/build.h"

namespace creasewright {

/// A design that a command was given, and what its file is called without its ending.
struct NamedDesign {
  std::string file;
  QString stem;
  Design design;
};

/// The designs in `files`; `-` is standard input, once. Files that are called alike get a number.
/// Nothing: the problem is told.
std::optional<std::vector<NamedDesign>> readDesignArguments(const std::vector<std::string>& files);

/// The sentence for an output or a kind of file (`--as`) that cannot serve, or nothing: several
/// designs go into a folder, which takes a file of the kind `as` for each.
QString severalProblem(const std::vector<std::string>& files, const std::string& output,
                       const std::string& as, const QStringList& endings);

}  // namespace creasewright
