#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QStringList>
#include <optional>

#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

struct GuideChoices {
  GuideUnits units = GuideUnits::Both;
  Paper paper;       ///< PDF
  GuideForm form;    ///< PDF, HTML
  QString language;  ///< of the words, for HTML
  QDateTime now;     ///< in the PDF; invalid = none
};

/// Endings that writeGuide knows: `pdf`, `html`. A path without an ending, or that ends in `/`, is
/// a folder.
QStringList guideEndings();
bool namesGuideFolder(const QString& path);

/// The guide as pages. Needs a QGuiApplication. Error: FileNotWritten (no place).
Result<QByteArray> guidePdf(const BuiltDesign& built, const GuideChoices& choices);

/// Writes the guide in the form its path names. All or nothing. PDF and folder need a
/// QGuiApplication. Error: FileNotWritten (path, reason).
std::optional<Problem> writeGuide(const BuiltDesign& built, const QString& path,
                                  const GuideChoices& choices);

}  // namespace creasewright
