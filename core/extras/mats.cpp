#include "extras/for_show.h"
#include "extras/kinds.h"
#include "extras/mat_groups.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

Result<ExtraParts> buildMats(const Extra& extra, const Host& host) {
  std::vector<HostFace> faces;
  if (extra.face.empty()) {
    faces = facesOf(host);
  } else {
    const Result<HostFace> face = faceFor(extra, host);
    if (!face) return face.problem();
    faces.push_back(*face);
  }
  std::vector<MatRoom> rooms;
  for (HostFace& face : faces) {
    Region card = cardOf(face);
    rooms.push_back({std::move(face), std::move(card)});
  }
  const std::vector<MatGroup> groups =
      matGroups(rooms, FaceSide::Outside, extra.parameters.mm("inset"), host.bench.grid);
  if (groups.empty()) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const double lift = (host.bench.caliper.mm() + extra.card.caliper.mm()) / 2 + 0.1;
  return matParts(groups, "mat", FaceSide::Outside, lift);
}

}  // namespace

ExtraKind matsExtra() {
  return {.id = "mats",
          .title = worded("styles", "Mats"),
          .summary = worded("styles", "A decorative layer on every face that shows, or on one."),
          .act = ExtraAct::GlueMatsOn,
          .turn = ExtraTurn::Second,
          .onFace = true,
          .onEveryFace = true,
          .carriers = {Carrier::Box, Carrier::Face},
          .words = {.panels = {{"mat", worded("panels", "mat")}},
                    .pieces = {{"mat", worded("pieces", "mat")}}},
          .parameters = {measure("inset", worded("styles", "Inset"),
                                 worded("styles", "Card left to be seen at every edge."))
                             .standard(Length::inches(1, 16))
                             .from(mm(0.5))
                             .to(mm(30))},
          .build = buildMats};
}

}  // namespace creasewright
