#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QStringList>
#include <optional>

#include "kits/bag_labels.h"
#include "kits/plan_kit.h"
#include "units/paper.h"

namespace creasewright {

struct KitChoices {
  Unit unit = Unit::Millimetre;
  Paper paper;    ///< PDF
  QDateTime now;  ///< in the PDF; invalid = none
};

/// The plan as pages. Needs a QGuiApplication. Error: FileNotWritten (no place).
Result<QByteArray> kitPdf(const ClassKit& kit, const KitPlan& plan, const KitChoices& choices);

/// Endings that writeKitPlan knows: `pdf`, `json`, `csv`, `cwkit`.
QStringList kitEndings();

/// What a `.cwkit` file holds; `path` is for problems. Errors: those of kitFileText.
Result<QByteArray> kitBytes(const ClassKit& kit, const QString& path);

/// Writes the plan of a kit in the form its path names, `plan` or else a new one made with
/// `options`; `cwkit` saves the kit itself, unplanned. All or nothing; a PDF needs a
/// QGuiApplication. Errors: those of planKit and kitFileText, FileNotWritten.
std::optional<Problem> writeKitPlan(const ClassKit& kit, const QString& path,
                                    const KitChoices& choices, const KitPlan* plan = nullptr,
                                    const PlanOptions& options = {});

}  // namespace creasewright
