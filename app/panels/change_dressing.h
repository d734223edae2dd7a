#pragma once

#include <QString>
#include <vector>

#include "session/design_session.h"

namespace creasewright {

/// Changes the extras; what is punched takes the sizes of the punches that the person owns.
void changeDressing(DesignSession& session, std::vector<Extra> extras, const QString& words,
                    const QString& field = {});

/// Whether an extra or one of its layers is made by a punch.
bool isPunched(const Extra& extra);

}  // namespace creasewright
