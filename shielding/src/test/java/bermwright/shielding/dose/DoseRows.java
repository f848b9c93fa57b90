// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.material.Table;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Our answers to published dose rows, each in the row's own quantity, sun and medium; computed once. */
final class DoseRows {
    private static final double YEAR_MILLI = 365.25 * 86400 * 1e3;
    private static final double DAY = 86400;
    private static final double[] DEPTHS = {0, 10, 15, 16, 20, 25, 30, 35, 40, 50, 60, 70, 80, 90, 100, 120, 150, 180,
        200, 250, 300, 500, 1000, 1500};
    /** Rows computed through air. */
    private static final double[] AIR_DEPTHS = {226, 300, 400, 700};
    private static final double SEA_LEVEL = 1033;
    /** Standard atmosphere above 3 km, 701 hPa. */
    private static final double THREE_KILOMETRES = 715;
    /** Along rays nothing is followed deeper. */
    private static final double DEEPEST = 1890;
    private static final int MADE_PROTON = 30;
    private static final int MUON = 31;
    /** Kinetic energy at 1 GeV/c (MeV). */
    private static final double ONE_GEV_MUON = 900;
    private static final double ONE_GEV_PROTON = 433;
    /** Air at about 9 km (kg/m3): it decides how many pions decay before they react. */
    private static final double AIR_DENSITY = 0.5;

    private final Map<String, Double> answers = new LinkedHashMap<>();
    private final Run soil = new Run(Materials.named("highland"));
    private final Run aluminium = new Run(Materials.named("aluminium"));

    private DoseRows() {
    }

    /** All answers by the id of the row. */
    static Map<String, Double> answers() {
        return Holder.ANSWERS;
    }

    /** Ours beside a figure of the spread between sources, in the figure's own quantity (Sv a day). */
    static double beside(PublishedDose figure) {
        double depth = figure.arealDensity() / 10;
        Run soil = new Run(Materials.named("highland"));
        Penetration.Outcome outcome = soil.cosmic(figure.modulationW(), 0, depth);
        Field field = outcome.fields().get(0);
        boolean sphere = figure.work().source().contains("halved");
        double ground = depth > 0 || sphere ? 0 : soil.ground(outcome) * DAY;
        OrganExposure organs = soil.organs;
        return ground + DAY * switch (figure.work().quantity()) {
            case "effective dose" -> sphere ? soil.body.inSphere(field).total() / 2
                    : soil.body.effective(field).underDome().total();
            case "dose equivalent of a thin detector" -> organs.thinDetector(field).equivalent() / 2;
            default -> sphere || depth == 0 ? organs.mean(field).equivalent() / 2
                    : organs.meanUnderDome(field).equivalent();
        };
    }

    /** The printed rows: id, printed, low, high, unit, miss, remembered, source. */
    static List<String[]> printed() {
        return Table.rows(DoseRows.class, "/bermwright/shielding/published/dose-rows.csv", ",");
    }

    /** Ids of all rows. */
    static List<String> ids() {
        return printed().stream().map(r -> r[0]).toList();
    }

    private static final class Holder {
        private static final Map<String, Double> ANSWERS = compute();

        private static Map<String, Double> compute() {
            DoseRows rows = new DoseRows();
            rows.surface();
            rows.depth();
            rows.events();
            rows.space();
            rows.air();
            return rows.answers;
        }
    }

    /** A medium made ready. */
    private static final class Run {
        private final Penetration penetration;
        private final PointDose point;
        private final BodyDose body;
        private final OrganExposure organs;

        Run(Material material) {
            penetration = new Penetration(new Shield(material, List.of()), 1, Penetration.Resolution.STANDARD);
            point = new PointDose(penetration);
            body = new BodyDose(penetration);
            organs = new OrganExposure(penetration);
        }

        Penetration.Outcome cosmic(double w, double cutoff, double... depths) {
            return penetration.carry(Beam.cosmic(new CosmicSpectrum(w), penetration.grid(), cutoff), depths,
                    Progress.NONE);
        }

        double effective(Penetration.Outcome outcome, int i) {
            return body.inSphere(outcome.fields().get(i)).total();
        }

        /** Tissue-weighted doses under a dome. */
        OrganDose meanUnderDome(Penetration.Outcome outcome, int i) {
            return organs.meanUnderDome(outcome.fields().get(i));
        }

        /** Effective dose equivalent in a sphere. */
        double meanEquivalent(Penetration.Outcome outcome, int i) {
            return organs.mean(outcome.fields().get(i)).equivalent();
        }

        /** Effective dose equivalent on open ground. */
        double onGround(Penetration.Outcome outcome) {
            return meanEquivalent(outcome, 0) / 2 + ground(outcome);
        }

        double dome(Penetration.Outcome outcome, int i) {
            return body.effective(outcome.fields().get(i)).underDome().total();
        }

        double fastNeutrons(Beam back) {
            return fast(back, FluenceCoefficients::neutron);
        }

        double fast(Beam back, DoubleUnaryOperator coefficient) {
            double sum = 0;
            for (int i = 0; i < penetration.grid().size(); i++) {
                sum += back.fluence(0, i) * penetration.grid().widthMeV(i)
                        * coefficient.applyAsDouble(penetration.grid().energyMeV(i));
            }
            return sum;
        }

        /** All that open ground sends back. */
        double ground(Penetration.Outcome outcome) {
            Field open = outcome.fields().get(0);
            double fast = (body.effective(open).total() - body.inSphere(open).total()) / 2;
            return BodyDose.slow(outcome.ground()) + fast + TransportResponse.GROUND_GAMMAS;
        }

        OrganDose thinDetector(Penetration.Outcome outcome, int i) {
            return organs.thinDetector(outcome.fields().get(i));
        }
    }

    private void surface() {
        Penetration.Outcome minimum = soil.cosmic(10, 0, 0);
        Beam thrownBack = thrownBack(minimum);
        double neutrons = BodyDose.slow(minimum.ground()) + soil.fastNeutrons(thrownBack);
        double ground = soil.ground(minimum);
        double sky = soil.effective(minimum, 0) / 2;
        OrganDose skin = soil.thinDetector(minimum, 0);
        double onGround = soil.onGround(minimum) * YEAR_MILLI;
        answers.put("surface-2024", onGround);
        answers.put("surface-day", (skin.equivalent() / 2 + ground) * DAY * 1e6);
        answers.put("surface-silicon",
                (skin.absorbed() / 2 + soil.point.madeProtons(thrownBack)) * 3600 * 1e6 / 1.3 + 3.1);
        answers.put("surface-minimum", onGround);
        answers.put("surface-effective", onGround);
        answers.put("ground-share", neutrons / sky);
        answers.put("secondary-share-0", ground / (sky + ground));
        answers.put("albedo-share", neutrons / (sky + ground));
        double neutral = soil.fast(thrownBack, e -> FluenceCoefficients.neutron(e) / Quality.neutronWeight(e));
        for (int g = 0; g < Field.groups(); g++) {
            double energy = Field.groupMeV(g);
            neutral += minimum.ground()[g] * FluenceCoefficients.neutron(energy) / Quality.neutronWeight(energy);
        }
        answers.put("surface-neutral", (neutral + TransportResponse.GROUND_GAMMAS) * 3600 * 1e6 / 1.3);
        answers.put("surface-maximum", soil.onGround(soil.cosmic(100, 0, 0)) * YEAR_MILLI);
        Penetration.Outcome deepMinimum = soil.cosmic(0, 0, 0);
        double ambient = soil.fast(thrownBack(deepMinimum), FluenceCoefficients::ambient);
        for (int g = 0; g < Field.groups(); g++) {
            ambient += deepMinimum.ground()[g] * FluenceCoefficients.ambient(Field.groupMeV(g));
        }
        answers.put("ground-neutrons", ambient * YEAR_MILLI);
        answers.put("neutron-production", soil.cosmic(60, 0, 0).made() * 1e-4);
    }

    /** Fast nucleons that open ground throws back. */
    private static Beam thrownBack(Penetration.Outcome outcome) {
        return outcome.fields().get(0).returned().ground();
    }

    private void depth() {
        Penetration.Outcome outcome = soil.cosmic(10, 0, DEPTHS);
        Particles[] doses = outcome.fields().stream().map(soil.body::effective).map(Particles::underDome)
                .toArray(Particles[]::new);
        OrganDose[] means = IntStream.range(0, DEPTHS.length).mapToObj(i -> soil.meanUnderDome(outcome, i))
                .toArray(OrganDose[]::new);
        answers.put("regolith-180", means[index(180)].equivalent() * YEAR_MILLI);
        answers.put("absorbed-kept", means[index(180)].absorbed() / means[0].absorbed());
        Particles hundred = doses[index(100)];
        answers.put("secondary-share-100", (hundred.fastNeutrons() + hundred.slowNeutrons() + hundred.pions()
                + hundred.gammas()) / hundred.total());
        answers.put("neutrons-rise-and-fall",
                greatestAt(0, i -> doses[i].fastNeutrons() + doses[i].slowNeutrons()));
        int turn = 0;
        while (turn + 1 < means.length && means[turn + 1].equivalent() < means[turn].equivalent()) {
            turn++;
        }
        answers.put("rise-of-dose", turn + 1 < means.length ? greatestAt(turn, i -> means[i].equivalent()) : 0);
        answers.put("beyond-500", soil.effective(outcome, index(500)) * YEAR_MILLI);
        answers.put("beyond-1500", doses[index(1500)].total() * YEAR_MILLI);
        Penetration.Outcome metal = aluminium.cosmic(10, 0, DEPTHS);
        double[] inMetal = IntStream.range(0, index(120)).mapToDouble(i -> aluminium.meanEquivalent(metal, i))
                .toArray();
        int least = 0;
        for (int i = 1; i < inMetal.length; i++) {
            least = inMetal[i] < inMetal[least] ? i : least;
        }
        answers.put("aluminium-minimum", DEPTHS[least]);
    }

    /** Depth of the greatest dose from a depth on, by the indices of depths. */
    private static double greatestAt(int from, IntToDoubleFunction dose) {
        int best = from;
        for (int i = best; i < DEPTHS.length; i++) {
            best = dose.applyAsDouble(i) > dose.applyAsDouble(best) ? i : best;
        }
        return DEPTHS[best];
    }

    private static int index(double depth) {
        return Arrays.binarySearch(DEPTHS, depth);
    }

    private void events() {
        double[] depths = {0, 30, 150};
        Penetration.Outcome outcome = soil.penetration.carry(
                Beam.event(EventSpectra.named("february 1956"), soil.penetration.grid()), depths, Progress.NONE);
        answers.put("february-1956-30", soil.dome(outcome, 1) * 1e3);
        answers.put("february-1956-150", soil.dome(outcome, 2) * 1e3);
        Penetration.Outcome metal = aluminium.penetration.carry(
                Beam.event(EventSpectra.named("february 1956"), aluminium.penetration.grid()), depths, Progress.NONE);
        answers.put("regolith-over-aluminium", soil.effective(outcome, 1) / aluminium.effective(metal, 1));
    }

    private void space() {
        Penetration.Outcome free = soil.cosmic(10, 0, 0);
        answers.put("free-absorbed", soil.thinDetector(free, 0).absorbed() * YEAR_MILLI);
        answers.put("free-effective", soil.meanEquivalent(free, 0) * YEAR_MILLI);
        Penetration.Outcome cruise = aluminium.cosmic(45, 0, 0, 16);
        OrganDose skin = aluminium.thinDetector(cruise, 1);
        answers.put("cruise-absorbed", skin.absorbed() * DAY * 1e3);
        answers.put("cruise-equivalent", skin.equivalent() * DAY * 1e3);
    }

    private void air() {
        Material ground = Materials.named("air");
        Run air = new Run(new Material("air", AIR_DENSITY, ground.kind(), ground.parts(), ground.excitation(),
                ground.source()));
        TreeSet<Double> depths = new TreeSet<>(List.of(0.0, SEA_LEVEL));
        for (double depth : new double[] {226, 300, 400, 700, THREE_KILOMETRES, SEA_LEVEL}) {
            depths.add(depth);
            for (int m = 0; m < Field.directions(); m++) {
                depths.add(Math.min(DEEPEST, depth / Field.cosine(m)));
            }
        }
        double[] all = depths.stream().mapToDouble(Double::doubleValue).toArray();
        Penetration.Outcome polar = air.cosmic(10, 0, all);
        for (double depth : AIR_DEPTHS) {
            answers.put("air-" + (int) depth, inAir(air, polar, all, depth));
        }
        // New York, at 50 degrees of geomagnetic latitude: cut-off 2.08 GV, mean activity.
        Penetration.Outcome city = air.cosmic(50, 2.08, all);
        answers.put("altitude-3000", inAir(air, city, all, THREE_KILOMETRES));
        answers.put("altitude-0", inAir(air, city, all, SEA_LEVEL));
        double[] slow = city.room().midst(SEA_LEVEL);
        double neutrons = 0;
        for (int g = 0; g < slow.length; g++) {
            neutrons += Field.groupMeV(g) > 10 ? slow[g] : 0;
        }
        Field atSea = city.fields().get(Arrays.binarySearch(all, SEA_LEVEL));
        neutrons += above(air, atSea.level().up(), 0, 20) * 4 * Math.PI / 2;
        for (int m = 0; m < Field.directions(); m++) {
            neutrons += above(air, atSea.level().made().get(m), 0, 20) * 4 * Math.PI * Field.share(m) / 2;
        }
        answers.put("sea-level-neutrons", neutrons * 0.36);
        // Vertical intensities, no cut-off.
        Penetration.Outcome open = air.cosmic(50, 0, all);
        Beam sea = open.fields().get(Arrays.binarySearch(all, SEA_LEVEL)).beam();
        answers.put("sea-level-muons", above(air, sea, MUON, ONE_GEV_MUON));
        answers.put("sea-level-protons",
                above(air, sea, 1, ONE_GEV_PROTON) + above(air, sea, MADE_PROTON, ONE_GEV_PROTON));
    }

    /** Effective dose in flat air (uSv/h), by direction; slow neutrons as in the midst of it. */
    private static double inAir(Run air, Penetration.Outcome outcome, double[] depths, double depth) {
        double sum = BodyDose.slow(outcome.room().midst(depth));
        Field level = outcome.fields().get(Arrays.binarySearch(depths, depth));
        double[] numbers = air.body.directions(level, air.body.effective(level));
        sum += numbers[1] / 2;
        for (int m = 0; m < Field.directions(); m++) {
            double slant = depth / Field.cosine(m);
            Field along = outcome.fields().get(Arrays.binarySearch(depths, Math.min(DEEPEST, slant)));
            double straight = slant < DEEPEST ? air.body.directions(along, air.body.effective(along))[0] : 0;
            sum += (straight + numbers[2 + 2 * m]) * Field.share(m) / 2;
        }
        return sum * 3600 * 1e6;
    }

    private static double above(Run run, Beam beam, int species, double energyMeV) {
        double sum = 0;
        for (int i = 0; i < run.penetration.grid().size(); i++) {
            sum += run.penetration.grid().energyMeV(i) < energyMeV ? 0
                    : beam.fluence(species, i) * run.penetration.grid().widthMeV(i) / (4 * Math.PI);
        }
        return sum;
    }
}
