#include "output/write_bytes.h"

#include <QFile>

#include "document/file_io.h"

namespace creasewright {

std::optional<Problem> writeBytes(const QString& path, const Result<QByteArray>& bytes) {
  if (!bytes) {
    Problem problem = bytes.problem();
    if (problem.code == ProblemCode::FileNotWritten) problem.where = path.toStdString();
    return problem;
  }
  return writeFileAtomically(QFile::encodeName(path).toStdString(),
                             {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

}  // namespace creasewright
