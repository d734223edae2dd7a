#pragma once

#include <QWidget>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "panels/parameter_rows.h"
#include "session/affected_panels.h"
#include "session/design_session.h"

class QVBoxLayout;

namespace creasewright {

/// The style's own measures. Each says where its value comes from, and lights up in the net while
/// it has the focus.
class MeasuresPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MeasuresPanel(DesignSession& session, QWidget* parent = nullptr);

  /// Puts the cursor into the field of a parameter; false when there is none.
  bool focusParameter(const std::string& key);
  /// The field of a length parameter, or nullptr.
  [[nodiscard]] LengthEdit* lengthField(const std::string& key);

 private:
  /// Whether the rows are those of the design in hand.
  [[nodiscard]] bool isShown() const;
  void makeRows();
  void showDesign();
  void showUnit(Unit unit);
  void showNotes();
  [[nodiscard]] QString noteFor(const std::string& key) const;
  [[nodiscard]] QString complaintFor(const std::string& key, const Problems& problems) const;
  void showLit();
  const Place& placeOf(const std::string& key);

  DesignSession& session_;
  QVBoxLayout* layout_;
  std::string styleId_;
  std::vector<std::string_view> seen_;  ///< keys of the style that have a row
  ParameterRows* rows_ = nullptr;
  std::optional<AffectedPanels> affected_;  // both found when they are asked for
  std::map<std::string, Place> places_;
};

}  // namespace creasewright
