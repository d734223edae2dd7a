#pragma once

#include <QObject>

#include "session/place.h"

namespace creasewright {

/// What is lit in all views: the thing under the mouse, else the one that a click or the keyboard
/// has chosen. Views tell it what was pointed at and listen; none knows another.
class Selection : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  /// What is lit now; empty = nothing.
  [[nodiscard]] const Place& lit() const { return hovered_.isEmpty() ? kept_ : hovered_; }
  [[nodiscard]] const Place& kept() const { return kept_; }

  void hover(const Place& place);
  void keep(const Place& place);
  void clear();
  /// The kept thing as it is after a change of the design; nobody has chosen anew.
  void follow(const Place& kept);

 signals:
  void changed();
  void chosen(const Place& place);  ///< keep() was asked, for what follows once: the fold's stage

 private:
  Place hovered_;
  Place kept_;
};

}  // namespace creasewright
