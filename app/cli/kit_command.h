#pragma once

#include <string>
#include <vector>

namespace creasewright {

/// What `kit` was asked for; an empty text means the argument was not given.
struct KitOptions {
  std::vector<std::string> files;
  std::string output;
  std::vector<std::string> sheets;
  std::string takers;
  std::string spares;
  std::string paper;
  std::string units;
};

/// Plans a class from a kit, or from designs; a PDF needs a QGuiApplication.
int runKit(const KitOptions& options);

}  // namespace creasewright
