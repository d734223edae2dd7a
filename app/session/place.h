#pragma once

#include <QMetaType>
#include <QString>
#include <QStringList>
#include <vector>

#include "geometry/point.h"

namespace creasewright {

/// A thing of the design that every view can show in its own way: a panel, a fold, a cut, a
/// measure, a step. What is empty the thing has not.
struct Place {
  int piece = -1;                   ///< of BuiltDesign::pieces; -1 = whichever has the panels
  QStringList panels = {};          ///< ids; of a line those it belongs to
  std::vector<int> creases = {};    ///< indices into the piece's Net::creases
  std::vector<Segment> lines = {};  ///< what is scored or cut there: blank coordinates, mm
  QString measure = {};             ///< key of a parameter
  double progress = -1;             ///< of the folded piece when it is done, 0..1; -1 = no fold

  [[nodiscard]] bool isEmpty() const { return panels.isEmpty() && lines.empty(); }
  bool operator==(const Place&) const = default;
};

/// Whether `thing` is lit while `selected` is: the same fold where both have folds, the same panel
/// where one of them is a panel.
bool lights(const Place& selected, const Place& thing);

}  // namespace creasewright

Q_DECLARE_METATYPE(creasewright::Place)
