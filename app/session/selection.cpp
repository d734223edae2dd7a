#include "session/selection.h"

namespace creasewright {

void Selection::hover(const Place& place) {
  if (place != hovered_) {
    hovered_ = place;
    emit changed();
  }
}

void Selection::keep(const Place& place) {
  if (place != kept_) {
    kept_ = place;
    emit changed();
  }
  if (!place.isEmpty() || place.progress >= 0) emit chosen(place);
}

void Selection::clear() {
  const bool lit = !this->lit().isEmpty();
  hovered_ = {};
  kept_ = {};
  if (lit) emit changed();
}

void Selection::follow(const Place& kept) {
  if (kept != kept_ || !hovered_.isEmpty()) {
    hovered_ = {};
    kept_ = kept;
    emit changed();
  }
}

}  // namespace creasewright
