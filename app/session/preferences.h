#pragma once

#include <QDateTime>
#include <QString>
#include <QStringList>

#include "papers/guide/guide_form.h"
#include "units/length.h"
#include "units/tool_grid.h"
#include "widgets/theme.h"

namespace creasewright {

// What the program remembers between starts (QSettings).

/// Millimetres or inches; by the country's own measures until the person chooses.
Unit preferredUnit();
void setPreferredUnit(Unit unit);

/// The unit to show a design in: the one the person chose, else that of its tool grid, else the
/// country's.
Unit unitShown(ToolGrid grid);

ThemeChoice preferredTheme();
void setPreferredTheme(ThemeChoice choice);

/// `de`, `en`, or empty to follow the system.
QString preferredLanguage();
void setPreferredLanguage(const QString& language);

/// Id of the paper in the printer; A4 or letter by the country until the person chooses.
QString preferredPaper();
void setPreferredPaper(const QString& id);

/// How a guide was last set; standard, in colours, for the right hand until the person chooses.
GuideForm preferredGuideForm();
void setPreferredGuideForm(const GuideForm& form);

/// When a file on the shelf was last opened from there; invalid = never.
QDateTime lastUse(const QString& path);
void rememberUse(const QString& path);

/// Whether the window was never begun with on this machine.
bool isFirstStart();
void rememberStart();

/// Newest first, at most eight, files that still exist.
QStringList recentFiles();
void rememberFile(const QString& path);

}  // namespace creasewright
