#pragma once

#include <QObject>

#include "session/design_session.h"
#include "session/file_watch.h"

class QAction;
class QMenu;
class QWidget;

namespace creasewright {

/// New, open, recent, save, save as, and the questions before work would be lost: unsaved, or
/// changed in its file by somebody else.
class FileActions : public QObject {
  Q_OBJECT

 public:
  FileActions(DesignSession& session, QWidget* window);

  void addTo(QMenu* menu);
  [[nodiscard]] QAction* newAction() const { return new_; }
  [[nodiscard]] QAction* openAction() const { return open_; }
  [[nodiscard]] QAction* saveAction() const { return save_; }

  /// Whether it is fine to leave the present design: saved, or the person agreed.
  bool mayLeave();
  /// Opens a file after mayLeave(); says what went wrong.
  void open(const QString& path);
  bool save();
  bool saveAs();
  /// The finished gifts that come with the program, to begin with one.
  void showSamples();

 signals:
  /// One more file was chosen, for a window of its own.
  void windowAsked(const QString& path);
  /// A style of somebody's own was opened or dropped.
  void styleAsked(const QString& path);

 private:
  QAction* make(const QString& icon, const QString& words, const QKeySequence& keys);
  void startNew();
  void askOpen();
  void showShelf();
  void editWords();
  void fillRecent();
  void complain(const Problem& problem);
  void askAboutFile();
  void askAboutChange();
  void askAboutLoss();
  bool mayReplace();
  [[nodiscard]] QString fileName() const;
  bool store(const QString& path);

  DesignSession& session_;
  FileWatch watch_;
  QWidget* window_;
  QAction* new_;
  QAction* open_;
  QAction* shelf_;
  QAction* samples_;
  QAction* save_;
  QAction* saveAs_;
  QAction* words_;
  QAction* stock_;
  QMenu* recent_ = nullptr;
};

}  // namespace creasewright
