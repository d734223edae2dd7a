#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "document/build.h"
#include "document/net_json.h"
#include "drawing/dxf_writer.h"
#include "drawing/machine_lines.h"
#include "drawing/svg_writer.h"
#include "pages/design_picture.h"
#include "pages/machine_sheets.h"
#include "support/accepted.h"

namespace creasewright {
namespace {

using testing::Accepted;

std::string textOf(const std::vector<ProblemValue>& values) {
  std::string text;
  for (const ProblemValue& value : values) {
    text += ' ';
    if (const auto* words = std::get_if<std::string>(&value)) text += *words;
    if (const auto* number = std::get_if<std::int64_t>(&value)) text += std::to_string(*number);
    if (const auto* length = std::get_if<Length>(&value)) text += std::to_string(length->nm());
  }
  return text;
}

/// Labels as their code and values: no language.
std::string worded(const Label& label) { return label.code + label.literal + textOf(label.values); }

std::string told(const Problems& problems) {
  std::string text;
  for (const Problem& problem : problems)
    text += std::string(codeName(problem.code)) + " at " + problem.where + textOf(problem.values) +
            '\n';
  return text;
}

/// Some designs of a style, the same each time: as it comes, with its extras, and for products.
std::vector<Design> designsOf(const Style& style) {
  std::vector<Design> designs{testing::asItComes(style), testing::withItsExtras(style)};
  const std::array<ToolGrid, 3> grids{ToolGrid::millimetre(), ToolGrid::sixteenthInch(),
                                      ToolGrid::none()};
  int number = 0;
  for (const char* product : {"box:60x35x120mm", "cylinder:40x90mm", "box:105x70x22mm"}) {
    const auto made = newDesign(style.id, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                                grids.at(static_cast<std::size_t>(number++)));
    if (made) designs.push_back(*made);
  }
  return designs;
}

/// The limits of every measure, asked for by going beyond them; with each choice by turns.
std::string limitsOf(const Style& style) {
  std::string text;
  std::vector<Design> designs{testing::asItComes(style)};
  for (const ParameterSpec& spec : style.parameters) {
    if (spec.kind != ParameterKind::Flag) continue;
    Design other = designs.front();
    other.parameters.setCount(spec.key, other.parameters.flag(spec.key) ? 0 : 1);
    designs.push_back(std::move(other));
  }
  for (const Design& design : designs)
    for (const ParameterSpec& spec : style.parameters)
      for (const std::int64_t raw : {std::int64_t{-1}, Length::mm(7).nm(), Length::mm(2900).nm()}) {
        Design beyond = design;
        beyond.parameters.setCount(spec.key, raw);
        text += std::string(spec.key) + '\n' + told(limitProblems(beyond));
      }
  return text;
}

void addPictures(Accepted& accepted, const std::string& name, const BuiltDesign& built) {
  PictureOptions options;
  accepted.add(name + "-net.svg", writeSvg(pictureOf(built, options), name, worded));
  options.folded = true;
  accepted.add(name + "-folded.svg", writeSvg(pictureOf(built, options), name, worded));
}

void addMachineFiles(Accepted& accepted, const std::string& name, const BuiltDesign& built,
                     std::size_t number) {
  const auto form = static_cast<ScoreForm>(number % 3);
  const auto sheets = machineSheets(built, {}, {600, 800});
  if (!sheets) return;
  for (const Drawing& sheet : *sheets) {
    const auto lines = forMachine(sheet, {form, {0.2, 0.1}});
    if (!lines) continue;
    accepted.add(name + "-machine.svg", writeSvg(*lines, name, worded, false));
    accepted.add(name + "-machine.dxf", writeDxf(*lines, worded, number % 2 == 0));
  }
}

// What nets, checks, plans, pictures and files for machines of all styles were when somebody last
// looked at them. A change that is meant is accepted; one that is not shows up here, whatever law
// it keeps.
TEST(AcceptedDesigns, NetsPicturesAndMachineFilesAreAsBefore) {
  Accepted accepted("designs");
  for (const Style& style : styles()) {
    const std::string id(style.id);
    accepted.add(id + "-limits.txt", limitsOf(style));
    std::size_t number = 0;
    for (const Design& design : designsOf(style)) {
      const auto built = build(design);
      const std::string name = id + '-' + std::to_string(++number);
      if (!built) {
        accepted.add(name + "-refused.txt", told({built.problem()}));
        continue;
      }
      accepted.add(name + ".json", writeNetJson(*built));
      accepted.add(name + "-problems.txt", told(everyProblem(*built)));
      addPictures(accepted, name, *built);
      addMachineFiles(accepted, name, *built, number);
    }
  }
  accepted.expectAsBefore();
}

}  // namespace
}  // namespace creasewright
