#pragma once

#include <QString>

#include "bridge/design_words.h"
#include "session/design_session.h"

namespace creasewright {

// Every change a person can make to the design, each as one undo step.

/// Title, tags and notes.
void changeWords(DesignSession& session, const DesignWords& words);
/// Another style: the product, card, ease and grid stay; measures start from the style's own.
void changeStyle(DesignSession& session, std::string_view styleId);
/// The same to a style of the person's own.
void changeStyle(DesignSession& session, const OwnStyle& style);
/// A style of the person's own, to be changed: what it brings are the changes of the design, which
/// has its title; extras, notes and changes of the design in hand go.
void openStyleIn(DesignSession& session, const OwnStyle& style);
/// What the design's own style brings becomes changes of the design, and all measures are free.
void freeFromStyle(DesignSession& session);
void changeProduct(DesignSession& session, const std::optional<Product>& product,
                   const QString& field = {});
void changeEase(DesignSession& session, Ease ease);
/// All measures move onto the grid, the extras' too.
void changeGrid(DesignSession& session, ToolGrid grid);
/// How wide the scoring board is; zero = any width.
void changeBoard(DesignSession& session, Length board);
void changeCard(DesignSession& session, const Card& card, const QString& field = {});
/// `words` names the change in the history; a `field` lets typing on merge into one step.
void changeExtras(DesignSession& session, std::vector<Extra> extras, const QString& words,
                  const QString& field = {});
/// Changes by hand to the net.
void changeEdits(DesignSession& session, std::vector<Edit> edits, const QString& words);
/// Photos for the hand-out.
void changePhotos(DesignSession& session, std::vector<Photo> photos, const QString& words,
                  const QString& field = {});
/// `raw` is nanometres, a count or a flag, as the parameter's kind says.
void changeParameter(DesignSession& session, std::string_view key, std::int64_t raw);
/// All measures at once; `words` names the change, `field` as above.
void changeMeasures(DesignSession& session, const Parameters& parameters, const QString& words,
                    const QString& field);

}  // namespace creasewright
