// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts together what a file holds, its reference system and what its reader knows beside the file. */
final class GroundAssembly {
    /** Two systems that put the middle of the ground closer than this are the same, in degrees; 3 mm on the Moon. */
    private static final double SAME_PLACE_DEG = 1e-7;
    /** Spheres used for the Moon lie within 0.1 % of the one of 2015; no other body with a name does. */
    private static final double SHARE_OF_RADIUS = 2e-3;
    private static final double RADIUS_OF_OLD = 1_738_000;

    private GroundAssembly() {
    }

    static GroundSource of(Path file, GroundFacts found, GroundFiles.Knowledge knowledge) {
        Optional<ReferenceSystem> inFile = found.system();
        Optional<ReferenceSystem> declared = knowledge.referenceSystem()
                .map(text -> ReferenceSystem.named(text, new InputException.Place("", 0, "reference_system")));
        Point centre = knowledge.centre().orElse(found.ground().frame().centre());
        if (inFile.isPresent() && declared.isPresent()) {
            refuseContradiction(file, inFile.get(), declared.get(), centre);
        }
        Optional<ReferenceSystem> system = inFile.isPresent() ? inFile : declared;
        system.ifPresent(s -> refuseOtherBody(file, s));
        PointScale scale = system.map(s -> GroundFile.checkedScale(file, s, centre)).orElse(PointScale.UNKNOWN);
        List<String> cautions = new ArrayList<>(found.sayings());
        addSystem(system, cautions);
        Oddities odd = Oddities.of(found, scale.mean());
        return new GroundSource(file, found, new GroundSource.Placed(system, centre, scale, odd, cautions));
    }

    private static void addSystem(Optional<ReferenceSystem> system, List<String> cautions) {
        if (system.isEmpty()) {
            cautions.add("No reference system is known: coordinates were taken as true metres and true north is not"
                    + " known.");
        }
        system.flatMap(ReferenceSystem::code).filter(code -> code.contains("2000")).ifPresent(code ->
                cautions.add("The reference system is written by the code " + code + " of the list of 2000, whose"
                        + " numbers mean other systems in the list of 2015."));
        system.map(ReferenceSystem::bodyRadius).filter(r -> r != KnownSystems.MOON_RADIUS_IAU_2015).ifPresent(r ->
                cautions.add(r == RADIUS_OF_OLD ? "The map is drawn on the sphere of 1738.0 km of older maps of the"
                        + " Moon. If heights count from it too, they are 600 m lower than over 1737.4 km."
                        : String.format(Locale.ROOT, "The map is drawn on a sphere of %.0f m, not the Moon's of"
                        + " 1737400 m.", r)));
    }

    private static void refuseOtherBody(Path file, ReferenceSystem system) {
        double radius = system.bodyRadius();
        if (Math.abs(radius / KnownSystems.MOON_RADIUS_IAU_2015 - 1) > SHARE_OF_RADIUS) {
            throw new FileTrouble(file).badValue("radius of the body", String.format(Locale.ROOT, "%.0f m (%s)", radius,
                    system.name()), "the Moon, 1737400 m to 0.2 %; another body's ground is not for this program");
        }
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
