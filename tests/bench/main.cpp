#include <QApplication>
#include <QStandardPaths>
#include <vector>

#include <benchmark/benchmark.h>

/// Prints medians of nine repetitions unless the arguments say otherwise.
int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);  // no settings or unsaved work of the user's
  const QApplication application(argc, argv);

  char repetitions[] = "--benchmark_repetitions=9";
  char aggregates[] = "--benchmark_report_aggregates_only=true";
  char shortest[] = "--benchmark_min_time=0.05";
  std::vector<char*> arguments{argv[0], repetitions, aggregates, shortest};
  arguments.insert(arguments.end(), argv + 1, argv + argc);
  int count = static_cast<int>(arguments.size());
  benchmark::Initialize(&count, arguments.data());
  if (benchmark::ReportUnrecognizedArguments(count, arguments.data())) return 1;
  const bool some = benchmark::RunSpecifiedBenchmarks() > 0;
  return some ? 0 : 1;  // a filter that matches nothing times nothing
}
