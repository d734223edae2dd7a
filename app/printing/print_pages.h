#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// Printers of this computer, the usual one first.
QStringList printers();

/// Prints the pages in true size, one sheet each: the drawing's size is the paper's, nothing is
/// scaled or moved. False when the printer does not take the job.
bool printPages(const std::vector<Drawing>& pages, const QString& printer, const QString& title,
                Unit unit);

}  // namespace creasewright
