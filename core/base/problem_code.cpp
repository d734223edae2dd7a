#include "base/problem_code.h"

namespace creasewright {

std::string_view codeName(ProblemCode code) {
  switch (code) {
    case ProblemCode::LengthUnreadable:
      return "length-unreadable";
    case ProblemCode::LengthOutOfRange:
      return "length-out-of-range";
    case ProblemCode::LengthZeroDivision:
      return "length-zero-division";
    case ProblemCode::DuplicateName:
      return "duplicate-name";
    case ProblemCode::PanelNotSimple:
      return "panel-not-simple";
    case ProblemCode::PanelTooSmall:
      return "panel-too-small";
    case ProblemCode::PanelsOverlap:
      return "panels-overlap";
    case ProblemCode::CreaseOffPanel:
      return "crease-off-panel";
    case ProblemCode::CreaseTooShort:
      return "crease-too-short";
    case ProblemCode::FlapTooNarrow:
      return "flap-too-narrow";
    case ProblemCode::OpeningOutside:
      return "opening-outside";
    case ProblemCode::MateUnknownPanel:
      return "mate-unknown-panel";
    case ProblemCode::NetInPieces:
      return "net-in-pieces";
    case ProblemCode::MateOffPlane:
      return "mate-off-plane";
    case ProblemCode::MateOutsideTarget:
      return "mate-outside-target";
    case ProblemCode::CreaseMissesRim:
      return "crease-misses-rim";
    case ProblemCode::LoopOpen:
      return "loop-open";
    case ProblemCode::PanelsCollide:
      return "panels-collide";
    case ProblemCode::CavityTooSmall:
      return "cavity-too-small";
    case ProblemCode::UnknownStyle:
      return "unknown-style";
    case ProblemCode::UnknownParameter:
      return "unknown-parameter";
    case ProblemCode::ParameterUnreadable:
      return "parameter-unreadable";
    case ProblemCode::ParameterTooSmall:
      return "parameter-too-small";
    case ProblemCode::ParameterTooLarge:
      return "parameter-too-large";
    case ProblemCode::ProductUnreadable:
      return "product-unreadable";
    case ProblemCode::ProductTooLarge:
      return "product-too-large";
    case ProblemCode::ProductTooSmall:
      return "product-too-small";
    case ProblemCode::CardUnknown:
      return "card-unknown";
    case ProblemCode::CardTooThick:
      return "card-too-thick";
    case ProblemCode::EaseUnknown:
      return "ease-unknown";
    case ProblemCode::GridUnknown:
      return "grid-unknown";
    case ProblemCode::FoldsClose:
      return "folds-close";
    case ProblemCode::PaperUnknown:
      return "paper-unknown";
    case ProblemCode::MarginTooLarge:
      return "margin-too-large";
    case ProblemCode::TooManyTiles:
      return "too-many-tiles";
    case ProblemCode::FileUnreadable:
      return "file-unreadable";
    case ProblemCode::FileNotWritten:
      return "file-not-written";
    case ProblemCode::FileTooLarge:
      return "file-too-large";
    case ProblemCode::NotADesign:
      return "not-a-design";
    case ProblemCode::NewerVersion:
      return "newer-version";
    case ProblemCode::FieldMissing:
      return "field-missing";
    case ProblemCode::FieldUnreadable:
      return "field-unreadable";
  }
  return "unknown";
}

}  // namespace creasewright
