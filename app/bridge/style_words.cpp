// Texts of the styles, repeated for lupdate: core knows no translation. A test compares this list
// with the styles themselves.
#include "bridge/style_words.h"

#include <QtGlobal>

namespace creasewright {

namespace {

constexpr const char* words[] = {
    QT_TRANSLATE_NOOP("styles", "Framed tray"),
    QT_TRANSLATE_NOOP("styles", "The product lies in a recess with a mitred rim around it."),
    QT_TRANSLATE_NOOP("styles", "Opening length"),
    QT_TRANSLATE_NOOP("styles", "Between the inner walls of the short sides."),
    QT_TRANSLATE_NOOP("styles", "Opening width"),
    QT_TRANSLATE_NOOP("styles", "Between the inner walls of the long sides."),
    QT_TRANSLATE_NOOP("styles", "Depth"),
    QT_TRANSLATE_NOOP("styles", "From the base to the frame. At least the smallest tab."),
    QT_TRANSLATE_NOOP("styles", "Frame"),
    QT_TRANSLATE_NOOP("styles", "Width of the rim. At least the smallest glue strip."),
    QT_TRANSLATE_NOOP("styles", "Glue strip"),
    QT_TRANSLATE_NOOP("styles", "Turned back under the frame, so no wider than the frame."),
    QT_TRANSLATE_NOOP("styles", "Tab width"),
    QT_TRANSLATE_NOOP("styles",
                      "Measured up the wall from the base line, so no wider than the depth."),
    QT_TRANSLATE_NOOP("styles", "Belly band"),
    QT_TRANSLATE_NOOP("styles", "A band that slides round a box and closes at the back."),
    QT_TRANSLATE_NOOP("styles", "Box length"),
    QT_TRANSLATE_NOOP("styles", "Outside length of the box, along the band's edges."),
    QT_TRANSLATE_NOOP("styles", "Box width"),
    QT_TRANSLATE_NOOP("styles", "Outside width of the box."),
    QT_TRANSLATE_NOOP("styles", "Box depth"),
    QT_TRANSLATE_NOOP("styles", "Outside depth of the box."),
    QT_TRANSLATE_NOOP("styles", "Ease on the width"),
    QT_TRANSLATE_NOOP("styles", "Room to slide, on the width."),
    QT_TRANSLATE_NOOP("styles", "Ease on the length"),
    QT_TRANSLATE_NOOP("styles", "How much longer than the box the band is."),
    QT_TRANSLATE_NOOP("styles", "Overlap"),
    QT_TRANSLATE_NOOP("styles", "Glued lap at the back, narrower than the wide part."),
    QT_TRANSLATE_NOOP("styles", "Wide part"),
    QT_TRANSLATE_NOOP("styles", "The part of the back that lies on top, lap counted."),
    QT_TRANSLATE_NOOP("styles", "Straight tuck box"),
    QT_TRANSLATE_NOOP("styles", "Four walls with a glued seam; both lids tuck in at the front."),
    QT_TRANSLATE_NOOP("styles", "Length"),
    QT_TRANSLATE_NOOP("styles", "The longer side of the opening."),
    QT_TRANSLATE_NOOP("styles", "Width"),
    QT_TRANSLATE_NOOP("styles",
                      "The shorter side of the opening. At least the tuck flap and 3 mm."),
    QT_TRANSLATE_NOOP("styles", "Height"),
    QT_TRANSLATE_NOOP("styles", "From lid to lid. The two tuck flaps must not meet."),
    QT_TRANSLATE_NOOP("styles", "Tuck flap"),
    QT_TRANSLATE_NOOP("styles", "Goes in behind the front, at most 3 mm less than the width."),
    QT_TRANSLATE_NOOP("styles", "Glue seam"),
    QT_TRANSLATE_NOOP("styles", "Joins the back to the right wall, narrower than the width."),
    QT_TRANSLATE_NOOP("styles", "Thumb notch"),
    QT_TRANSLATE_NOOP("styles", "A half-round notch in the front for opening the lids."),
};

}  // namespace

std::span<const char* const> styleWords() { return words; }

}  // namespace creasewright
