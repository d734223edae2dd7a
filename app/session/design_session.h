#pragma once

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>
#include <QUndoStack>
#include <functional>
#include <future>
#include <optional>

#include "document/build.h"
#include "session/selection.h"

namespace creasewright {

/// The open design: its value, what follows from it, its file and its undo history. Everybody shows
/// `built()` and listens to `changed()`.
class DesignSession : public QObject {
  Q_OBJECT

 public:
  explicit DesignSession(QObject* parent = nullptr);

  [[nodiscard]] const Design& design() const { return design_; }
  /// The last design that could be built; it is `design()` while isCurrent().
  [[nodiscard]] const BuiltDesign& built() const { return built_; }
  /// Whether built() shows the present numbers. If not, problems() says what stands against it.
  [[nodiscard]] bool isCurrent() const { return current_; }
  [[nodiscard]] const Problems& problems() const;
  /// The same but for those that the way of folding meets: nobody waits for them.
  [[nodiscard]] Problems problemsOfNumbers() const;

  /// While a hand changes the design many times a second, the way of folding is looked at beside
  /// everything else; who shows problems() then waits until the pictures are painted.
  void setInHand(bool held) { inHand_ = held; }
  [[nodiscard]] bool isInHand() const { return inHand_; }

  /// Puts a value in place without touching the history; for undo commands.
  void apply(const Design& design);
  /// Starts over with another design; `path` is empty for a new one.
  void start(const Design& design, const QString& path);

  [[nodiscard]] QUndoStack& history() { return history_; }
  [[nodiscard]] bool isDirty() const { return unsaved_ || !history_.isClean(); }
  [[nodiscard]] const QString& path() const { return path_; }
  /// The title, else the file's name, else "Untitled".
  [[nodiscard]] QString displayName() const;

  /// Nothing when it went well; the design in hand stays untouched when it did not.
  std::optional<Problem> open(const QString& path);
  std::optional<Problem> saveAs(const QString& path);
  /// Takes over a design found after a crash: it counts as unsaved.
  void recover(const Design& design, const QString& path);
  /// The file no longer holds this design: until saved it counts as unsaved.
  void markUnsaved();

  /// Asked for warnings beyond those of the design itself, paper and sheets: when a design is
  /// started, and after a change as soon as the hand rests.
  using Warner = std::function<Problems(const BuiltDesign&)>;
  void setWarner(Warner warner);

  /// What the person chose, else the unit of the design's own tool grid, else the country's.
  [[nodiscard]] Unit unit() const { return unit_; }
  /// The person's choice.
  void setUnit(Unit unit);

  /// What is lit in all views.
  [[nodiscard]] Selection& selection() { return selection_; }
  [[nodiscard]] const Selection& selection() const { return selection_; }

 signals:
  void changed();
  void fileChanged();  ///< path or dirty mark
  void stored();       ///< the file at path() holds this design: just read or written
  void unitChanged(Unit unit);

 private:
  void put(const Design& design, bool another);
  void rebuild();
  void warn();
  void warnAgain();
  void lookAtFolding();
  void followGrid();
  void showUnit(Unit unit);

  Design design_;
  BuiltDesign built_;
  mutable Problems problems_;
  mutable bool collected_ = false;  ///< problems_ are those of built_
  std::future<void> looking_;       ///< at the way of folding of built_
  QThreadPool looker_;              ///< a thread that is there already when a line is pulled
  bool inHand_ = false;
  bool current_ = false;
  bool unsaved_ = false;  ///< whatever the history says
  QString path_;
  QUndoStack history_;
  Warner warner_;
  Problems warnings_;  ///< of warner_
  QTimer rest_;        ///< runs until the hand rests
  Unit unit_ = Unit::Millimetre;
  bool unitChosen_ = false;
  std::optional<ToolGrid> followed_;  ///< the grid that last chose the unit
  Selection selection_;
};

/// The design a new window starts with; its tool grid goes with the person's unit.
Design freshDesign();

}  // namespace creasewright
