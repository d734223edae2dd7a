#include "bridge/core_words.h"

#include <QCoreApplication>
#include <span>

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
};

constexpr Words panels[] = {
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
};

constexpr Words pieces[] = {
    {"tray", QT_TRANSLATE_NOOP("pieces", "tray")},
    {"band", QT_TRANSLATE_NOOP("pieces", "band")},
    {"box", QT_TRANSLATE_NOOP("pieces", "box")},
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
std::optional<QString> panelWords(std::string_view part) { return find(panels, "panels", part); }
std::optional<QString> pieceWords(std::string_view name) { return find(pieces, "pieces", name); }

}  // namespace creasewright
