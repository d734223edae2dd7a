#pragma once

#include <fstream>
#include <optional>
#include <string>
#include <vector>

#include "cutting/cutting.h"

// Open guillotine-cutting instances of the OR-Library (Beasley, J. Oper. Res. Soc. 36, 1985,
// 297-306) and Cintra, Miyazawa, Wakabayashi & Xavier (Eur. J. Oper. Res. 191, 2008, 61-85), read
// from the folder CREASEWRIGHT_CUTTING_INSTANCES, an environment variable or the place the build
// assumes.

namespace creasewright::testing {

struct CuttingInstance {
  long width = 0;
  long height = 0;
  struct Type {
    long width, height, number;  ///< value (gcutN) or demand (gcutNd)
  };
  std::vector<Type> types;
};

inline std::string instanceFolder() {
  const char* chosen = std::getenv("CREASEWRIGHT_CUTTING_INSTANCES");
  return chosen != nullptr ? chosen : CREASEWRIGHT_CUTTING_INSTANCES;
}

/// `gcut3.txt`: types, sheet, then width height value. `gcut3d`: sheet and types in one line.
inline std::optional<CuttingInstance> readInstance(const std::string& name) {
  std::ifstream file(instanceFolder() + '/' + name);
  CuttingInstance instance;
  std::size_t count = 0;
  if (name.ends_with('d'))
    file >> instance.width >> instance.height >> count;
  else
    file >> count >> instance.width >> instance.height;
  instance.types.resize(count);
  for (auto& type : instance.types) file >> type.width >> type.height >> type.number;
  if (!file || count == 0) return std::nullopt;
  return instance;
}

/// The sheets and blanks of a gcutNd instance as the planner takes them.
struct CuttingTask {
  std::vector<CutSheet> stock;
  std::vector<BlankDemand> demands;
};

inline std::optional<CuttingTask> readTask(int number, bool mayTurn) {
  const auto instance = readInstance("gcut" + std::to_string(number) + "d");
  if (!instance) return std::nullopt;
  CuttingTask task;
  task.stock = {{Length::nanometres(instance->width), Length::nanometres(instance->height)}};
  for (const auto& type : instance->types)
    task.demands.push_back({std::to_string(task.demands.size()), Length::nanometres(type.width),
                            Length::nanometres(type.height), static_cast<int>(type.number),
                            mayTurn});
  return task;
}

}  // namespace creasewright::testing
