#pragma once

#include "papers/kit/write_kit.h"
#include "session/design_session.h"

class QWidget;

namespace creasewright {

/// Asks where a class's papers shall go, and writes them there as they are; nothing plans anew. A
/// problem is told in a box.
class KitSaving {
 public:
  KitSaving(const DesignSession& session, QWidget* window) : session_(session), window_(window) {}

  /// The person's unit and paper, and the time now.
  [[nodiscard]] KitChoices choices() const;

  /// Where the person wants it, with the ending; empty when nowhere.
  [[nodiscard]] QString askFile(const ClassKit& kit, const QString& ending,
                                const QString& filter) const;
  [[nodiscard]] QString askFolder(const QString& title) const;

  // Each says whether it was written; an empty path is left alone.

  bool savePlan(const KitPlan& plan, const QString& path) const;
  bool saveFolder(const KitPlan& plan, const QString& folder) const;
  /// The kit itself, planned or not.
  bool saveKit(const ClassKit& kit, const QString& path) const;
  /// Real outlines nested on carrier sheets as large as the kit's first sheet.
  bool saveMats(const BuiltKit& kit, const QString& folder) const;

 private:
  [[nodiscard]] bool written(const std::optional<Problem>& problem) const;

  const DesignSession& session_;
  QWidget* window_;
};

}  // namespace creasewright
