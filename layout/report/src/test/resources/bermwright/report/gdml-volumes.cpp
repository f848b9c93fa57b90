// SPDX-License-Identifier: Apache-2.0
// Reads a scene with libvgdml (Debian: libvgdml-dev, g++) and says what stands in it: for each placed volume
//   name  density (kg/m3)  triangles  room (m3)  name of the volume it stands in
// where triangles and room are those of the form that the volume is cut from, nothing taken out of it yet.
#include <VecGeom/gdml/Frontend.h>
#include <VecGeom/management/GeoManager.h>
#include <VecGeom/volumes/LogicalVolume.h>
#include <VecGeom/volumes/PlacedVolume.h>
#include <VecGeom/volumes/UnplacedBooleanVolume.h>
#include <VecGeom/volumes/UnplacedTessellated.h>
#include <cstdio>
#include <string>

using vecgeom::VPlacedVolume;

namespace {
// The form that a solid is cut from.
vecgeom::VUnplacedVolume const *form(vecgeom::VUnplacedVolume const *solid) {
    auto *less = dynamic_cast<vecgeom::UnplacedBooleanVolume<vecgeom::kSubtraction> const *>(solid);
    return less == nullptr ? solid : form(less->GetLeft()->GetUnplacedVolume());
}

void say(vgdml::Middleware const &scene, VPlacedVolume const *placed, char const *in) {
    auto *logical = placed->GetLogicalVolume();
    auto found = scene.GetVolumeMatMap().find(logical->id());
    double density = -1;
    if (found != scene.GetVolumeMatMap().end() && found->second.attributes.count("D") > 0) {
        density = 1000 * std::stod(found->second.attributes.at("D"));
    }
    auto *whole = form(logical->GetUnplacedVolume());
    auto *faces = dynamic_cast<vecgeom::UnplacedTessellated const *>(whole);
    long triangles = 0;
    double room = 0;
    if (faces != nullptr) {
        triangles = static_cast<long>(faces->GetNFacets());
        auto from = faces->GetFacet(0)->fVertices[0];
        for (long i = 0; i < triangles; i++) {
            auto const &corners = faces->GetFacet(i)->fVertices;
            room += (corners[0] - from).Dot((corners[1] - from).Cross(corners[2] - from)) / 6;
        }
    } else {
        room = const_cast<vecgeom::VUnplacedVolume *>(whole)->Capacity();
    }
    std::printf("%s %.6g %ld %.6f %s\n", logical->GetName(), density, triangles, room, in);
    for (VPlacedVolume const *inner : placed->GetDaughters()) {
        say(scene, inner, logical->GetName());
    }
}
}  // namespace

int main(int, char **arguments) {
    vgdml::Parser parser;
    auto scene = parser.Load(arguments[1], false, 1e-3, false);
    if (!scene) {
        return 2;
    }
    say(*scene, vecgeom::GeoManager::Instance().GetWorld(), "-");
    return 0;
}
