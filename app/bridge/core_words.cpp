#include "bridge/core_words.h"

#include <QCoreApplication>
#include <span>

#include "bridge/text.h"

namespace creasewright {

namespace {

struct Words {
  std::string_view code;
  const char* source;
};

constexpr Words stages[] = {
    {"roll-long-sides", QT_TRANSLATE_NOOP("stages", "roll the long sides")},
    {"raise-long-sides", QT_TRANSLATE_NOOP("stages", "raise the long sides")},
    {"fold-tabs", QT_TRANSLATE_NOOP("stages", "fold the tabs")},
    {"long-sides-to-tabs", QT_TRANSLATE_NOOP("stages", "raise the long sides against the tabs")},
    {"long-sides-over-tabs", QT_TRANSLATE_NOOP("stages", "roll the long sides over the tabs")},
    {"short-sides-over-long",
     QT_TRANSLATE_NOOP("stages", "roll the short sides in, their mitres on top")},
    {"shape-long-sides",
     QT_TRANSLATE_NOOP("stages", "fold the strips and inner walls of the long sides")},
    {"shape-short-sides",
     QT_TRANSLATE_NOOP("stages", "fold the strips and inner walls of the short sides")},
    {"roll-short-sides", QT_TRANSLATE_NOOP("stages", "roll the short sides")},
    {"raise-short-sides", QT_TRANSLATE_NOOP("stages", "raise the short sides")},
    {"wrap-narrow-part", QT_TRANSLATE_NOOP("stages", "wrap the narrow part round")},
    {"wrap-wide-part", QT_TRANSLATE_NOOP("stages", "wrap the wide part round and glue")},
    {"walls", QT_TRANSLATE_NOOP("stages", "fold the walls and glue the seam")},
    {"bottom-dust-flaps", QT_TRANSLATE_NOOP("stages", "fold in the bottom dust flaps")},
    {"bottom-tuck", QT_TRANSLATE_NOOP("stages", "fold the bottom tuck flap")},
    {"bottom-lid", QT_TRANSLATE_NOOP("stages", "close the bottom lid")},
    {"top-dust-flaps", QT_TRANSLATE_NOOP("stages", "fold in the top dust flaps")},
    {"top-tuck", QT_TRANSLATE_NOOP("stages", "fold the top tuck flap")},
    {"top-lid", QT_TRANSLATE_NOOP("stages", "close the top lid")},
    {"bottom", QT_TRANSLATE_NOOP("stages", "close the bottom")},
    {"bottom-flaps", QT_TRANSLATE_NOOP("stages", "fold in the bottom flaps")},
    {"bottom-panel", QT_TRANSLATE_NOOP("stages", "fold the bottom panel")},
    {"bottom-sides", QT_TRANSLATE_NOOP("stages", "fold the sides of the bottom")},
    {"bottom-tabs", QT_TRANSLATE_NOOP("stages", "fold the bottom tabs")},
    {"bottom-tongue", QT_TRANSLATE_NOOP("stages", "tuck in the bottom tongue")},
    {"corner-tabs", QT_TRANSLATE_NOOP("stages", "fold the corner tabs")},
    {"ears", QT_TRANSLATE_NOOP("stages", "fold the ears")},
    {"faces", QT_TRANSLATE_NOOP("stages", "fold and close the faces")},
    {"gap-flaps", QT_TRANSLATE_NOOP("stages", "fold the gap flaps")},
    {"handle", QT_TRANSLATE_NOOP("stages", "fold out both halves of the handle")},
    {"header", QT_TRANSLATE_NOOP("stages", "double the hang tab")},
    {"lid", QT_TRANSLATE_NOOP("stages", "close the lid")},
    {"lid-tabs", QT_TRANSLATE_NOOP("stages", "fold and glue the lid's tabs")},
    {"lid-walls", QT_TRANSLATE_NOOP("stages", "fold the lid's walls")},
    {"long-walls", QT_TRANSLATE_NOOP("stages", "raise the long walls")},
    {"petals", QT_TRANSLATE_NOOP("stages", "close the petals one over the other")},
    {"roll-walls", QT_TRANSLATE_NOOP("stages", "roll the walls over the tabs")},
    {"roof", QT_TRANSLATE_NOOP("stages", "fold in the sides and close the roof")},
    {"short-walls", QT_TRANSLATE_NOOP("stages", "raise the short walls")},
    {"tabs", QT_TRANSLATE_NOOP("stages", "fold the tabs")},
    {"walls-up", QT_TRANSLATE_NOOP("stages", "raise the walls")},
    {"wrap", QT_TRANSLATE_NOOP("stages", "wrap round and glue the seam")},
    {"base", QT_TRANSLATE_NOOP("stages", "close the base over the tabs")},
    {"tuck", QT_TRANSLATE_NOOP("stages", "fold the tuck flap")},
    {"back-and-seam", QT_TRANSLATE_NOOP("stages", "fold the back and the seam")},
    {"seam", QT_TRANSLATE_NOOP("stages", "fold the glue seam")},
    {"back-roof", QT_TRANSLATE_NOOP("stages", "close the back of the roof")},
    {"back-wall", QT_TRANSLATE_NOOP("stages", "raise the back and glue its tabs")},
    {"cover", QT_TRANSLATE_NOOP("stages", "fold the cover over")},
    {"cover-spine", QT_TRANSLATE_NOOP("stages", "fold the strip of the cover")},
    {"feet", QT_TRANSLATE_NOOP("stages", "fold in the feet")},
    {"fin", QT_TRANSLATE_NOOP("stages", "fold the fins")},
    {"lock", QT_TRANSLATE_NOOP("stages", "hook the halves of the handle together")},
    {"fins", QT_TRANSLATE_NOOP("stages", "fold the fins")},
    {"flap", QT_TRANSLATE_NOOP("stages", "close the flap")},
    {"front-roof", QT_TRANSLATE_NOOP("stages", "glue the front of the roof")},
    {"gable-flaps", QT_TRANSLATE_NOOP("stages", "fold in the gable flaps")},
    {"bottom-flaps-up",
     QT_TRANSLATE_NOOP("stages", "fold the bottom flaps up and their tabs back")},
    {"glue-bottom-flat", QT_TRANSLATE_NOOP("stages", "glue bottom and seam flat")},
    {"open-bottom", QT_TRANSLATE_NOOP("stages", "open the box")},
    {"glue-tube-flat", QT_TRANSLATE_NOOP("stages", "fold flat and glue the seam")},
    {"open-tube", QT_TRANSLATE_NOOP("stages", "open the tube")},
    {"fold-bag-flat", QT_TRANSLATE_NOOP("stages", "fold the sides in and the bag flat")},
    {"open-bag", QT_TRANSLATE_NOOP("stages", "open the bag")},
    {"left-wall", QT_TRANSLATE_NOOP("stages", "raise the left wall")},
    {"legs", QT_TRANSLATE_NOOP("stages", "fold down the legs")},
    {"lid-flaps", QT_TRANSLATE_NOOP("stages", "fold the flaps of the lid")},
    {"pocket", QT_TRANSLATE_NOOP("stages", "fold up the pocket and glue its tabs")},
    {"pocket-sides", QT_TRANSLATE_NOOP("stages", "fold the sides of the pocket")},
    {"press-in-ends", QT_TRANSLATE_NOOP("stages", "press in the curved ends")},
    {"ridge-tuck", QT_TRANSLATE_NOOP("stages", "fold the tuck at the ridge")},
    {"right-wall", QT_TRANSLATE_NOOP("stages", "raise the right wall and glue it to the tab")},
    {"side-flaps", QT_TRANSLATE_NOOP("stages", "fold in the side flaps")},
    {"spine", QT_TRANSLATE_NOOP("stages", "fold up the strip")},
    {"spines", QT_TRANSLATE_NOOP("stages", "fold up the strips")},
    {"tube", QT_TRANSLATE_NOOP("stages", "close the tube and glue the seams")},
    {"back", QT_TRANSLATE_NOOP("stages", "fold the back over and glue it")},
    {"walls-and-seam", QT_TRANSLATE_NOOP("stages", "fold the walls and the seam")},
    {"last-wall", QT_TRANSLATE_NOOP("stages", "bring the last wall round and glue the seam")},
};

constexpr Words panels[] = {
    {"mat", QT_TRANSLATE_NOOP("panels", "mat")},
    {"label", QT_TRANSLATE_NOOP("panels", "label")},
    {"label-mat", QT_TRANSLATE_NOOP("panels", "mat layer")},
    {"tag", QT_TRANSLATE_NOOP("panels", "tag")},
    {"tag-mat", QT_TRANSLATE_NOOP("panels", "mat layer of the tag")},
    {"film", QT_TRANSLATE_NOOP("panels", "film")},
    {"slip", QT_TRANSLATE_NOOP("panels", "greeting slip")},
    {"base", QT_TRANSLATE_NOOP("panels", "base")},
    {"front", QT_TRANSLATE_NOOP("panels", "front")},
    {"back", QT_TRANSLATE_NOOP("panels", "back")},
    {"left", QT_TRANSLATE_NOOP("panels", "left")},
    {"right", QT_TRANSLATE_NOOP("panels", "right")},
    {"wall", QT_TRANSLATE_NOOP("panels", "wall")},
    {"frame", QT_TRANSLATE_NOOP("panels", "frame")},
    {"inner-wall", QT_TRANSLATE_NOOP("panels", "inner wall")},
    {"glue-strip", QT_TRANSLATE_NOOP("panels", "glue strip")},
    {"front-tab", QT_TRANSLATE_NOOP("panels", "front tab")},
    {"back-tab", QT_TRANSLATE_NOOP("panels", "back tab")},
    {"side", QT_TRANSLATE_NOOP("panels", "side")},
    {"lap", QT_TRANSLATE_NOOP("panels", "lap")},
    {"seam", QT_TRANSLATE_NOOP("panels", "seam")},
    {"tuck", QT_TRANSLATE_NOOP("panels", "tuck flap")},
    {"top-lid", QT_TRANSLATE_NOOP("panels", "top lid")},
    {"bottom-lid", QT_TRANSLATE_NOOP("panels", "bottom lid")},
    {"top-dust-flap", QT_TRANSLATE_NOOP("panels", "top dust flap")},
    {"bottom-dust-flap", QT_TRANSLATE_NOOP("panels", "bottom dust flap")},
    {"back-corner", QT_TRANSLATE_NOOP("panels", "back corner")},
    {"bottom", QT_TRANSLATE_NOOP("panels", "bottom")},
    {"bottom-flap", QT_TRANSLATE_NOOP("panels", "bottom flap")},
    {"bottom-glue-tab", QT_TRANSLATE_NOOP("panels", "bottom glue tab")},
    {"bottom-hook", QT_TRANSLATE_NOOP("panels", "bottom hook")},
    {"bottom-panel", QT_TRANSLATE_NOOP("panels", "bottom panel")},
    {"bottom-shoulders", QT_TRANSLATE_NOOP("panels", "bottom shoulders")},
    {"bottom-side", QT_TRANSLATE_NOOP("panels", "bottom side")},
    {"bottom-tongue", QT_TRANSLATE_NOOP("panels", "bottom tongue")},
    {"doubling", QT_TRANSLATE_NOOP("panels", "doubling")},
    {"face", QT_TRANSLATE_NOOP("panels", "face")},
    {"foot", QT_TRANSLATE_NOOP("panels", "foot")},
    {"front-corner", QT_TRANSLATE_NOOP("panels", "front corner")},
    {"gable", QT_TRANSLATE_NOOP("panels", "gable")},
    {"gap-flap", QT_TRANSLATE_NOOP("panels", "gap flap")},
    {"handle", QT_TRANSLATE_NOOP("panels", "handle")},
    {"header", QT_TRANSLATE_NOOP("panels", "hang tab")},
    {"left-ear", QT_TRANSLATE_NOOP("panels", "left ear")},
    {"left-tongue", QT_TRANSLATE_NOOP("panels", "left tongue")},
    {"lid", QT_TRANSLATE_NOOP("panels", "lid")},
    {"petal", QT_TRANSLATE_NOOP("panels", "petal")},
    {"right-ear", QT_TRANSLATE_NOOP("panels", "right ear")},
    {"right-tongue", QT_TRANSLATE_NOOP("panels", "right tongue")},
    {"rim", QT_TRANSLATE_NOOP("panels", "rim")},
    {"roof", QT_TRANSLATE_NOOP("panels", "roof")},
    {"roof-seam", QT_TRANSLATE_NOOP("panels", "roof seam")},
    {"hook", QT_TRANSLATE_NOOP("panels", "hook")},
    {"tab", QT_TRANSLATE_NOOP("panels", "tab")},
    {"top", QT_TRANSLATE_NOOP("panels", "top")},
    {"left-gable", QT_TRANSLATE_NOOP("panels", "left gable")},
    {"right-gable", QT_TRANSLATE_NOOP("panels", "right gable")},
    {"front-handle", QT_TRANSLATE_NOOP("panels", "front handle")},
    {"back-handle", QT_TRANSLATE_NOOP("panels", "back handle")},
    {"back-fin", QT_TRANSLATE_NOOP("panels", "back fin")},
    {"back-flap", QT_TRANSLATE_NOOP("panels", "back flap")},
    {"corner", QT_TRANSLATE_NOOP("panels", "corner")},
    {"cover", QT_TRANSLATE_NOOP("panels", "cover")},
    {"divider", QT_TRANSLATE_NOOP("panels", "divider")},
    {"far-flap", QT_TRANSLATE_NOOP("panels", "far flap")},
    {"flap", QT_TRANSLATE_NOOP("panels", "flap")},
    {"front-fin", QT_TRANSLATE_NOOP("panels", "front fin")},
    {"front-flap", QT_TRANSLATE_NOOP("panels", "front flap")},
    {"back-foot", QT_TRANSLATE_NOOP("panels", "back foot")},
    {"left-foot", QT_TRANSLATE_NOOP("panels", "left foot")},
    {"left-back-foot", QT_TRANSLATE_NOOP("panels", "left back foot")},
    {"right-foot", QT_TRANSLATE_NOOP("panels", "right foot")},
    {"right-back-foot", QT_TRANSLATE_NOOP("panels", "right back foot")},
    {"left-back", QT_TRANSLATE_NOOP("panels", "left back half")},
    {"left-back-fin", QT_TRANSLATE_NOOP("panels", "left back fin")},
    {"left-back-flap", QT_TRANSLATE_NOOP("panels", "left back flap")},
    {"left-fin", QT_TRANSLATE_NOOP("panels", "left fin")},
    {"left-flap", QT_TRANSLATE_NOOP("panels", "left flap")},
    {"left-front", QT_TRANSLATE_NOOP("panels", "left front half")},
    {"left-front-fin", QT_TRANSLATE_NOOP("panels", "left front fin")},
    {"left-front-flap", QT_TRANSLATE_NOOP("panels", "left front flap")},
    {"left-side", QT_TRANSLATE_NOOP("panels", "left side")},
    {"left-tab", QT_TRANSLATE_NOOP("panels", "left tab")},
    {"near-flap", QT_TRANSLATE_NOOP("panels", "near flap")},
    {"pocket", QT_TRANSLATE_NOOP("panels", "pocket")},
    {"right-back", QT_TRANSLATE_NOOP("panels", "right back half")},
    {"right-back-fin", QT_TRANSLATE_NOOP("panels", "right back fin")},
    {"right-back-flap", QT_TRANSLATE_NOOP("panels", "right back flap")},
    {"right-fin", QT_TRANSLATE_NOOP("panels", "right fin")},
    {"right-flap", QT_TRANSLATE_NOOP("panels", "right flap")},
    {"right-front", QT_TRANSLATE_NOOP("panels", "right front half")},
    {"right-front-fin", QT_TRANSLATE_NOOP("panels", "right front fin")},
    {"right-front-flap", QT_TRANSLATE_NOOP("panels", "right front flap")},
    {"right-side", QT_TRANSLATE_NOOP("panels", "right side")},
    {"right-tab", QT_TRANSLATE_NOOP("panels", "right tab")},
    {"strip", QT_TRANSLATE_NOOP("panels", "strip")},
    {"tip-tab", QT_TRANSLATE_NOOP("panels", "tip tab")},
};

/// Where a part is, behind or before its name.
constexpr Words places[] = {
    {"front", QT_TRANSLATE_NOOP("places", "front")},
    {"back", QT_TRANSLATE_NOOP("places", "back")},
    {"left", QT_TRANSLATE_NOOP("places", "left")},
    {"right", QT_TRANSLATE_NOOP("places", "right")},
    {"left-front", QT_TRANSLATE_NOOP("places", "left front")},
    {"left-back", QT_TRANSLATE_NOOP("places", "left back")},
    {"right-front", QT_TRANSLATE_NOOP("places", "right front")},
    {"right-back", QT_TRANSLATE_NOOP("places", "right back")},
};

constexpr Words pieces[] = {
    {"tray", QT_TRANSLATE_NOOP("pieces", "tray")},
    {"band", QT_TRANSLATE_NOOP("pieces", "band")},
    {"box", QT_TRANSLATE_NOOP("pieces", "box")},
    {"cup", QT_TRANSLATE_NOOP("pieces", "cup")},
    {"lid", QT_TRANSLATE_NOOP("pieces", "lid")},
    {"sleeve", QT_TRANSLATE_NOOP("pieces", "sleeve")},
    {"solid", QT_TRANSLATE_NOOP("pieces", "solid")},
    {"bag", QT_TRANSLATE_NOOP("pieces", "bag")},
    {"envelope", QT_TRANSLATE_NOOP("pieces", "envelope")},
    {"inner-cross", QT_TRANSLATE_NOOP("pieces", "inner cross")},
    {"middle-cross", QT_TRANSLATE_NOOP("pieces", "middle cross")},
    {"insert", QT_TRANSLATE_NOOP("pieces", "insert")},
    {"long-divider", QT_TRANSLATE_NOOP("pieces", "long divider")},
    {"outer-cross", QT_TRANSLATE_NOOP("pieces", "outer cross")},
    {"pouch", QT_TRANSLATE_NOOP("pieces", "pouch")},
    {"scoop", QT_TRANSLATE_NOOP("pieces", "scoop")},
    {"short-divider", QT_TRANSLATE_NOOP("pieces", "short divider")},
    {"wallet", QT_TRANSLATE_NOOP("pieces", "wallet")},
    {"wrap", QT_TRANSLATE_NOOP("pieces", "wrap")},
    {"mat", QT_TRANSLATE_NOOP("pieces", "mat")},
    {"label", QT_TRANSLATE_NOOP("pieces", "label")},
    {"label-mat", QT_TRANSLATE_NOOP("pieces", "mat layer")},
    {"tag", QT_TRANSLATE_NOOP("pieces", "tag")},
    {"tag-mat", QT_TRANSLATE_NOOP("pieces", "mat layer of the tag")},
    {"film", QT_TRANSLATE_NOOP("pieces", "film")},
    {"slip", QT_TRANSLATE_NOOP("pieces", "greeting slip")},
};

std::optional<QString> find(std::span<const Words> table, const char* context,
                            std::string_view code) {
  for (const Words& words : table) {
    if (words.code == code) {
      return QCoreApplication::translate(context, words.source);
    }
  }
  return {};
}

}  // namespace

std::optional<QString> stageWords(std::string_view code) { return find(stages, "stages", code); }
std::optional<QString> panelWords(std::string_view part) {
  const std::size_t dash = part.find_last_not_of("0123456789");
  if (dash != std::string_view::npos && dash + 1 < part.size() && part[dash] == '-') {
    const auto kind = find(panels, "panels", part.substr(0, dash));
    const QString number = text(part.substr(dash + 1));
    return kind ? std::optional(QStringLiteral("%1 %2").arg(*kind, number)) : std::nullopt;
  }
  return find(panels, "panels", part);
}
std::optional<QString> placeWords(std::string_view part) { return find(places, "places", part); }
std::optional<QString> pieceWords(std::string_view name) { return find(pieces, "pieces", name); }

}  // namespace creasewright
