#pragma once

#include <QStringList>
#include <optional>
#include <vector>

#include "edits/pull.h"
#include "session/design_session.h"

namespace creasewright {

/// A part of the net in the hand, from the press of the mouse to its release: a line, the two lines
/// that meet in a corner, or a distance that is typed. Every move changes the measure that moves
/// each of them most, or another one that is chosen, all as one undo step.
class NetPull {
 public:
  /// Nothing when no measure moves any of them; those that none moves are left out. A measure moves
  /// one of them only.
  static std::optional<NetPull> take(DesignSession& session, const std::vector<Movable>& things);

  /// How the hand pulls.
  struct Grip {
    bool keepCavity = false;  ///< only measures that the product does not ask for
    bool offGrid = false;
  };

  /// Each line shall lie as far along its normal from where it was taken as `byMm` goes.
  void moveTo(Point byMm, Grip grip);
  /// The (first) distance shall be `byMm` larger than when it was taken.
  void growBy(double byMm, Grip grip);
  /// Another measure for the first thing, by its place in measures(), from 0.
  void choose(int way);
  /// Everything is as it was.
  void cancel();

  /// Outward normal of the first line.
  [[nodiscard]] Point normal() const { return held_.front().normal; }
  [[nodiscard]] int count() const { return static_cast<int>(held_.size()); }
  /// Titles of the measures that move the first thing, the strongest first.
  [[nodiscard]] QStringList measures() const;
  /// Titles of the measures that move each of the things most.
  [[nodiscard]] QStringList strongest() const;
  /// What stopped the hand, in words; empty when nothing did.
  [[nodiscard]] QStringList limits() const;
  /// What stands beside the pointer: the measures and their values, what stopped them, where the
  /// line lies on the sheet, other measures to choose.
  [[nodiscard]] QStringList words() const;

 private:
  struct Held {
    Movable thing;
    Point normal = {};
    std::vector<PullWay> ways = {};
    double by = 0;
    std::string_view used = {};  // the measure that the last move changed
    std::optional<Problem> stopped = {};
  };

  NetPull(DesignSession& session, std::vector<Held> held);
  /// The measures of `held` that the grip leaves and no other thing has taken.
  [[nodiscard]] std::vector<const PullWay*> openWays(const Held& held) const;
  void move();
  void addReadings(QStringList& lines) const;

  DesignSession* session_;
  std::vector<Held> held_;
  Design start_;
  QString field_;  // of the undo step, so that all moves are one
  int chosen_ = 0;
  Grip grip_;
};

}  // namespace creasewright
