#pragma once

#include <QObject>
#include <QUndoStack>
#include <optional>

#include "kits/build_kit.h"

namespace creasewright {

/// The open class kit: its value, what is built of it, and its undo history. Everybody shows
/// `kit()` and listens to `changed()`.
class KitSession : public QObject {
  Q_OBJECT

 public:
  explicit KitSession(QObject* parent = nullptr) : QObject(parent) {}

  [[nodiscard]] const ClassKit& kit() const { return kit_; }
  /// The last kit that could be built, nothing before there was one; it is `kit()` while
  /// isCurrent().
  [[nodiscard]] const BuiltKit* built() const { return built_ ? &*built_ : nullptr; }
  /// Whether built() is of the present kit. If not, problem() says what stands against it.
  [[nodiscard]] bool isCurrent() const { return !problem_; }
  [[nodiscard]] const std::optional<Problem>& problem() const { return problem_; }
  /// What was built of a design of the kit; nullptr where it could not be.
  [[nodiscard]] const BuiltDesign* builtOf(const Design& design) const;

  /// Puts a value in place without touching the history; for undo commands.
  void apply(const ClassKit& kit);
  /// Starts over with another kit.
  void start(const ClassKit& kit);

  [[nodiscard]] QUndoStack& history() { return history_; }

 signals:
  void changed();

 private:
  ClassKit kit_;
  std::optional<BuiltKit> built_;
  std::optional<Problem> problem_;
  QUndoStack history_;
};

}  // namespace creasewright
