#pragma once

#include <optional>

#include "papers/guide/write_guide.h"

namespace creasewright {

/// The guide for people who publish it themselves: `guide.txt` and a picture for each step,
/// `step-01.png` and on, photos as `photo.jpg`, `photo-01.jpg`, in a folder that is made when it is
/// missing. Needs a QGuiApplication. Error: FileNotWritten (path, reason); files written before it
/// are taken away again.
std::optional<Problem> writeGuideFolder(const BuiltDesign& built, const QString& folder,
                                        const GuideChoices& choices);

}  // namespace creasewright
