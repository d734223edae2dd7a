#pragma once

#include <QString>

#include "session/design_session.h"

class QWidget;

namespace creasewright {

/// Asks where to save an output of the design; suggests the design's name beside its file. The
/// answer always ends in `.ending`; empty when the person changed their mind.
QString askPath(QWidget* parent, const DesignSession& session, const QString& ending,
                const QString& filter);

}  // namespace creasewright
