#include "shelf/shelf_folder.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <algorithm>

#include "bridge/text.h"
#include "document/design_file.h"
#include "document/file_io.h"
#include "kits/bundle.h"
#include "own_stock/stock_store.h"

namespace creasewright {

namespace {

const QString entryEnding = QStringLiteral(".cwdesign");

std::string encoded(const QString& path) { return QFile::encodeName(path).toStdString(); }

/// A title as a file's name: letters, digits and a few signs, not too long.
QString fileName(const QString& title) {
  QString name;
  for (const QChar c : title.left(60))
    name += c.isLetterOrNumber() || c == u'-' || c == u'_' || c == u' ' ? c : QChar(u'-');
  return name.trimmed();
}

}  // namespace

ShelfFolder ShelfFolder::ofUser() {
  return ShelfFolder(
      QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath("shelf"));
}

std::vector<ShelfEntry> ShelfFolder::files() const {
  std::vector<ShelfEntry> entries;
  const QFileInfoList files =
      QDir(folder_).entryInfoList({QLatin1Char('*') + entryEnding}, QDir::Files, QDir::Time);
  for (const QFileInfo& file : files)
    entries.push_back({file.filePath(), file.lastModified(), std::nullopt, false});
  return entries;
}

std::vector<ShelfEntry> ShelfFolder::entries() const {
  std::vector<ShelfEntry> entries = files();
  for (ShelfEntry& entry : entries) {
    entry.read = true;
    if (Result<Design> design = readDesignFile(encoded(entry.path)))
      entry.design = std::move(design).value();
  }
  return entries;
}

QString ShelfFolder::freePath(const Design& design) const {
  QString name = fileName(design.title.empty() ? text(design.styleId) : text(design.title));
  if (name.isEmpty()) name = text(design.styleId);
  const QDir folder(folder_);
  QString path = folder.filePath(name + entryEnding);
  for (int number = 2; QFile::exists(path); ++number)
    path = folder.filePath(QStringLiteral("%1 %2%3").arg(name).arg(number).arg(entryEnding));
  return path;
}

Result<QString> ShelfFolder::put(const Design& design) const {
  if (!QDir().mkpath(folder_))
    return Problem{ProblemCode::FileNotWritten, folder_.toStdString(), {std::string("mkdir")}};
  const QString path = freePath(design);
  if (const auto problem = writeDesignFile(design, encoded(path))) return *problem;
  return path;
}

std::optional<Problem> ShelfFolder::add(const Design& design) const {
  const Result<QString> path = put(design);
  return path ? std::nullopt : std::optional(path.problem());
}

std::optional<Problem> ShelfFolder::addBundle(const QString& file) const {
  const Result<Bundle> bundle = readBundleFile(encoded(file));
  if (!bundle) return bundle.problem();
  if (auto problem = addToOwnLists(bundle->stock, bundle->supplies)) return problem;
  QStringList written;
  for (const Design& design : bundle->designs) {
    const Result<QString> path = put(design);
    if (!path) {
      for (const QString& taken : written) QFile::remove(taken);
      return path.problem();
    }
    written.append(*path);
  }
  return std::nullopt;
}

bool ShelfFolder::remove(const QString& path) {
  return QFile::moveToTrash(path) || QFile::remove(path);
}

}  // namespace creasewright
