#include "output/write_folder.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QStringList>

#include "output/write_bytes.h"

namespace creasewright {

QString fileNamePart(const QString& title) {
  constexpr int longest = 40;
  QString out;
  for (const QChar c : title.left(longest)) {
    out += c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
  }
  return out;
}

std::optional<Problem> writeFolder(const QString& folder, const FolderFiles& files) {
  const QDir directory(folder);
  const bool isNew = !directory.exists();
  if (!QDir().mkpath(folder)) {
    const QString reason = QCoreApplication::translate("output", "the folder cannot be made");
    return Problem{ProblemCode::FileNotWritten, folder.toStdString(), {reason.toStdString()}};
  }
  QStringList written;
  for (const auto& [name, bytes] : files) {
    const QString path = directory.filePath(name);
    const bool replaces = QFile::exists(path);
    const auto problem = writeBytes(path, bytes);
    if (problem) {
      for (const QString& made : written) {
        QFile::remove(made);
      }
      if (isNew) {
        QDir().rmdir(folder);
      }
      return problem;
    }
    if (!replaces) {
      written.append(path);
    }
  }
  return std::nullopt;
}

}  // namespace creasewright
