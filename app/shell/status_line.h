#pragma once

#include <QDeadlineTimer>
#include <QObject>

class QStatusBar;

namespace creasewright {

/// What the status bar says: what lies under the mouse, and now and then a sentence, which stays
/// long enough to be read.
class StatusLine : public QObject {
  Q_OBJECT

 public:
  explicit StatusLine(QStatusBar* bar);

  void hover(const QString& words);
  void tell(const QString& sentence);

 private:
  QStatusBar* bar_;
  QDeadlineTimer kept_{0};
};

}  // namespace creasewright
