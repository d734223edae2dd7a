#pragma once

#include <QStringList>
#include <optional>
#include <string>

namespace creasewright {

/// Names of takers as `Ada,Ben,Cleo`, or those of the class in a `.cwkit` file; each once, in
/// order. Nothing: the problem is told.
std::optional<QStringList> readNames(const std::string& written);

}  // namespace creasewright
