#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "document/design.h"
#include "units/length_text.h"

class QLabel;
class QListWidget;

namespace creasewright {

/// The finished gifts that come with the program, for rulers in inches or in millimetres,
/// with titles and notes in the language of the window.
std::vector<Design> sampleGifts(Unit unit);

/// The samples with pictures, to begin with one of them: a copy, which belongs to no file yet.
class SamplesWindow : public QDialog {
  Q_OBJECT

 public:
  explicit SamplesWindow(Unit unit, QWidget* parent = nullptr);

  /// What the person begins with; nothing when the window was closed without a choice.
  [[nodiscard]] const std::optional<Design>& chosen() const { return chosen_; }

 private:
  void showNotes(int row);
  void take();

  std::vector<Design> gifts_;
  QListWidget* list_;
  QLabel* notes_;
  std::optional<Design> chosen_;
};

}  // namespace creasewright
