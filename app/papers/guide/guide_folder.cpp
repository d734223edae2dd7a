#include "papers/guide/guide_folder.h"

#include <QBuffer>

#include "bridge/label_text.h"
#include "guide/make_guide.h"
#include "output/picture.h"
#include "output/write_folder.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_photos.h"

namespace creasewright {

namespace {

QByteArray png(const Drawing& drawing, const Wording& wording) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  renderImage(drawing, wording).save(&buffer, "PNG");
  return bytes;
}

QString part(const QString& heading, const QStringList& lines) {
  QString out = heading + QLatin1Char('\n');
  for (const QString& line : lines) out += QStringLiteral("- ") + line + QLatin1Char('\n');
  return out + QLatin1Char('\n');
}

QByteArray plainText(const GuideWords& words, const GuideNote& note) {
  QString out = words.title + QStringLiteral("\n\n");
  for (const QString& fact : words.facts()) out += fact + QLatin1Char('\n');
  if (!words.notes.isEmpty()) out += QLatin1Char('\n') + words.notes + QLatin1Char('\n');
  out += QLatin1Char('\n') + part(suppliesHeading(), words.supplies) +
         part(toolsHeading(), words.tools) + part(cautionsHeading(), words.cautions);
  int number = 0;
  for (const StepWords& step : words.steps) {
    out += QStringLiteral("%1. %2\n").arg(++number).arg(step.title);
    for (const QString& sentence : step.told()) out += sentence + QLatin1Char('\n');
    for (const QString& check : step.checks)
      out += QStringLiteral("✓ ") + check + QLatin1Char('\n');
    out += QLatin1Char('\n');
  }
  if (!note.lines.isEmpty()) out += part(note.heading, note.lines);
  return out.toUtf8();
}

FolderFiles filesOf(const BuiltDesign& built, const GuideChoices& choices) {
  const Guide guide = makeGuide(built, choices.form.hand);
  const Wording wording = wordingIn(firstUnit(choices.units));
  constexpr FigureRoom kPicture{120, 100};
  FolderFiles files{
      {QStringLiteral("guide.txt"),
       plainText(wordGuide(guide, built, choices.units), choices.note)},
      {QStringLiteral("finished.png"), png(finishedFigure(built, kPicture), wording)}};
  for (std::size_t i = 0; i < guide.steps.size(); ++i) {
    files.emplace_back(QStringLiteral("step-%1.png").arg(i + 1, 2, 10, QLatin1Char('0')),
                       png(guideFigure(built, guide.steps[i], kPicture), wording));
  }
  const auto addPhoto = [&files](const std::optional<GuidePhoto>& shown, const QString& stem) {
    if (!shown) return;
    const PictureFile& file = shown->photo->picture;
    const bool png = file.kind() == PictureKind::Png;
    files.emplace_back(
        stem + (png ? QStringLiteral(".png") : QStringLiteral(".jpg")),
        QByteArray(file.bytes().data(), static_cast<qsizetype>(file.bytes().size())));
  };
  const GuidePhotos photos(guide, built);
  addPhoto(photos.finished, QStringLiteral("photo"));
  for (std::size_t i = 0; i < photos.steps.size(); ++i)
    addPhoto(photos.steps[i], QStringLiteral("photo-%1").arg(i + 1, 2, 10, QLatin1Char('0')));
  return files;
}

}  // namespace

std::optional<Problem> writeGuideFolder(const BuiltDesign& built, const QString& folder,
                                        const GuideChoices& choices) {
  return writeFolder(folder, filesOf(built, choices));
}

}  // namespace creasewright
