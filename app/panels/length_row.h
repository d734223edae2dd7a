#pragma once

#include <QWidget>

#include "widgets/length_edit.h"

class QLabel;

namespace creasewright {

/// A labelled length field with a quiet line of explanation under it.
class LengthRow : public QWidget {
  Q_OBJECT

 public:
  explicit LengthRow(const QString& label, QWidget* parent = nullptr);

  [[nodiscard]] LengthEdit& field() { return *field_; }
  /// An empty note takes no room.
  void setNote(const QString& note);
  /// Shows a problem instead of the note; empty brings the note back. What the field itself cannot
  /// read comes before both.
  void setComplaint(const QString& sentence);
  /// Tinted: what it measures is lit elsewhere.
  void setLit(bool lit);

 signals:
  void pointedAt(bool in);  ///< the mouse has come or gone

 protected:
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  void showNote();

  LengthEdit* field_;
  QLabel* line_;
  QString note_;
  QString sentence_;
};

}  // namespace creasewright
