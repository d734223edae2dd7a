#pragma once

#include <vector>

#include "base/result.h"
#include "extras/extra.h"
#include "extras/host.h"

namespace creasewright {

/// Out of a face in the frame of the box; of a piece that does not stand there, in the piece's own.
Point3 outOfBox(const Host& host, const HostFace& face);

/// The faces that an extra may choose by itself, the best first: those that are seen from the
/// front, the largest of them first, and of equal ones the top, then the front. The underside and
/// the back of the box are none.
std::vector<HostFace> facesForShow(const Host& host, std::vector<HostFace> faces);

/// The faces an extra may lie on, the best first: the one it names, or those on Host::side, or
/// those that it may choose. Errors: ExtraFaceUnknown, ExtraNoPlace.
Result<std::vector<HostFace>> facesFor(const Extra& extra, const Host& host);

/// The first of them. Errors: ExtraFaceUnknown, ExtraNoPlace.
Result<HostFace> faceFor(const Extra& extra, const Host& host);

/// The directions of such faces of any of some hosts, each once, in the same order.
std::vector<Point3> sidesForShow(const std::vector<Host>& hosts);

}  // namespace creasewright
