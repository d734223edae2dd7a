#pragma once

#include <QString>
#include <optional>

#include "kits/class_kit.h"
#include "kits/nesting.h"

namespace creasewright {

/// A mat's size and how close nets may lie.
struct MachineChoices {
  Length width = Length::inches(12);
  Length height = Length::inches(12);
  NestOptions nesting;
};

/// Nests the kit's nets and writes an SVG file for each mat layout, named by card, number and how
/// often it is cut. Errors: those of planMachine, FileNotWritten.
std::optional<Problem> writeMachineFolder(const ClassKit& kit, const QString& folder,
                                          const MachineChoices& choices);

}  // namespace creasewright
