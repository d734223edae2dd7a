#include <QApplication>
#include <QFile>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>

#include <benchmark/benchmark.h>

#include "bench/edited_design.h"
#include "bench/wanted.h"
#include "document/design_file.h"
#include "scene/sheet_view.h"
#include "shell/main_window.h"

namespace creasewright {
namespace {

/// The main window with a design, its sheet, and a line of it that the mouse has taken.
class LineInHand {
 public:
  explicit LineInHand(const Design& design) {
    const QString path = folder_.filePath(QStringLiteral("pulled.cwdesign"));
    QFile file(path);
    bench::wanted(file.open(QIODevice::WriteOnly), "no room for the design");
    file.write(QByteArray::fromStdString(writeDesign(design)));
    file.close();
    window_.resize(1440, 900);
    window_.show();
    window_.begin(path);
    QApplication::processEvents();
    sheet_ = window_.findChild<SheetView*>();
    bench::wanted(sheet_ != nullptr && session().design() == design, "another design is open");
    take();
    QApplication::processEvents();
  }

  DesignSession& session() { return window_.session(); }

  /// So many moves take the hand where it was.
  static constexpr int kRound = 30;

  /// The hand goes on by a pixel, away from where it took the line and back again; all that follows
  /// is shown.
  void moveTo(int step) {
    const int at = step % kRound;
    const int out = at < kRound / 2 ? at : kRound - at;
    send(QEvent::MouseMove, from_ + QPointF(2 + out, 8 - at % 17));
    QApplication::processEvents();
  }

 private:
  /// The first fold that some measure moves.
  void take() {
    for (const Segment& fold : sheet_->piece()->flat.creases) {
      from_ = sheet_->camera().toScreen((fold.a + fold.b) / 2);
      const Design before = session().design();
      send(QEvent::MouseButtonPress, from_);
      send(QEvent::MouseMove, from_ + QPointF(16, 16));
      if (session().design() != before) return;
      send(QEvent::MouseButtonRelease, from_);
    }
    bench::unwanted("no line that can be pulled");
  }

  void send(QEvent::Type type, QPointF at) {
    const bool moves = type == QEvent::MouseMove;
    const auto held = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, sheet_->mapToGlobal(at), moves ? Qt::NoButton : Qt::LeftButton,
                      held, Qt::AltModifier);
    QApplication::sendEvent(sheet_, &event);
  }

  QTemporaryDir folder_;
  MainWindow window_;
  SheetView* sheet_ = nullptr;
  QPointF from_;
};

/// Of the moves of a round, each by its median over all rounds.
double slowestMove(const std::vector<double>& times) {
  double slowest = 0;
  for (std::size_t move = 0; move < LineInHand::kRound; ++move) {
    std::vector<double> same;
    for (std::size_t i = move; i < times.size(); i += LineInHand::kRound) same.push_back(times[i]);
    std::ranges::sort(same);
    slowest = std::max(slowest, same.empty() ? 0 : same[same.size() / 2]);
  }
  return slowest;
}

/// What the hand waits for when it pulls a line of the largest style with twenty changes by hand:
/// measure, net, checks, plans, fold and all views painted on the offscreen platform. `median` and
/// `p99` are those of single moves, ms; `slowest` is the slowest of the fifty moves of a round,
/// each by the median of its ten times, without the stalls of a machine that has other work.
void pullInWindow(benchmark::State& state) {
  LineInHand hand(bench::editedDesign());
  std::vector<double> times;
  int step = 0;
  int changed = 0;
  for ([[maybe_unused]] auto _ : state) {
    const Design before = hand.session().design();
    const auto start = std::chrono::steady_clock::now();
    hand.moveTo(++step);
    times.push_back(
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
            .count());
    changed += hand.session().design() == before ? 0 : 1;
    bench::wanted(hand.session().isCurrent(), "a pull that loses the box");
  }
  bench::wanted(changed * 10 >= 9 * step, "moves that change nothing");
  state.counters["slowest"] = slowestMove(times);
  std::ranges::sort(times);
  state.counters["median"] = times[times.size() / 2];
  state.counters["p99"] = times[times.size() * 99 / 100];
}
BENCHMARK(pullInWindow)->Iterations(300)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
