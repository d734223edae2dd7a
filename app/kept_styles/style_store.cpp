#include "kept_styles/style_store.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace creasewright {

namespace {

std::string folderBytes() { return QFile::encodeName(ownStylesFolder()).toStdString(); }

}  // namespace

QString ownStylesFolder() {
  const QString base = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  return QDir(base).filePath(QStringLiteral("styles"));
}

std::vector<StyleFile> ownStyleFiles() { return stylesIn(folderBytes()); }

std::optional<OwnStyle> ownStyleCalled(std::string_view id) {
  if (!isOwnStyleId(id)) return std::nullopt;
  Result<OwnStyle> style = readOwnStyleFile(styleFileIn(folderBytes(), id));
  if (style && style->id == id) return std::move(style).value();
  for (StyleFile& file : ownStyleFiles())
    if (file.style && file.style->id == id) return std::move(file.style).value();
  return std::nullopt;
}

std::optional<Problem> storeOwnStyle(const OwnStyle& style) {
  QDir().mkpath(ownStylesFolder());
  return writeOwnStyleFile(style, styleFileIn(folderBytes(), style.id));
}

std::optional<Problem> removeOwnStyle(std::string_view id) {
  for (const StyleFile& file : ownStyleFiles()) {
    if (!file.style || file.style->id != id) continue;
    QFile own(QFile::decodeName(file.path.c_str()));
    if (own.moveToTrash() || own.remove()) continue;
    return Problem{ProblemCode::FileNotWritten, file.path, {own.errorString().toStdString()}};
  }
  return std::nullopt;
}

}  // namespace creasewright
