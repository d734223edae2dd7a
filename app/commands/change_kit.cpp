#include "commands/change_kit.h"

namespace creasewright {

ChangeKit::ChangeKit(KitSession& session, ClassKit after, const QString& text, const QString& field)
    : QUndoCommand(text),
      session_(session),
      before_(session.kit()),
      after_(std::move(after)),
      field_(field) {}

bool ChangeKit::mergeWith(const QUndoCommand* other) {
  const auto* next = static_cast<const ChangeKit*>(other);
  if (field_.isEmpty() || next->field_ != field_) {
    return false;
  }
  after_ = next->after_;
  setObsolete(after_ == before_);
  return true;
}

}  // namespace creasewright
