#pragma once

#include <QDateTime>
#include <QString>
#include <optional>
#include <vector>

#include "document/design.h"

namespace creasewright {

/// A design on the shelf, or a file there that cannot be read.
struct ShelfEntry {
  QString path;
  QDateTime changed;
  std::optional<Design> design;  ///< nothing when the file is broken; it stays where it is
  bool read = true;              ///< false while nothing is known of it yet
};

/// The folder of saved designs; all files are plain `.cwdesign` files.
class ShelfFolder {
 public:
  explicit ShelfFolder(QString folder) : folder_(std::move(folder)) {}
  /// The user's own: `shelf` in the program's data folder.
  static ShelfFolder ofUser();

  [[nodiscard]] const QString& path() const { return folder_; }
  /// The newest first.
  [[nodiscard]] std::vector<ShelfEntry> entries() const;
  /// The same, none of them read.
  [[nodiscard]] std::vector<ShelfEntry> files() const;
  /// Puts a copy there under a free name made from its title. Error: FileNotWritten.
  std::optional<Problem> add(const Design& design) const;
  /// Adds all designs of a bundle, or none, and to the person's lists the sheets and supplies they
  /// do not have. Errors: those of readBundleFile, FileNotWritten.
  std::optional<Problem> addBundle(const QString& file) const;
  /// Moves a file to the system's trash, or away when there is none.
  static bool remove(const QString& path);

 private:
  /// Writes a copy and tells where.
  [[nodiscard]] Result<QString> put(const Design& design) const;
  [[nodiscard]] QString freePath(const Design& design) const;
  QString folder_;
};

}  // namespace creasewright
