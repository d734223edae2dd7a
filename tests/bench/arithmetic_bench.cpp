#include <benchmark/benchmark.h>

/// A fixed loop of a million dependent multiply-adds: the yardstick of this machine, to read the
/// other figures beside.
static void arithmetic(benchmark::State& state) {
  for ([[maybe_unused]] auto _ : state) {
    double value = 1;
    benchmark::DoNotOptimize(value);  // else the whole loop is worked out once, before the clock
    for (int i = 0; i < 1'000'000; ++i) value = value * 0.999999 + 1e-6;
    benchmark::DoNotOptimize(value);
  }
}
BENCHMARK(arithmetic)->Unit(benchmark::kMillisecond);
