#include "panels/written_lines.h"

#include <QStringList>

#include "bridge/text.h"

namespace creasewright {

QString linesText(const std::vector<std::string>& lines) {
  QStringList list;
  for (const std::string& line : lines) list.append(text(line));
  return list.join(QLatin1Char('\n'));
}

std::vector<std::string> writtenLines(const QString& written) {
  std::vector<std::string> lines;
  if (written.trimmed().isEmpty()) return lines;
  for (const QString& line : written.split(QLatin1Char('\n'))) lines.push_back(line.toStdString());
  return lines;
}

}  // namespace creasewright
