#pragma once

#include <optional>
#include <string_view>

namespace creasewright {

/// Everything that can be wrong, one code each. The app words every code in the user's language
/// (app/bridge/problem_text); the comment lists the values a problem carries, in order.
enum class ProblemCode {
  // units
  LengthUnreadable,    // text
  LengthOutOfRange,    // text
  LengthZeroDivision,  // text
  // net
  DuplicateName,     // where = panel
  PanelNotSimple,    // where = panel
  PanelTooSmall,     // where = panel, area mm2
  PanelsOverlap,     // where = panel, other panel, area mm2
  CreaseOffPanel,    // where = child panel, parent panel
  CreaseTooShort,    // where = child panel, length
  FlapTooNarrow,     // where = panel, width, minimum
  OpeningOutside,    // where = panel
  MateUnknownPanel,  // where = panel
  NetInPieces,       // number of outlines
  // folding
  MateOffPlane,       // where = flap, target, distance
  MateOutsideTarget,  // where = flap, target, share outside in percent
  CreaseMissesRim,    // where = flap, target, distance
  LoopOpen,           // where = panel, distance
  PanelsCollide,      // where = panel, other panel, stage code
  CavityTooSmall,     // where = axis ("length", "width", "height"), have, need, piece, then threes:
                      // parameter that makes it larger, least value of it, its title; none = the
                      // style does not suit
  // parameters
  UnknownStyle,         // text
  UnknownParameter,     // where = style, key
  ParameterUnreadable,  // where = key, text
  ParameterTooSmall,    // where = key, value, minimum, title, kind of the extra that it is of
  ParameterTooLarge,    // where = key, value, maximum, title
  StyleUnsuited,  // where = key, what the product needs, most, title (no values: the card is why)
  // fit
  ProductUnreadable,  // text
  ProductTooLarge,    // length, limit
  ProductTooSmall,    // length, limit
  CardUnknown,        // text, up to three ids that are like it
  CardTooThick,       // caliper, limit
  ColourUnknown,      // text, up to three ids that are like it
  PatternUnknown,     // text, up to three ids that are like it
  PatternUnreadable,  // where = turn, side, tiled, plate, shift or nothing; text
  PatternScaleOff,    // text, least, most
  PatternColours,     // where = pattern; given, most
  PictureNoFile,      // nothing of it: a picture that no file is named for
  EaseUnknown,        // text
  GridUnknown,        // text
  // extras (where = kind or parameter)
  ExtraUnknown,      // text
  ExtraNoPlace,      // nothing of the box it could go with; "open" where it is the top that lacks
  ExtraFaceUnknown,  // text
  ExtraTooLarge,     // length, limit, "width" or "height" where it is not its length
  ExtraInTheWay,     // face, the panel, piece or kind of extra that is there
  ExtraCovered,      // face, the kind of extra that hides part of it (warning)
  ExtraHostUnknown,  // text
  ExtraHostUnfit,    // the kind of extra that cannot carry it
  ExtraHostCircle,   // the kinds of extras in the circle, listed
  ExtraOffFace,      // face
  ExtraOverFoam,     // the kind of extra under it that is held by foam
  ExtraInAir,        // nothing of card under one of a ribbon's ways
  ExtraOverBow,      // the bow under it
  ExtraMiddleOff,    // face; the middle of it lies beyond its edge
  ExtraRoomTaken,    // the kind of extra that fills the box inside
  ExtraInsideSmall,  // the room along the box or across it, what is needed; "length" or "width"
  ExtraNotRound,     // nothing of it: what goes round finds no flat sides to lie on
  ExtraUnhung,       // nothing of it: nothing to hang on, nor way for a string
  ExtraUnderRound,   // the kind that goes round over all of it (warning)
  ExtraWidthUnused,  // width that is not used by a full band (warning)
  LayerTooLarge,     // number of the layer from 1, side, limit
  LayerInsetLarge,   // number of the layer from 1, inset, limit
  // changes by hand (where = kind of edit; where it stands in the list, from 1)
  EditUnknown,    // where = nothing, text
  EditPlaceGone,  // number, panel or edge
  EditUnfit,      // number, panel or edge
  EditNoEffect,   // number, panel or edge
  // own styles
  StylePieceBroken,     // where = title of the style; code, place and values of what is wrong in it
  ProductOutsideStyle,  // where = axis, title of the style, product, least, most (warning)
  // blank sheets
  SheetBare,     // where = panel (warning)
  EdgesNotHeld,  // where = panel, the panel it meets (warning)
  // formulas (where = measure)
  FormulaUnreadable,    // text
  FormulaUnknownName,   // name, the names that may stand
  FormulaUnits,         // text
  FormulaZeroDivision,  // text
  FormulaCircle,        // text
  FormulaOutOfRange,    // text, least, most
  // making
  FoldsClose,       // where = panel, distance, limit (warning)
  CardThick,        // where = piece, caliper, limit (warning)
  BlankOverBoard,   // where = piece, width, height, board (warning)
  BlankOverSheets,  // where = piece, width, height (warning)
  ManyPages,        // pages, limit, paper (warning)
  TextSmall,        // where = piece; line, points, limit (warning)
  TextFaint,        // where = piece; line, contrast, limit (warning)
  TextTooLarge,     // where = piece; line, its width, the room (warning)
  TextTooHigh,      // where = piece; line, its height, the room (warning)
  TextCovered,      // where = piece; line, the piece or kind of extra over it (warning)
  DesignTooHeavy,   // where = file; bytes, limit
  PictureBroken,    // where = piece (warning)
  PictureCoarse,    // where = piece; dots to the inch, limit (warning)
  // pages
  PaperUnknown,    // text
  MarginTooLarge,  // margin, paper
  TooManyTiles,    // tiles, limit
  NothingPrinted,  // no piece has a colour or a pattern
  BleedOff,        // text, most
  // kits
  NoDemand,         // nothing to cut, or nothing to cut from
  BlankTooLarge,    // where = blank, width, height, a sheet that holds it or ""
  StockTooFew,      // the sheets at hand do not suffice
  PlanNotFound,     // stopped before there was a plan, or the sheets at hand are hard to use
  TakersWrong,      // where = field, number, least, most
  NamesTooMany,     // names, sets
  PlanFaulty,       // where = blank or number of sheet, what (core/cutting/check_plan.h)
  NotAKit,          // where = path
  TableUnreadable,  // where = path, row number, text
  GrainConflict,    // where = blank, width, height: fits no sheet along the grain
  PieceUnknown,     // where = design, text, the pieces it has
  RollTooLong,      // where = supply, metres, limit in metres
  // document
  FileUnreadable,   // where = path, reason
  FileNotWritten,   // where = path, reason
  FileTooLarge,     // where = path, bytes, limit
  NotADesign,       // where = path
  NotABundle,       // where = path
  NotAStyle,        // where = path
  NewerVersion,     // where = path, version, supported
  NotAPicture,      // where = path or place: no PNG or JPEG that can be decoded
  NotAPaper,        // where = path or place: no PNG, JPEG or SVG that can be drawn
  PictureTooWide,   // where = path; pixels wide, high; most on a side, most in all
  PictureTooHeavy,  // where = path, bytes, limit
  TooMany,          // where = list, number, limit
  TextTooLong,      // where = field, characters, limit
  FieldMissing,     // where = field
  PrintScaleOff,    // where = across or down; printed, drawn, least, most
  FieldUnreadable,  // where = field, text
  TableNoText,      // where = path: bytes that no table has
  ColumnUnknown,    // where = path, column, the known ones
  RowColour,        // where = path, row number, text, up to three colours that are like it
  NoSheetOfColour,  // where = card, its colours and pattern as written
  PunchNotRound     // where = path, row number, shape, width, height as written
};

/// Stable kebab-case name of a code, for JSON output and tests.
std::string_view codeName(ProblemCode code);
/// The code of such a name, or nothing.
std::optional<ProblemCode> codeNamed(std::string_view name);

}  // namespace creasewright
