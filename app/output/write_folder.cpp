#include "output/write_folder.h"

#include <QFile>
#include <set>

#include "document/folder_io.h"

namespace creasewright {

QString fileNamePart(const QString& title) {
  constexpr int kLongest = 40;
  QString out;
  for (const QChar c : title.left(kLongest))
    out += c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
  return out;
}

QString freeNamePart(const QString& title, std::set<QString>& taken) {
  const QString part = fileNamePart(title);
  QString name = part;
  for (int number = 2; !taken.insert(name).second; ++number)
    name = QStringLiteral("%1-%2").arg(part).arg(number);
  return name;
}

std::optional<Problem> writeFolder(const QString& folder, const FolderFiles& files) {
  NamedFiles named;
  for (const auto& [name, bytes] : files) {
    named.emplace_back(QFile::encodeName(name).toStdString(),
                       std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
  }
  return writeFolderAtomically(QFile::encodeName(folder).toStdString(), named);
}

}  // namespace creasewright
