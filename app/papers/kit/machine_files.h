#pragma once

#include <QDateTime>
#include <QString>
#include <optional>

#include "kits/machine_layouts.h"
#include "units/paper.h"

namespace creasewright {

/// The size of the carrier sheet that holds the card in the machine, and how close nets may lie.
struct MachineChoices {
  Length width = Length::inches(12);
  Length height = Length::inches(12);
  NestOptions nesting;
  Paper paper;  ///< of the overview
  Unit unit = Unit::Millimetre;
  QDateTime now;  ///< in the PDF; invalid = none
};

/// All carriers on upright pages, small: what lies where, and how often each is cut.
std::vector<Drawing> machinePages(const MachinePlan& plan, const MachineChoices& choices);

/// Nests the kit's nets and writes an SVG file for each layout of a carrier, named by card, number
/// and how often it is cut, and `carriers.pdf` with all of them to look at. Needs a
/// QGuiApplication. Errors: those of planMachine, FileNotWritten.
std::optional<Problem> writeMachineFolder(const BuiltKit& kit, const QString& folder,
                                          const MachineChoices& choices);

}  // namespace creasewright
