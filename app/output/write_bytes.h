#pragma once

#include <QByteArray>
#include <QString>
#include <optional>

#include "base/result.h"

namespace creasewright {

/// Writes what was made to a file, whole or not at all, or hands on why it could not be made; a
/// FileNotWritten without a place gets `path`.
std::optional<Problem> writeBytes(const QString& path, const Result<QByteArray>& bytes);

}  // namespace creasewright
