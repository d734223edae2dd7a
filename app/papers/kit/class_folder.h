#pragma once

#include "papers/kit/write_kit.h"

namespace creasewright {

/// Writes all that a class needs into a folder, by the plan as it is, all or nothing: `plan.pdf`
/// and `plan.csv`, the kit itself, and of every design its template and its guide, numbered as in
/// the kit. Needs a QGuiApplication. Errors: those of kitFileText and templatePdf, FileNotWritten.
std::optional<Problem> writeClassFolder(const KitPlan& plan, const QString& folder,
                                        const KitChoices& choices);

}  // namespace creasewright
