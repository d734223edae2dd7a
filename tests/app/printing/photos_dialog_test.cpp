#include "printing/photos_dialog.h"

#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>
#include <QUndoStack>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

QString savedPicture(const QTemporaryDir& folder) {
  QImage image(40, 30, QImage::Format_RGB32);
  image.fill(Qt::darkRed);
  QString path = folder.filePath(QStringLiteral("box.png"));
  image.save(path);
  return path;
}

TEST(PhotosDialog, AddsNamesAndTakesOutEachAsOneUndoStep) {
  const QTemporaryDir folder;
  DesignSession session;
  PhotosDialog dialog(session);
  ASSERT_GT(dialog.places().count(), 3);
  dialog.places().setCurrentRow(2);
  EXPECT_FALSE(dialog.removing().isEnabled());
  dialog.put(savedPicture(folder));
  ASSERT_EQ(session.design().photos.size(), 1U);
  EXPECT_FALSE(session.design().photos[0].step.empty());
  EXPECT_TRUE(dialog.places().item(2)->text().contains(QStringLiteral("photo")));
  dialog.caption().setText(QStringLiteral("Score so"));
  emit dialog.caption().editingFinished();
  EXPECT_EQ(session.design().photos[0].caption, "Score so");
  dialog.removing().click();
  EXPECT_TRUE(session.design().photos.empty());
  session.history().undo();
  EXPECT_EQ(session.design().photos[0].caption, "Score so");
  session.history().undo();
  EXPECT_EQ(session.design().photos[0].caption, "");
  session.history().undo();
  EXPECT_TRUE(session.design().photos.empty());
}

TEST(PhotosDialog, WhatCannotServeIsToldAndNothingIsLost) {
  const QTemporaryDir folder;
  DesignSession session;
  PhotosDialog dialog(session);
  dialog.put(savedPicture(folder));
  const std::vector<Photo> before = session.design().photos;
  ASSERT_EQ(before.size(), 1U);
  const QString broken = folder.filePath(QStringLiteral("broken.jpg"));
  QFile file(broken);
  file.open(QIODevice::WriteOnly);
  file.write("no picture");
  file.close();
  for (const QString& path : {broken, folder.filePath(QStringLiteral("missing.png"))}) {
    dialog.put(path);
    EXPECT_TRUE(dialog.status().text().contains(path)) << path.toStdString();
    EXPECT_EQ(session.design().photos, before);
  }
}

}  // namespace
}  // namespace creasewright
