#pragma once

#include <QString>
#include <QUndoCommand>

#include "session/design_session.h"

namespace creasewright {

/// The one undo command: swaps the design's value. Typing on in the same field merges into one
/// step.
class ChangeDesign : public QUndoCommand {
 public:
  /// `field` names what is being changed; an empty field never merges.
  ChangeDesign(DesignSession& session, Design after, const QString& text, const QString& field);

  void undo() override { session_.apply(before_); }
  void redo() override { session_.apply(after_); }
  [[nodiscard]] int id() const override { return 1; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  DesignSession& session_;
  Design before_;
  Design after_;
  QString field_;
};

}  // namespace creasewright
