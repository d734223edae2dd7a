#include "papers/guide/readers_guide.h"

#include <QFileInfo>
#include <algorithm>
#include <array>

#include "papers/guide/refit_note.h"

namespace creasewright {

namespace {

const Problem* firstError(const BuiltDesign& built) {
  const auto found = std::ranges::find(built.problems, Severity::Error, &Problem::severity);
  return found == built.problems.end() ? nullptr : &*found;
}

}  // namespace

std::span<const ReadersName> readersNames() {
  static const std::array names{ReadersName{"inch", {Readers::Inch}},
                                ReadersName{"metric", {Readers::Metric}},
                                ReadersName{"both", {Readers::Inch, Readers::Metric}}};
  return names;
}

Result<ReadersGuide> guideFor(Readers readers, const BuiltDesign& original,
                              const GuideChoices& choices) {
  Result<BuiltDesign> built = build(forReaders(original.design, readers));
  if (!built) return built.problem();
  const Problem* problem = firstError(*built);
  if (problem != nullptr && firstError(original) == nullptr) return *problem;
  ReadersGuide guide{std::move(*built), choices};
  guide.choices.units = unitsOf(readers);
  guide.choices.paper = paperOf(readers);
  guide.choices.note = refitNote(original, guide.built, readers);
  return guide;
}

QString readersPath(const QString& path, Readers readers, bool several) {
  if (!several) return path;
  const QString word =
      readers == Readers::Inch ? QStringLiteral("-inch") : QStringLiteral("-metric");
  QString stem = path;
  while (stem.endsWith(QLatin1Char('/'))) stem.chop(1);
  const QString ending = namesGuideFolder(path) ? QString() : QFileInfo(path).suffix();
  if (ending.isEmpty()) return stem + word + QLatin1Char('/');
  stem.chop(ending.size() + 1);
  return stem + word + QLatin1Char('.') + ending;
}

std::optional<Problem> writeGuides(std::span<const Readers> readers, const BuiltDesign& original,
                                   const QString& path, const GuideChoices& choices) {
  std::vector<ReadersGuide> guides;
  for (const Readers each : readers) {
    Result<ReadersGuide> guide = guideFor(each, original, choices);
    if (!guide) return guide.problem();
    guides.push_back(std::move(*guide));
  }
  for (std::size_t i = 0; i < guides.size(); ++i) {
    const QString file = readersPath(path, readers[i], readers.size() > 1);
    if (const auto problem = writeGuide(guides[i].built, file, guides[i].choices)) return problem;
  }
  return std::nullopt;
}

}  // namespace creasewright
