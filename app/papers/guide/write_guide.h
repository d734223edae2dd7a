#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QStringList>
#include <optional>
#include <span>
#include <vector>

#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

/// What is printed about a design.
enum class GuideKind {
  Steps,     ///< the hand-out
  Measures,  ///< one page of measures (papers/guide/measure_card.h)
  Talk       ///< for who shows it (papers/guide/talk_sheet.h)
};

/// As the command line names it: `steps`, `measures`, `talk`.
struct GuideKindName {
  QByteArray name;
  GuideKind kind;
};
std::span<const GuideKindName> guideKinds();

struct GuideChoices {
  GuideKind kind = GuideKind::Steps;  ///< PDF; the others are always the hand-out
  GuideUnits units = GuideUnits::Both;
  Paper paper;       ///< PDF
  GuideForm form;    ///< PDF, HTML
  GuideNote note;    ///< at the end
  QString language;  ///< of the words, for HTML
  QDateTime now;     ///< in the PDF; invalid = none
};

/// Endings that writeGuide knows: `pdf`, `html`. A path without an ending, or that ends in `/`, is
/// a folder.
QStringList guideEndings();
bool namesGuideFolder(const QString& path);

/// The pages of what is chosen, to be painted with lookOf(form).
std::vector<Drawing> guideSheets(const BuiltDesign& built, const GuideChoices& choices);

/// The guide as pages. Needs a QGuiApplication. Error: FileNotWritten (no place).
Result<QByteArray> guidePdf(const BuiltDesign& built, const GuideChoices& choices);

/// The guide as `ending` names it, `pdf` or `html`. Error: FileNotWritten (no place).
Result<QByteArray> guideBytes(const BuiltDesign& built, const QString& ending,
                              const GuideChoices& choices);

/// Writes the guide in the form its path names. All or nothing. PDF and folder need a
/// QGuiApplication. Error: FileNotWritten (path, reason).
std::optional<Problem> writeGuide(const BuiltDesign& built, const QString& path,
                                  const GuideChoices& choices);

}  // namespace creasewright
