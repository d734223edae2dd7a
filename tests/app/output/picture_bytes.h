#pragma once

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

namespace creasewright::testing {

inline QByteArray encoded(const QImage& image, const char* format) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, format, 95);
  return bytes;
}

/// What `read` makes of a file of these bytes, whose name says nothing of its kind.
template <class Read>
auto readFrom(const QByteArray& bytes, Read read) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("picture"));
  QFile file(path);
  file.open(QIODevice::WriteOnly);
  file.write(bytes);
  file.close();
  return read(path);
}

}  // namespace creasewright::testing
