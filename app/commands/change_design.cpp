#include "commands/change_design.h"

namespace creasewright {

ChangeDesign::ChangeDesign(DesignSession& session, Design after, const QString& text,
                           const QString& field)
    : QUndoCommand(text),
      session_(session),
      before_(session.design()),
      after_(std::move(after)),
      field_(field) {}

bool ChangeDesign::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const ChangeDesign*>(other);
  if (field_.isEmpty() || next->field_ != field_) {
    return false;
  }
  after_ = next->after_;
  setObsolete(after_ == before_);
  return true;
}

}  // namespace creasewright
