#include <QApplication>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "shell/main_window.h"

namespace creasewright {
namespace {

/// Program start without the process: the window made, shown and painted on the offscreen platform.
void windowStart(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    MainWindow window;
    window.show();
    window.begin({});
    QApplication::processEvents();
    bench::wanted(window.isVisible(), "a window that does not show");
  }
}
BENCHMARK(windowStart)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
