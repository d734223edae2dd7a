#pragma once

#include <QStringList>
#include <optional>
#include <vector>

#include "edits/pull.h"
#include "edits/pull_together.h"
#include "session/design_session.h"

namespace creasewright {

/// A part of the net in the hand, from the press of the mouse to its release: a line, the two lines
/// that meet in a corner, or a distance that is typed. Every move changes the measure that moves
/// each of them most, or another one that is chosen, or all of them together and each as little as
/// can be; all as one undo step.
class NetPull {
 public:
  /// Nothing when no measure moves any of them; those that none moves are left out.
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
  /// All measures together, where there are several.
  void chooseAll();
  /// Everything is as it was.
  void cancel();

  /// Outward normal of the first line.
  [[nodiscard]] Point normal() const { return held_.front().normal; }
  [[nodiscard]] int count() const { return static_cast<int>(held_.size()); }
  /// Titles of the measures that move the first thing, the strongest first.
  [[nodiscard]] QStringList measures() const;
  /// Whether there are several to pull with together.
  [[nodiscard]] bool canPullWithAll() const { return openKeys().size() > 1; }
  /// Titles of the measures that move each of the things most.
  [[nodiscard]] QStringList strongest() const;
  /// What stopped the hand, in words; empty when nothing did.
  [[nodiscard]] QStringList limits() const;
  /// What stands beside the pointer: the measures and their values, what stopped them, where the
  /// line lies on the sheet, other measures to choose.
  [[nodiscard]] const QStringList& words() const { return words_; }

 private:
  struct Held {
    Movable thing;
    Point normal = {};
    std::vector<PullWay> ways = {};
    double by = 0;
  };

  NetPull(DesignSession& session, std::vector<Held> held);
  /// The measures of `held` that the grip leaves.
  [[nodiscard]] std::vector<const PullWay*> openWays(const Held& held) const;
  /// Those of all things, each once.
  [[nodiscard]] std::vector<std::string_view> openKeys() const;
  /// The measures that a move changes: the chosen one of the first thing and the strongest other
  /// one of the second, or all.
  [[nodiscard]] std::vector<std::string_view> keysToChange() const;
  void move();
  void moveAlone(const PullWay& way);
  void moveTogether(const std::vector<std::string_view>& keys);
  void changeTo(const Parameters& measures);
  [[nodiscard]] QStringList wordsNow() const;
  void addReadings(QStringList& lines) const;
  void addChoices(QStringList& lines) const;

  DesignSession* session_;
  std::vector<Held> held_;
  Design start_;
  std::optional<HeldThing> alone_;  ///< the first thing in start_
  QString field_;                   // of the undo step, so that all moves are one
  int chosen_ = 0;
  bool withAll_ = false;
  std::vector<std::string_view> used_;  // the measures that the last move changed
  std::optional<Problem> stopped_;
  QStringList words_;
  Grip grip_;
};

}  // namespace creasewright
