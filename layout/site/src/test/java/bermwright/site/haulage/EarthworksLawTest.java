// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Progress;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.example.SiteExample;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EarthworksLawTest {
    /** The solver's tolerance, as a share. */
    private static final double SOLVER = 1e-6;

    private static EarthworksResult random(long seed, int parts) {
        Random random = new Random(seed);
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("B1", SiteExample.square(80, 80, 50), 0.6),
                SiteExample.borrow("B2", SiteExample.square(520, 100, 70), 0.9),
                SiteExample.borrow("B3", SiteExample.square(500, 520, 40), 1.2));
        Plan plan = SiteExample.with(SiteExample.plan(), change);
        List<SoilNeed> needs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double placed = 500 + 1500 * random.nextDouble();
            double east = 150 + 300 * random.nextDouble();
            double north = 150 + 300 * random.nextDouble();
            for (int k = 0; k < parts; k++) {
                needs.add(new SoilNeed("H" + i, SoilNeed.Kind.FILL, placed / parts, 1650,
                        List.of(SiteExample.square(east, north, 30))));
            }
        }
        return Earthworks.of(new EarthworksInput(plan, SiteExample.ground((e, n) -> 2 * Math.sin(e / 50)), needs,
                List.of(), EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void soilIsConserved(long seed) {
        EarthworksResult result = random(seed, 1);
        double dug = result.hauls().stream().mapToDouble(h -> h.bank() * 1800).sum();
        double placed = result.hauls().stream().mapToDouble(h -> h.placed() * 1650).sum();
        assertEquals(result.mass(), placed + 1800 * result.shortage(), SOLVER * result.mass());
        assertEquals(placed, dug, SOLVER * dug);
        assertEquals(result.bank(), result.hauls().stream().mapToDouble(Haul::bank).sum() + result.shortage(),
                SOLVER * result.bank());
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7})
    void splittingTheNeedsAddsUp(long seed) {
        EarthworksResult whole = random(seed, 1);
        EarthworksResult parts = random(seed, 4);
        assertEquals(whole.machineHours().orElseThrow(), parts.machineHours().orElseThrow(),
                1e-4 * whole.machineHours().orElseThrow());
        assertEquals(whole.borrowLeft(), parts.borrowLeft(), 0.01);
        assertEquals(whole.bank(), parts.bank(), 0.01);
    }

    private static EarthworksResult mirrored(boolean mirror) {
        Change change = new Change();
        double east = mirror ? 600 - 80 : 80;
        double far = mirror ? 600 - 470 : 470;
        change.borrow = List.of(SiteExample.borrow("B1", SiteExample.square(east, 80, 50), 0.6),
                SiteExample.borrow("B2", SiteExample.square(far, 130, 60), 0.6));
        Plan plan = SiteExample.with(SiteExample.plan(), change);
        List<SoilNeed> needs = List.of(new SoilNeed("F", SoilNeed.Kind.FILL, 2000, 1650,
                List.of(SiteExample.square(mirror ? 600 - 350 : 350, 400, 40))));
        return Earthworks.of(new EarthworksInput(plan, SiteExample.ground((e, n) -> {
            double x = mirror ? 600 - e : e;
            return 4 * Math.sin(x / 50) * Math.cos(n / 40);
        }), needs, List.of(), EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE);
    }

    @Test
    void aMirroredSiteTakesTheSameHours() {
        EarthworksResult one = mirrored(false);
        EarthworksResult other = mirrored(true);
        // Where two ways cost the same to rounding, their pulling may differ.
        assertEquals(one.machineHours().orElseThrow(), other.machineHours().orElseThrow(),
                0.002 * one.machineHours().orElseThrow());
        assertEquals(one.borrowLeft(), other.borrowLeft(), 0.01);
        assertEquals(one.findings().stream().map(f -> f.rule().id()).toList(),
                other.findings().stream().map(f -> f.rule().id()).toList());
    }
}
