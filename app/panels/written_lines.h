#pragma once

#include <QString>
#include <string>
#include <vector>

namespace creasewright {

/// Lines as they are typed, and back; none where there is only space.
QString linesText(const std::vector<std::string>& lines);
std::vector<std::string> writtenLines(const QString& written);

}  // namespace creasewright
