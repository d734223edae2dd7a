#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <vector>

#include "document/build.h"
#include "guide/guide.h"
#include "papers/guide/guide_lengths.h"

namespace creasewright {

/// Translation context of the guide.
struct GuideTr {
  Q_DECLARE_TR_FUNCTIONS(guide)
};

/// A step in the user's language.
struct StepWords {
  QString title;
  QStringList sentences;
  QStringList checks;  ///< what must be true before the next step
};

/// A guide in the user's language: whole sentences for its codes and numbers.
struct GuideWords {
  QString title;
  QString style;
  QString size;  ///< finished, empty when no piece holds a product
  QString level;
  QString time;
  QStringList supplies;
  QStringList tools;
  QStringList cautions;
  std::vector<StepWords> steps;
};

GuideWords wordGuide(const Guide& guide, const BuiltDesign& built, GuideUnits units);

/// Headings of a guide's parts.
QString suppliesHeading();
QString toolsHeading();
QString cautionsHeading();
QString stepsHeading();

}  // namespace creasewright
