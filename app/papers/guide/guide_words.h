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
  QStringList sentences = {};
  QStringList details = {};  ///< exactly which folds and joins, to look up: in smaller type
  QStringList checks = {};   ///< what must be true before the next step
  bool list = false;         ///< each sentence stands on a line of its own

  /// All that is told, in order.
  [[nodiscard]] QStringList told() const { return sentences + details; }
  /// The sentences as they are set: one paragraph, or a line each.
  [[nodiscard]] QStringList paragraphs() const;
};

/// A sheet to be cut, as a row of a table.
struct PartWords {
  QString letter;
  QString name;
  QString count;
  QString size;
  QString card;
};

/// A guide in the user's language: whole sentences for its codes and numbers.
struct GuideWords {
  QString title;
  QString style;
  QString size;  ///< finished, empty when no piece holds a product
  QString level;
  QString time;
  QString notes;                 ///< of the design, the first 240 letters; empty when it has none
  QString hand;                  ///< whose hand it is told for; empty for the right one
  QStringList supplies;          ///< all of them as sentences
  std::vector<PartWords> parts;  ///< those that are sheets, as a table
  QStringList sticking;          ///< those that are not
  QStringList tools;
  QStringList cautions;
  std::vector<StepWords> steps;

  /// What is told in short under the title.
  [[nodiscard]] QStringList facts() const;
};

/// What is told at the end of a guide; nothing without lines.
struct GuideNote {
  QString heading;
  QStringList lines;
};

GuideWords wordGuide(const Guide& guide, const BuiltDesign& built, GuideUnits units);

/// Headings of a guide's parts.
QString suppliesHeading();
QString partsHeading();
QString toolsHeading();
QString cautionsHeading();
QString stepsHeading();

}  // namespace creasewright
