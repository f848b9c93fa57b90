// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts together a grid, its reference system and what its reader knows beside the file. */
final class GroundAssembly {
    /** Two systems that put the middle of the ground closer than this are the same, in degrees; 3 mm on the Moon. */
    private static final double SAME_PLACE_DEG = 1e-7;

    private GroundAssembly() {
    }

    /** What a reader found in the file itself. */
    record Found(String format, ElevationGrid grid, Optional<ReferenceSystem> system, GroundFile.Heights heights) {
    }

    static GroundFile of(Path file, Found found, GroundFiles.Knowledge knowledge) {
        ElevationGrid grid = found.grid;
        Optional<ReferenceSystem> inFile = found.system;
        List<String> cautions = new ArrayList<>();
        Optional<ReferenceSystem> declared = knowledge.referenceSystem()
                .map(text -> ReferenceSystem.named(text, new InputException.Place("", 0, "reference_system")));
        Point centre = knowledge.centre().orElse(grid.frame().centre());
        if (inFile.isPresent() && declared.isPresent()) {
            refuseContradiction(file, inFile.get(), declared.get(), centre);
        }
        Optional<ReferenceSystem> system = inFile.isPresent() ? inFile : declared;
        if (found.heights.verticalUnit().contains("not stated")) {
            cautions.add("The file does not state the unit of its heights; metres were assumed.");
        }
        if (system.isEmpty()) {
            cautions.add("No reference system is known: coordinates were taken as true metres and true north is not"
                    + " known.");
        }
        system.flatMap(ReferenceSystem::code).filter(code -> code.contains("2000")).ifPresent(code ->
                cautions.add("The reference system is written by the code " + code + " of the list of 2000, whose"
                        + " numbers mean other systems in the list of 2015."));
        system.filter(s -> s.bodyRadius() != KnownSystems.MOON_RADIUS_IAU_2015).ifPresent(s ->
                cautions.add(String.format(Locale.ROOT, "The body has a radius of %.0f m, not the Moon's 1737400 m.",
                        s.bodyRadius())));
        HeightLimits.addCautions(grid, cautions);
        PointScale scale = system.map(s -> GroundFile.checkedScale(file, s, centre)).orElse(PointScale.UNKNOWN);
        return new GroundFile(file, found.format, grid.withMetreScale(scale.mean()), system, centre, scale,
                found.heights, cautions);
    }

    private static void refuseContradiction(Path file, ReferenceSystem inFile, ReferenceSystem declared,
            Point centre) {
        boolean same;
        try {
            GeographicPlace a = inFile.geographic(centre);
            GeographicPlace b = declared.geographic(centre);
            double turn = Math.IEEEremainder(a.longitudeDeg() - b.longitudeDeg(), 360);
            same = Math.abs(a.latitudeDeg() - b.latitudeDeg()) < SAME_PLACE_DEG
                    && Math.abs(turn) * Math.cos(Math.toRadians(a.latitudeDeg())) < SAME_PLACE_DEG
                    && inFile.bodyRadius() == declared.bodyRadius();
        } catch (IllegalArgumentException e) {
            same = false;
        }
        if (!same) {
            throw InputException.badValue(new InputException.Place("", 0, "reference_system"),
                    declared.toString(), "what " + file + " itself says, " + inFile + ", or nothing");
        }
    }
}
