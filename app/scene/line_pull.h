#pragma once

#include <QStringList>
#include <optional>
#include <vector>

#include "edits/pull.h"
#include "session/design_session.h"

namespace creasewright {

/// A line of the net in the hand, from the press of the mouse to its release: every move changes
/// the measure that moves the line most, or another one of those that move it, as one undo step.
class LinePull {
 public:
  /// Nothing when no measure moves the line.
  static std::optional<LinePull> take(DesignSession& session, const Handle& handle);

  /// How the hand pulls.
  struct Grip {
    bool keepCavity = false;  ///< only measures that the product does not ask for
    bool offGrid = false;
  };

  /// The line shall lie `byMm` farther along its normal than when it was taken.
  void moveTo(double byMm, Grip grip);
  /// Another measure, by its place in the list beside the pointer, from 0.
  void choose(int way);
  /// Everything is as it was.
  void cancel();

  [[nodiscard]] const Handle& handle() const { return handle_; }
  [[nodiscard]] Point normal() const { return normal_; }
  /// Title of the measure that moves the line most.
  [[nodiscard]] QString measure() const;
  /// What stands beside the pointer: the measure and its value, what stopped it, other measures.
  [[nodiscard]] QStringList words() const;

 private:
  LinePull(DesignSession& session, Handle handle, std::vector<PullWay> ways, Point normal);
  [[nodiscard]] const PullWay* way(Grip grip) const;

  DesignSession* session_;
  Handle handle_;
  std::vector<PullWay> ways_;
  Point normal_;
  Design start_;
  QString field_;  // of the undo step, so that all moves are one
  int chosen_ = 0;
  double by_ = 0;
  Grip grip_;
  std::optional<Problem> stopped_;
};

}  // namespace creasewright
