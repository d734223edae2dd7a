#include "cli/photo_argument.h"

#include <QString>

#include "bridge/text.h"
#include "cli/output.h"
#include "cli/settings_argument.h"
#include "document/build.h"
#include "document/limit_problems.h"
#include "guide/make_guide.h"
#include "guide/step_names.h"
#include "output/photo_file.h"

namespace creasewright {

namespace {

/// Changes a design's photos one after the other; what cannot be is told, and ends it.
class PhotoChanges {
 public:
  PhotoChanges(Design design, std::vector<std::string> names)
      : design_(std::move(design)), names_(std::move(names)) {}

  [[nodiscard]] Design take() { return std::move(design_); }

  bool put(const char* argument, const std::string& step, const std::string& path) {
    const Result<PictureFile> picture = readPhotoFile(text(path));
    if (!picture) return told(argument, picture.problem());
    const Photo* before = findPhoto(design_.photos, step);
    Photo photo{step, before == nullptr ? std::string() : before->caption, *picture};
    design_.photos = withPhoto(std::move(design_.photos), std::move(photo));
    const auto problem = photoLimitProblem(design_.photos);
    return !problem || told(argument, *problem);
  }

  bool putAtStep(const std::string& written) {
    const Setting setting = readSetting(written);
    if (!setting.equals) {
      fail(Cli::tr("--step-photo: “%1” has no equals sign. Write N=PICTURE, such as "
                   "--step-photo 4=folding.jpg.")
               .arg(shown(written)));
      return false;
    }
    const std::optional<std::string> step = place("--step-photo", setting.key, false);
    return step && put("--step-photo", *step, std::string(setting.value));
  }

  bool caption(const std::string& written) {
    const Setting setting = readSetting(written);
    if (!setting.equals) {
      fail(Cli::tr("--caption: “%1” has no equals sign. Write box=WORDS or N=WORDS.")
               .arg(shown(written)));
      return false;
    }
    const std::optional<std::string> step = place("--caption", setting.key, true);
    if (!step || !isThere("--caption", setting.key, *step)) return false;
    Photo photo = *findPhoto(design_.photos, *step);
    photo.caption = text(std::string(setting.value)).toStdString();  // UTF-8 at last
    design_.photos = withPhoto(std::move(design_.photos), std::move(photo));
    const auto problem = photoLimitProblem(design_.photos);
    return !problem || told("--caption", *problem);
  }

  bool remove(const std::string& written) {
    const std::optional<std::string> step = place("--remove", written, true);
    if (!step || !isThere("--remove", written, *step)) return false;
    design_.photos = withoutPhoto(std::move(design_.photos), *step);
    return true;
  }

 private:
  static bool told(const char* argument, const Problem& problem) {
    fail(QLatin1String(argument), problem);
    return false;
  }

  /// The name of a step; empty for the finished box.
  [[nodiscard]] std::optional<std::string> place(const char* argument, std::string_view written,
                                                 bool orBox) const {
    if (orBox && written == "box") return std::string();
    bool number = false;
    const int step = text(std::string(written)).toInt(&number);
    if (number && step >= 1 && step <= static_cast<int>(names_.size()))
      return names_[static_cast<std::size_t>(step) - 1];
    fail(orBox ? Cli::tr("%1: “%2” is no place of a photo. Write box, or a step from 1 to %3.")
                     .arg(QLatin1String(argument), shown(written))
                     .arg(names_.size())
               : Cli::tr("%1: “%2” is no step of the guide. Write a number from 1 to %3.")
                     .arg(QLatin1String(argument), shown(written))
                     .arg(names_.size()));
    return std::nullopt;
  }

  [[nodiscard]] bool isThere(const char* argument, std::string_view written,
                             const std::string& step) const {
    if (findPhoto(design_.photos, step) != nullptr) return true;
    fail(Cli::tr("%1: There is no photo at “%2”. “creasewright photos FILE” lists them.")
             .arg(QLatin1String(argument), shown(written)));
    return false;
  }

  Design design_;
  std::vector<std::string> names_;
};

}  // namespace

std::vector<std::string> PhotoOptions::pictures() const {
  std::vector<std::string> files{finished};
  for (const std::string& written : steps) files.emplace_back(readSetting(written).value);
  return files;
}

void addPhotos(Grammar& grammar, PhotoOptions& into) {
  grammar.value("--photo", "PICTURE", into.finished,
                Cli::tr("photo of the finished box: a PNG or JPEG file"));
  grammar.values("--step-photo", "N=PICTURE", into.steps,
                 Cli::tr("photo of the step with this number; may be repeated"));
  grammar.values("--caption", "(box|N)=WORDS", into.captions,
                 Cli::tr("words under a photo; may be repeated"));
}

void addPhotoRemoval(Grammar& grammar, PhotoOptions& into) {
  grammar.values("--remove", "box|N", into.removed,
                 Cli::tr("take a photo out of the design; may be repeated"));
}

std::optional<Design> withPhotos(Design design, const PhotoOptions& options, Hand hand) {
  if (!options.any()) return design;
  const Result<BuiltDesign> built = build(design);
  if (!built) {
    fail(QStringLiteral("FILE"), built.problem());
    return std::nullopt;
  }
  PhotoChanges changes(std::move(design), stepNames(makeGuide(*built, hand), built->design));
  for (const std::string& written : options.removed)
    if (!changes.remove(written)) return std::nullopt;
  if (!options.finished.empty() && !changes.put("--photo", {}, options.finished))
    return std::nullopt;
  for (const std::string& written : options.steps)
    if (!changes.putAtStep(written)) return std::nullopt;
  for (const std::string& written : options.captions)
    if (!changes.caption(written)) return std::nullopt;
  return changes.take();
}

}  // namespace creasewright
