#pragma once

#include <string>

namespace creasewright {

/// What `guide` was asked for; an empty text means the argument was not given.
struct GuideOptions {
  std::string file;
  std::string output;
  std::string paper;
  std::string units;
  std::string language;
};

/// Writes the illustrated guide; PDF and picture folders need a QGuiApplication.
int runGuide(const GuideOptions& options);

}  // namespace creasewright
