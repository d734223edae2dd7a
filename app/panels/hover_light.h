#pragma once

class QAbstractItemView;

namespace creasewright {

class DesignSession;

/// Lights the panels of the row under the mouse: their ids are the row's Qt::UserRole.
void lightUnderMouse(QAbstractItemView& list, DesignSession& session);

}  // namespace creasewright
