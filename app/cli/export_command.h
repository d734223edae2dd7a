#pragma once

#include <string>

namespace creasewright {

/// What `export` was asked for; an empty text means the argument was not given.
struct ExportOptions {
  std::string file;
  std::string output;
  std::string piece;
  std::string paper;
  std::string units;
  bool folded = false;
};

/// Writes one file; its name's ending says which kind. PDF and PNG need a QGuiApplication.
int runExport(const ExportOptions& options);

}  // namespace creasewright
