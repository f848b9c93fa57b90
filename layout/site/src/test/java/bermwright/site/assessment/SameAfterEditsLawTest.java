// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.fold.SkyPicture;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of a plan that was edited again and again is what is said of it at first, to the last digit. */
class SameAfterEditsLawTest {
    private static final int EDITS = 5;

    @TempDir
    static Path directory;

    private final Responses responses = new Responses(directory);

    private static Plan begun() {
        return SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(60, 60), 75),
                SamplePlans.hull("B", new Point(200, 80), 20), SamplePlans.hull("C", new Point(90, 220), 140)));
    }

    /** Moves, turns, covers more deeply or bares one of the hulls. */
    private static Plan edited(Plan plan, Random random) {
        Hull hull = plan.hulls().get(random.nextInt(plan.hulls().size()));
        Point at = hull.baseCentre();
        switch (random.nextInt(4)) {
            case 0:
                return plan.withHull(hull.id(), h -> h.withBaseCentre(new Point(at.east() + random.nextInt(9) - 4,
                        at.north() + random.nextInt(9) - 4)));
            case 1:
                return plan.withHull(hull.id(), h -> h.withLayDownAzimuth(Azimuth.ofDegrees(random.nextInt(360))));
            case 2:
                return plan.withHull(hull.id(), h -> h.withCover(h.cover().isPresent() ? Optional.empty()
                        : begun().hulls().get(0).cover()));
            default:
                return plan.withHull(hull.id(), h -> h.withBaseCentre(new Point(at.east() + 0.013, at.north())));
        }
    }

    private static String text(Assessment all) {
        StringBuilder text = new StringBuilder();
        for (StationDose station : all.dose().orElseThrow().stations()) {
            StationDose.Seen seen = station.seen();
            text.append(station.name()).append(' ').append(station.standing()).append(' ').append(station.parts())
                    .append(' ').append(seen.directions()).append(' ').append(seen.openShare()).append(' ')
                    .append(seen.worst()).append(' ').append(seen.shareBeyondTable()).append(' ')
                    .append(seen.shareBeyondEdge());
            seen.distribution().forEach((x, slant, share) -> text.append(x).append(slant).append(share));
            SkyPicture picture = seen.picture();
            for (int i = 0; i < picture.sectors() * picture.bands(); i++) {
                text.append(picture.arealDensity(i / picture.bands(), i % picture.bands()));
            }
            text.append('\n');
        }
        for (HullCover cover : all.cover().orElseThrow().hulls()) {
            text.append(cover.id()).append(' ').append(cover.volume()).append(' ').append(cover.least()).append(' ')
                    .append(cover.uncertainty());
            for (int i = 0; i < cover.depth().rows() * cover.depth().columns(); i++) {
                text.append(cover.depth().trueDepth(i / cover.depth().columns(), i % cover.depth().columns()));
            }
        }
        all.findings().forEach(f -> text.append(f).append('\n'));
        return text.append(all.dose().get().limits()).append(all.models()).toString();
    }

    private static SiteGround ground() throws IOException {
        ElevationGrid grid = SamplePlans.ground((e, n) -> 0.01 * e + 0.7 * Math.sin(e / 23) * Math.cos(n / 19));
        StringBuilder text = new StringBuilder("ncols 301\nnrows 301\nxllcenter 0\nyllcenter 0\ncellsize 1\n");
        for (int node = 0; node < grid.frame().size(); node++) {
            text.append(grid.nodeHeight(300 - node / 301, node % 301)).append(' ');
        }
        Files.writeString(directory.resolve("ground.asc"), text);
        GroundFile file = GroundFiles.read(directory.resolve("ground.asc"), GroundFiles.Knowledge.NONE, Progress.NONE);
        return new SiteGround(file, directory);
    }

    private static String asked(Assessments of, Plan plan, SiteGround ground) {
        return text(of.run(Assessments.Asked.DOSE, new Assessments.Site(plan, "plan", ground), Progress.NONE));
    }

    @Test
    void afterAnyEditsAnswersAreThoseOfTheFirstTime() throws IOException {
        Random random = new Random(17);
        Assessments kept = new Assessments(responses);
        Plan plan = begun();
        SiteGround ground = ground();
        asked(kept, plan, ground);
        for (int i = 0; i < EDITS; i++) {
            Plan next = edited(plan, random);
            assertEquals(asked(new Assessments(responses), next, ground), asked(kept, next, ground), "edit " + i);
            // Every third edit is taken back.
            plan = i % 3 == 2 ? plan : next;
        }
    }
}
