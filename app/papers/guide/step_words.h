#pragma once

#include "papers/guide/guide_words.h"
#include "papers/guide/panel_names.h"

namespace creasewright {

/// One step; `built` gives the panels their names.
StepWords wordStep(const Step& step, const Guide& guide, const BuiltDesign& built,
                   GuideUnits units);

/// Sentences of the cut steps.
/// Whether a card is told by its colour.
bool isColoured(const Card& card);

/// `440 mm of ribbon, 6 mm wide, plum`; `extra` is whose ribbon it is.
QString ribbonWords(Length length, Length width, int extra, const BuiltDesign& built,
                    GuideUnits units);

StepWords wordCuts(const Step& step, const BuiltPiece& piece);

/// The sheet lies with its other face up from here on.
QString turnSentence();

/// Adds what a step joins: every flap and where it goes.
void addJoinWords(const Step& step, const PanelNames& names, QStringList& words);

/// Sentences of scoring.
StepWords wordScores(const Step& step, const BuiltPiece& piece, GuideUnits units);

/// Sentences of a fold stage and of putting pieces together.
StepWords wordFolds(const Step& step, const Guide& guide, const PanelNames& names);

/// What the hand does with an extra, in a few words.
QString titleOf(ExtraAct act);

/// AddExtra.
StepWords wordExtra(const Step& step, const BuiltDesign& built, GuideUnits units);

}  // namespace creasewright
