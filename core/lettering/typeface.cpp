#include "lettering/typeface.h"

namespace creasewright {

std::vector<Worded> typefaceWords() {
  return {worded("styles", "Plain"), worded("styles", "Serif"), worded("styles", "Typewriter"),
          worded("styles", "Slanted"), worded("styles", "Hand")};
}

}  // namespace creasewright
