#pragma once

#include <QString>
#include <QUndoCommand>

#include "session/kit_session.h"

namespace creasewright {

/// Swaps the value of a class kit. Going on in the same field merges into one step.
class ChangeKit : public QUndoCommand {
 public:
  /// `field` names what is being changed; an empty field never merges.
  ChangeKit(KitSession& session, ClassKit after, const QString& text, const QString& field);

  void undo() override { session_.apply(before_); }
  void redo() override { session_.apply(after_); }
  [[nodiscard]] int id() const override { return 1; }
  bool mergeWith(const QUndoCommand* other) override;

 private:
  KitSession& session_;
  ClassKit before_;
  ClassKit after_;
  QString field_;
};

}  // namespace creasewright
