#pragma once

#include <QString>
#include <optional>
#include <string>

#include "cli/grammar.h"
#include "document/build.h"
#include "papers/template/export.h"

namespace creasewright {

/// What is written of the picture of a folded box; an empty text means that it was not given.
struct FoldedOptions {
  bool folded = false;
  std::string open;
  std::string view;
  std::string stage;
  std::string pixels;
  std::string ground;
};

void addFoldedArguments(Grammar& grammar, FoldedOptions& options);

/// The sentence for what cannot be read or serves no file of this ending, or nothing; `piece` is
/// what --piece names.
QString foldedProblem(const FoldedOptions& options, const QString& ending,
                      const std::string& piece);

/// Takes over what foldedProblem() found nothing wrong with.
void readFolded(const FoldedOptions& options, ExportChoices& choices);

/// The sentence for a stage that the design or its piece does not have, or nothing.
QString stageProblem(const FoldedOptions& options, const BuiltDesign& built,
                     const std::string& piece);

}  // namespace creasewright
