#pragma once

#include <QString>
#include <QUndoCommand>
#include <utility>

namespace creasewright {

/// The one undo command: swaps the whole value of a session (a design, a class kit) by its
/// `apply()`. Going on in the same field merges into one step.
template <class Session, class Value>
class ValueChange : public QUndoCommand {
 public:
  /// `field` names what is being changed; an empty field never merges.
  ValueChange(Session& session, Value before, Value after, const QString& text,
              const QString& field)
      : QUndoCommand(text),
        session_(session),
        before_(std::move(before)),
        after_(std::move(after)),
        field_(field) {}

  void undo() override { session_.apply(before_); }
  void redo() override { session_.apply(after_); }
  [[nodiscard]] int id() const override { return 1; }
  bool mergeWith(const QUndoCommand* other) override {
    const auto* next = static_cast<const ValueChange*>(other);
    if (field_.isEmpty() || next->field_ != field_) return false;
    after_ = next->after_;
    setObsolete(after_ == before_);
    return true;
  }

 private:
  Session& session_;
  Value before_;
  Value after_;
  QString field_;
};

/// Puts a changed value in place as one undo step called `words`; an equal one makes no step.
template <class Session, class Value>
void pushChange(Session& session, const Value& before, Value after, const QString& words,
                const QString& field) {
  if (after != before) {
    session.history().push(
        new ValueChange<Session, Value>(session, before, std::move(after), words, field));
  }
}

}  // namespace creasewright
