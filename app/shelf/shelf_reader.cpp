#include "shelf/shelf_reader.h"

#include <QFile>
#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>
#include <utility>

#include "bridge/design_pixmap.h"
#include "document/build.h"
#include "document/design_file.h"

namespace creasewright {

/// Shared with the thread, which goes on alone when the reader is gone in the middle of a file.
struct ShelfReader::State {
  struct Drawn {
    QString path;
    Design design;
    QSize size;
  };

  std::mutex guard;
  std::condition_variable asked;
  std::condition_variable finished;
  bool end = false;
  int run = 0;  // counts the lists: what is read of an older one is dropped
  std::vector<QString> paths;
  std::size_t next = 0;
  std::size_t open = 0;  // files not read yet
  std::deque<Drawn> wanted;
  std::vector<Entry> entries;
  std::vector<Picture> pictures;

  void work() {
    std::unique_lock lock(guard);
    while (!end)
      if (next < paths.size())
        readOne(lock);
      else if (!wanted.empty())
        drawOne(lock);
      else
        asked.wait(lock);
  }

  void readOne(std::unique_lock<std::mutex>& lock) {
    const std::size_t number = next++;
    const std::string path = QFile::encodeName(paths[number]).toStdString();
    const int mine = run;
    lock.unlock();
    Result<Design> design = readDesignFile(path);
    lock.lock();
    if (mine != run) return;
    entries.push_back(
        {number, design ? std::optional(std::move(design).value()) : std::optional<Design>()});
    if (--open == 0) finished.notify_all();
  }

  void drawOne(std::unique_lock<std::mutex>& lock) {
    const Drawn next_picture = std::move(wanted.front());
    wanted.pop_front();
    const int mine = run;
    lock.unlock();
    const Result<BuiltDesign> built = build(next_picture.design);
    QImage image =
        built ? designImage(*built, DesignView::Finished, next_picture.size, 1) : QImage();
    lock.lock();
    if (mine == run && !image.isNull()) pictures.push_back({next_picture.path, std::move(image)});
  }
};

ShelfReader::ShelfReader() : state_(std::make_shared<State>()) {
  std::thread([state = state_] { state->work(); }).detach();
}

ShelfReader::~ShelfReader() {
  const std::lock_guard lock(state_->guard);
  state_->end = true;
  state_->asked.notify_all();
}

void ShelfReader::read(std::vector<QString> paths) {
  const std::lock_guard lock(state_->guard);
  ++state_->run;
  state_->open = paths.size();
  state_->next = 0;
  state_->paths = std::move(paths);
  state_->wanted.clear();
  state_->entries.clear();
  state_->pictures.clear();
  state_->asked.notify_all();
}

void ShelfReader::draw(const QString& path, const Design& design, QSize size) {
  const std::lock_guard lock(state_->guard);
  state_->wanted.push_back({path, design, size});
  state_->asked.notify_all();
}

std::vector<ShelfReader::Entry> ShelfReader::takeEntries(std::chrono::milliseconds patience) {
  std::unique_lock lock(state_->guard);
  state_->finished.wait_for(lock, patience, [this] { return state_->open == 0; });
  return std::exchange(state_->entries, {});
}

std::vector<ShelfReader::Picture> ShelfReader::takePictures() {
  const std::lock_guard lock(state_->guard);
  return std::exchange(state_->pictures, {});
}

}  // namespace creasewright
