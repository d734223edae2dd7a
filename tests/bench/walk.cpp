#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cstdlib>
#include <iostream>

#include "edits/kinds/edit_kind.h"
#include "walk/editor_walk.h"

// Does random things to an open design for as long as is asked:
//   creasewright_walk [actions = 5000] [seed = 1]
// Prints how often each was done and how many edits of each kind were made; ends with 1 where
// something was lost.
int main(int argc, char** argv) {
  using namespace creasewright;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  const QApplication application(argc, argv);
  const int actions = argc > 1 ? std::atoi(argv[1]) : 5000;
  const QTemporaryDir folder;
  testing::Random random(argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1);
  const testing::WalkReport report =
      testing::walkEditor(actions, random, folder.path().toStdString());
  for (const auto& [name, count] : report.actions) std::cout << name << ": " << count << '\n';
  std::cout << "edits of each kind that were made, and told as broken:\n";
  bool all = true;
  for (const EditKind& kind : editKinds()) {
    const auto of = [&kind](const std::map<std::string, int>& counts) {
      const auto found = counts.find(std::string(kind.id));
      return found == counts.end() ? 0 : found->second;
    };
    std::cout << "  " << kind.id << ": " << of(report.made) << ", " << of(report.told) << '\n';
    all = all && of(report.made) > 0;
  }
  for (const std::string& fault : report.faults) std::cout << "FAULT at " << fault << '\n';
  if (actions >= 5000 && !all) std::cout << "FAULT: a kind that was never made\n";
  return report.faults.empty() && (all || actions < 5000) ? 0 : 1;
}
