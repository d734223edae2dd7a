#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QStringList>
#include <optional>

#include "base/result.h"
#include "kits/kit_plan.h"
#include "units/paper.h"

namespace creasewright {

struct KitChoices {
  Unit unit = Unit::Millimetre;
  Paper paper;    ///< PDF
  QDateTime now;  ///< in the PDF; invalid = none
};

/// The plan as pages, as kitPages lays them out; nothing is planned. Needs a QGuiApplication.
/// Error: FileNotWritten (no place).
Result<QByteArray> kitPdf(const KitPlan& plan, const KitChoices& choices);

/// Endings of what can be written of a class: `pdf`, `json`, `csv` for a plan, `cwkit` for the kit
/// itself.
QStringList kitEndings();
/// Whether a path names the kit itself, which is saved without a plan.
bool namesKit(const QString& path);

/// What a `.cwkit` file holds; `path` is for problems. Errors: those of kitFileText.
Result<QByteArray> kitBytes(const ClassKit& kit, const QString& path);

/// Saves the kit itself, all or nothing. Errors: those of kitFileText, FileNotWritten.
std::optional<Problem> writeKitFile(const ClassKit& kit, const QString& path);

/// Writes a plan as it is in the form its path names, all or nothing; a PDF needs a
/// QGuiApplication. Errors: those of kitFileText, FileNotWritten.
std::optional<Problem> writeKitPlan(const KitPlan& plan, const QString& path,
                                    const KitChoices& choices);

}  // namespace creasewright
