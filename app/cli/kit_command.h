#pragma once

#include <string>
#include <vector>

#include "cli/command.h"

namespace creasewright {

/// What `kit` was asked for; an empty text means the argument was not given.
struct KitOptions {
  std::vector<std::string> files;
  std::string output;
  std::vector<std::string> counts;  ///< FILE=NUMBER
  std::vector<std::string> only;    ///< FILE=PIECE
  std::vector<std::string> blanks;  ///< WIDTHxHEIGHT:KEY=VALUE,...
  std::vector<std::string> sheets;
  std::string title;
  std::string takers;
  std::string spares;
  std::string stock;  ///< CSV files
  std::string supplies;
  std::string names;  ///< a text file, one name a line
  std::string label;  ///< WIDTHxHEIGHT
  bool keepGrain = false;
  bool noExtras = false;
  std::string plan;     ///< easy or fewest
  std::string machine;  ///< WIDTHxHEIGHT of a machine's carrier sheet: layouts for a machine
  std::string currency;
  std::string rate;  ///< money, and so classCosts
  std::string classCosts;
  std::string overhead;  ///< whole percent, and so margin and fee
  std::string margin;
  std::string fee;
  std::string paper;
  std::string units;
};

/// Plans a class from a kit, or from designs and blanks; a PDF or a folder is painted.
Command kitCommand();

}  // namespace creasewright
