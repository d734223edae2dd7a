#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "bridge/style_text.h"
#include "guide/step_words.h"

namespace creasewright {

namespace {

/// A step that lists more joins than this names only those that hold.
constexpr std::size_t kMostJoins = 4;

struct JoinWords {
  Method method;
  Face face;
  const char* source;
};

constexpr std::array kJoins{
    JoinWords{Method::Glue, Face::Inside,
              QT_TRANSLATE_NOOP("guide", "Press “%1” onto the inside of “%2”.")},
    JoinWords{Method::Glue, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "Press “%1” onto the outside of “%2”.")},
    JoinWords{Method::Tuck, Face::Inside, QT_TRANSLATE_NOOP("guide", "Tuck “%1” in behind “%2”.")},
    JoinWords{Method::Tuck, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "Slide “%1” over the outside of “%2”.")},
    JoinWords{Method::Lock, Face::Inside, QT_TRANSLATE_NOOP("guide", "Lock “%1” into “%2”.")},
    JoinWords{Method::Lock, Face::Outside, QT_TRANSLATE_NOOP("guide", "Lock “%1” into “%2”.")},
    JoinWords{Method::Rest, Face::Inside,
              QT_TRANSLATE_NOOP("guide", "“%1” comes to lie inside “%2”.")},
    JoinWords{Method::Rest, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "“%1” comes to lie on the outside of “%2”.")},
};

QString joinSentence(const Join& join, const QString& flap, const QString& target) {
  const auto found = std::ranges::find_if(kJoins, [&](const JoinWords& words) {
    return words.method == join.method && words.face == join.face;
  });
  return QCoreApplication::translate("guide", found->source).arg(flap, target);
}

QString bendSentence(const std::string& why) {
  if (why == "tuck-slides-in") {
    return GuideTr::tr("Let the flap bend a little while it slides in.");
  }
  if (why == "petals-overlap") {
    return GuideTr::tr(
        "Bend each petal a little and lay it over the next; the last goes under the "
        "first.");
  }
  if (why == "tube-pinched") {
    return GuideTr::tr("Roll the card into a tube and pinch its two ends flat, crosswise.");
  }
  if (why == "curved-score") {
    return GuideTr::tr("Press the curved scores in with your thumbs; the card bends by itself.");
  }
  return GuideTr::tr("The card has to bend a little here.");
}

void addJoins(const Step& step, const Net& net, StepWords& words) {
  const auto name = [&](int panel) {
    return panelTitle(net.panels.at(static_cast<std::size_t>(panel)).id);
  };
  const auto holds = [](const Join& join) { return join.method != Method::Rest; };
  const bool all = step.joins.size() <= kMostJoins;
  std::size_t told = 0;
  for (const Join& join : step.joins) {
    if ((!all && !holds(join)) || told >= 2 * kMostJoins) {
      continue;
    }
    ++told;
    words.sentences.append(joinSentence(join, name(join.panel), name(join.onto)));
  }
}

StepWords wordTogether(const Step& step, const Guide& guide) {
  StepWords words;
  words.title = GuideTr::tr("Put the pieces together");
  QStringList names;
  for (const int piece : step.pieces) {
    names.append(pieceTitle(guide.pieces.at(static_cast<std::size_t>(piece)).name));
  }
  words.sentences.append(
      GuideTr::tr("The pieces go one into the other: %1.").arg(names.join(QStringLiteral(", "))));
  return words;
}

}  // namespace

StepWords wordFolds(const Step& step, const Guide& guide, const BuiltDesign& built) {
  if (step.code == StepCode::PutTogether) {
    return wordTogether(step, guide);
  }
  const Net& net = built.pieces.at(static_cast<std::size_t>(step.piece)).piece.net;
  StepWords words;
  words.title = stageTitle(step.stage);
  if (!words.title.isEmpty()) {
    words.title[0] = words.title[0].toUpper();
  }
  const auto scored =
      std::ranges::count_if(step.folds, [](const Fold& fold) { return !fold.bend; });
  if (scored > kMostLinesToCount) {
    words.sentences.append(GuideTr::tr("Fold the lines as the arrows show."));
  } else if (scored > 0) {
    words.sentences.append(
        GuideTr::tr("Fold %n line(s) as the arrows show.", "", static_cast<int>(scored)));
  }
  for (const std::string& why : step.bends) {
    words.sentences.append(bendSentence(why));
  }
  const bool glued =
      std::ranges::any_of(step.joins, [](const Join& join) { return join.method == Method::Glue; });
  if (glued) {
    words.sentences.append(
        GuideTr::tr("Take the liner off the tape, or put on the glue, just before."));
  }
  addJoins(step, net, words);
  return words;
}

}  // namespace creasewright
