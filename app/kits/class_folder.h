#pragma once

#include "kits/write_kit.h"

namespace creasewright {

/// Writes all that a class needs into a folder, by `plan` or else a new one, all or nothing:
/// `plan.pdf` and `plan.csv`, the kit itself, and of every design its template and its guide,
/// numbered as in the kit. Needs a QGuiApplication. Errors: those of planKit, kitFileText and
/// templatePdf, FileNotWritten.
std::optional<Problem> writeClassFolder(const ClassKit& kit, const QString& folder,
                                        const KitChoices& choices, const KitPlan* plan = nullptr,
                                        const PlanOptions& options = {});

}  // namespace creasewright
