#include "cli/photos_command.h"

#include <algorithm>
#include <memory>

#include "bridge/text.h"
#include "cli/design_argument.h"
#include "cli/output.h"
#include "cli/output_argument.h"
#include "cli/photo_argument.h"
#include "document/design_file.h"
#include "document/design_units.h"
#include "guide/make_guide.h"
#include "guide/step_names.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

namespace {

struct PhotosOptions {
  std::string file;
  PhotoOptions photos;
  std::string output;
};

QString lineOf(const QString& place, const QString& title, const Photo* photo) {
  QString line = QStringLiteral("%1  %2").arg(place, 3).arg(title);
  if (photo == nullptr) return line;
  const qsizetype kilobytes = static_cast<qsizetype>(photo->picture.bytes().size() + 999) / 1000;
  line += QStringLiteral("  [") + Cli::tr("photo, %1 kB").arg(kilobytes) + QLatin1Char(']');
  return photo->caption.empty() ? line : line + QLatin1Char(' ') + shown(photo->caption);
}

/// Every place that a photo may have, and what is there.
int listPhotos(const Design& design) {
  const Result<BuiltDesign> built = build(design);
  if (!built) return fail(QStringLiteral("FILE"), built.problem());
  const Guide guide = makeGuide(*built);
  const GuideWords words = wordGuide(
      guide, *built, measuresInInches(design) ? GuideUnits::Inch : GuideUnits::Millimetre);
  const std::vector<std::string> names = stepNames(guide, design);
  printLine(
      lineOf(QStringLiteral("box"), Cli::tr("The finished box"), findPhoto(design.photos, {})));
  for (std::size_t i = 0; i < names.size(); ++i)
    printLine(
        lineOf(QString::number(i + 1), words.steps[i].title, findPhoto(design.photos, names[i])));
  for (const QString& warning : photoWarnings(*built, Hand::Right)) printLine(warning);
  return ExitHolds;
}

int runPhotos(const PhotosOptions& options) {
  const std::optional<Design> design = readDesignArgument(options.file);
  if (!design) return ExitUsage;
  if (!options.photos.any() && options.output.empty()) return listPhotos(*design);
  if (!options.output.ends_with(".cwdesign"))
    return fail(options.output.empty()
                    ? Cli::tr("-o: Say where to write the design, such as -o tray.cwdesign.")
                    : Cli::tr("-o: “%1” is no name for a design. Let it end in .cwdesign.")
                          .arg(shown(options.output)));
  std::vector<std::string> read = options.photos.pictures();
  read.push_back(options.file);
  if (!outputServes(options.output, read)) return ExitUsage;
  const std::optional<Design> changed = withPhotos(*design, options.photos, Hand::Right);
  if (!changed) return ExitUsage;
  if (const auto problem = writeDesignFile(*changed, options.output))
    return fail(QStringLiteral("-o"), *problem);
  return ExitHolds;
}

QString photosHelp() { return Cli::tr("keep photos for the guide in a design, or list them"); }

std::function<int()> preparePhotos(Grammar& grammar) {
  const auto o = std::make_shared<PhotosOptions>();
  grammar.file(o->file, Cli::tr("design whose photos these are"));
  addPhotos(grammar, o->photos);
  addPhotoRemoval(grammar, o->photos);
  grammar.value("-o,--output", "FILE.cwdesign", o->output, Cli::tr("file to write"));
  return [o] { return runPhotos(*o); };
}

}  // namespace

Command photosCommand() { return {"photos", photosHelp, preparePhotos}; }

}  // namespace creasewright
