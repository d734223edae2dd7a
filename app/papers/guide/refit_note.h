#pragma once

#include "document/build.h"
#include "document/for_readers.h"
#include "papers/guide/guide_words.h"
#include "units/paper.h"

namespace creasewright {

/// What is different in a design that was made anew for other readers: card, marks of the rulers,
/// sheets and measures, before and now, each in its own unit. No lines when nothing changed.
GuideNote refitNote(const BuiltDesign& before, const BuiltDesign& now, Readers readers);

/// The paper those readers print on: letter or A4.
Paper paperOf(Readers readers);
GuideUnits unitsOf(Readers readers);

}  // namespace creasewright
