#pragma once

#include <QMenu>
#include <string>

#include "document/own_style.h"
#include "session/design_session.h"

namespace creasewright {

class GalleryView;

/// What makes a style of a design, and a design of a style; and what is done with the person's own
/// styles in the gallery.
class DesignMenu : public QMenu {
  Q_OBJECT

 public:
  DesignMenu(DesignSession& session, GalleryView& gallery, QWidget* window);

  /// Takes a style from a file into the person's own ones.
  void take(const QString& path);

 signals:
  void galleryAsked();
  void told(const QString& sentence);

 private:
  void keep();
  void askForFile();
  void change(const QString& id);
  void saveCopy(const QString& id);
  void remove(const QString& id);
  bool mayReplace(const OwnStyle& kept, const OwnStyle& taken);
  void complain(const Problem& problem);

  DesignSession& session_;
  GalleryView& gallery_;
  QWidget* window_;
  std::string changing_;  ///< id of the style that was opened for changing
};

}  // namespace creasewright
