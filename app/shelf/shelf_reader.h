#pragma once

#include <QImage>
#include <QSize>
#include <QString>
#include <chrono>
#include <memory>
#include <optional>
#include <vector>

#include "document/design.h"

namespace creasewright {

/// Reads the shelf's files and draws their pictures beside the window, one after the other: a file
/// that is slow to read holds neither the window nor its closing.
class ShelfReader {
 public:
  struct Entry {
    std::size_t number = 0;  ///< in the list that was given
    std::optional<Design> design;
  };
  struct Picture {
    QString path;
    QImage image;
  };

  ShelfReader();
  ShelfReader(const ShelfReader&) = delete;
  ShelfReader& operator=(const ShelfReader&) = delete;
  ~ShelfReader();

  /// Begins with these files; what was asked before is given up.
  void read(std::vector<QString> paths);
  /// Draws a picture once all files are read.
  void draw(const QString& path, const Design& design, QSize size);

  /// What has been read since the last call, after at most so long a wait for all the rest.
  std::vector<Entry> takeEntries(std::chrono::milliseconds patience = {});
  std::vector<Picture> takePictures();

 private:
  struct State;
  std::shared_ptr<State> state_;
};

}  // namespace creasewright
