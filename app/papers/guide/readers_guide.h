#pragma once

#include <span>

#include "document/for_readers.h"
#include "papers/guide/write_guide.h"

namespace creasewright {

/// For whom one run writes guides, as the command line names it: `inch`, `metric`, `both`.
struct ReadersName {
  QByteArray name;
  std::vector<Readers> readers;
};
std::span<const ReadersName> readersNames();

/// A guide for other readers: the design made anew, and the choices with their units and paper.
struct ReadersGuide {
  BuiltDesign built;
  GuideChoices choices;
};

/// Errors: of build(); the first error of the design made anew where the original has none.
Result<ReadersGuide> guideFor(Readers readers, const BuiltDesign& original,
                              const GuideChoices& choices);

/// `tray guide-inch.pdf`; the path itself where one run writes for one kind of readers.
QString readersPath(const QString& path, Readers readers, bool several);

/// Writes a guide for each of `readers`; every file is whole or not there. Errors as guideFor and
/// writeGuide.
std::optional<Problem> writeGuides(std::span<const Readers> readers, const BuiltDesign& original,
                                   const QString& path, const GuideChoices& choices);

}  // namespace creasewright
