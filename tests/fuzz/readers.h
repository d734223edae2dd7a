#pragma once

#include <string>
#include <string_view>

#include "base/problem_code.h"
#include "document/build.h"
#include "document/design_file.h"
#include "document/own_style_file.h"
#include "fit/basis.h"
#include "kits/bundle.h"
#include "kits/class_kit.h"
#include "units/length_text.h"
#include "units/paper.h"

// What every reader of files and arguments promises, whatever the bytes: a problem that names its
// place, or a value that is written and reads back the same. Empty where the promise is kept.

namespace creasewright::fuzz {

inline std::string faultOf(const Problem& problem) {
  return problem.where.empty() ? "no place: " + std::string(codeName(problem.code)) : "";
}

inline std::string designFault(std::string_view bytes) {
  const Result<Design> read = readDesign(bytes, "file");
  if (!read) return faultOf(read.problem());
  const Result<std::string> text = designFileText(*read, "file");
  if (!text) return "was read and cannot be written";
  const Result<Design> again = readDesign(*text, "file");
  if (!again || *again != *read) return "reads back otherwise";
  if (limitProblems(*read).empty()) (void)build(*read);
  return {};
}

inline std::string styleFault(std::string_view bytes) {
  const Result<OwnStyle> read = readOwnStyle(bytes, "file");
  if (!read) return faultOf(read.problem());
  const Result<std::string> text = ownStyleFileText(*read, "file");
  if (!text) return "was read and cannot be written";
  const Result<OwnStyle> again = readOwnStyle(*text, "file");
  if (!again || *again != *read) return "reads back otherwise";
  const Result<Design> design = newDesign(*read, std::nullopt, cards().front(), Ease::Easy, {});
  if (design && limitProblems(*design).empty()) (void)build(*design);
  return {};
}

inline std::string kitFault(std::string_view bytes) {
  const Result<ClassKit> read = readKit(bytes, "file");
  if (!read) return faultOf(read.problem());
  const Result<std::string> text = kitFileText(*read, "file");
  if (!text) return "was read and cannot be written";
  const Result<ClassKit> again = readKit(*text, "file");
  return again && writeKit(*again) == *text ? "" : "reads back otherwise";
}

inline std::string bundleFault(std::string_view bytes) {
  const Result<Bundle> read = readBundle(bytes, "file");
  if (!read) return faultOf(read.problem());
  const Result<std::string> text = bundleFileText(*read, "file");
  if (!text) return "was read and cannot be written";
  const Result<Bundle> again = readBundle(*text, "file");
  return again && writeBundle(*again) == *text ? "" : "reads back otherwise";
}

template <class Item>
std::string tableFault(std::string_view bytes,
                       Result<std::vector<Item>> (*read)(std::string_view, std::string_view),
                       std::string (*write)(const std::vector<Item>&)) {
  const auto items = read(bytes, "file");
  if (!items) return faultOf(items.problem());
  const std::string text = write(*items);
  const auto again = read(text, "file");
  if (!again) return "was read and cannot be read again";
  return write(*again) == text ? "" : "reads back otherwise";
}

inline std::string tableFault(std::string_view bytes) {
  const std::string sheets = tableFault<StockSheet>(bytes, readStockTable, writeStockTable);
  return sheets.empty() ? tableFault<SupplyItem>(bytes, readSupplyTable, writeSupplyTable) : sheets;
}

/// Lengths, and what else is read from a few characters.
inline std::string lengthFault(std::string_view bytes) {
  for (const Unit unit : {Unit::Millimetre, Unit::Centimetre, Unit::Inch}) {
    if (const Result<Length> read = parseLength(bytes, unit)) {
      const Result<Length> again = parseLength(exactText(*read), unit);
      if (!again || *again != *read) return "exact text reads back otherwise";
      (void)formatLength(*read, {.unit = unit});
    }
    if (const Result<Length> roll = parseRoll(bytes, unit)) {
      const Result<Length> again = parseRoll(rollText(*roll), unit);
      if (!again || *again != *roll) return "roll reads back otherwise";
    }
  }
  if (const Result<Product> product = parseProduct(bytes)) {
    const Result<Product> again = parseProduct(productText(*product));
    if (!again || *again != *product) return "product reads back otherwise";
  }
  if (const Result<ToolGrid> grid = parseToolGrid(bytes)) {
    const Result<ToolGrid> again = parseToolGrid(toolGridText(*grid));
    if (!again || *again != *grid) return "grid reads back otherwise";
  }
  (void)findCard(bytes);
  (void)findPaper(bytes);
  (void)basisGrammage(bytes);
  return {};
}

}  // namespace creasewright::fuzz
