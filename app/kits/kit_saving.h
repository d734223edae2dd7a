#pragma once

#include "kits/write_kit.h"
#include "session/design_session.h"

class QWidget;

namespace creasewright {

/// Asks where a class's papers shall go and writes them; a problem is told in a box. Each says
/// whether something was written.
class KitSaving {
 public:
  KitSaving(const DesignSession& session, QWidget* window) : session_(session), window_(window) {}

  /// The person's unit and paper, and the time now.
  [[nodiscard]] KitChoices choices() const;
  /// `plan` is the one that is shown; nothing plans anew.
  bool asFile(const ClassKit& kit, const KitPlan* plan, const QString& ending,
              const QString& filter) const;
  bool asFolder(const ClassKit& kit, const KitPlan* plan) const;
  /// Real outlines nested on carrier sheets as large as the kit's first sheet.
  bool asMats(const ClassKit& kit) const;

 private:
  [[nodiscard]] bool written(const std::optional<Problem>& problem) const;

  const DesignSession& session_;
  QWidget* window_;
};

}  // namespace creasewright
