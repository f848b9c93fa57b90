// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.material.Table;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.MonteCarloSource;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.NeutronEnclosure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Ours in the quantities and places of the Monte Carlo table, electrons and gammas left out: a law test and the page of
 * validation read it.
 */
final class MonteCarlo {
    private static final String TABLE = "/bermwright/shielding/published/monte-carlo-2026.csv";
    /** Inner radius of the smallest spheres (g/cm2): 3 m of soil of 1.65 g/cm3. */
    private static final double LEAST_RADIUS = 495;
    private static final double SHELLS = 5;
    private static final int COSINES = 24;
    private static final double DEEPEST = 1890;

    private final Penetration penetration =
            new Penetration(new Shield(Materials.named("highland"), List.of()), 1, Penetration.Resolution.STANDARD);
    private final BodyDose body = new BodyDose(penetration);

    /** A figure of the table and ours. */
    record Row(String source, String geometry, double depthGCm2, String quantity, double printed, double error,
            double ours) {
        double ratio() {
            return ours / printed;
        }
    }

    private static final class Holder {
        private static final List<Row> ROWS = new MonteCarlo().rows();
    }

    /** All figures that ours can be compared with. */
    static List<Row> all() {
        return Holder.ROWS;
    }

    private List<Row> rows() {
        Map<String, List<String[]>> bySource = new LinkedHashMap<>();
        for (String[] row : Table.rows(MonteCarlo.class, TABLE, ";")) {
            bySource.computeIfAbsent(row[0], k -> new ArrayList<>()).add(row);
        }
        List<Row> rows = new ArrayList<>();
        bySource.forEach((source, table) -> rows.addAll(ofSource(source, table)));
        return rows;
    }

    private List<Row> ofSource(String source, List<String[]> table) {
        TreeSet<Double> depths = new TreeSet<>(List.of(0.0));
        for (String[] row : table) {
            double depth = Double.parseDouble(row[2]);
            depths.add(depth);
            for (int m = 0; m < Field.directions(); m++) {
                depths.add(Math.min(DEEPEST, depth / Field.cosine(m)));
            }
            for (int k = 0; row[1].equals("sphere") && k < COSINES; k++) {
                depths.add(Math.min(DEEPEST, slant(depth, k)));
            }
        }
        double[] all = depths.stream().mapToDouble(Double::doubleValue).toArray();
        Beam beam = MonteCarloSource.of(source, penetration.grid());
        Penetration.Outcome outcome = penetration.carry(beam, all, Progress.NONE);
        Map<String, Map<String, Double>> ours = new LinkedHashMap<>();
        List<Row> rows = new ArrayList<>();
        for (String[] row : table) {
            double depth = Double.parseDouble(row[2]);
            Map<String, Double> place = ours.computeIfAbsent(row[1] + depth, k -> row[1].equals("sphere")
                    ? at(penetration.carry(beam, all, radius(depth) + depth, Progress.NONE), all, row[1], depth)
                    : at(outcome, all, row[1], depth));
            if (place.containsKey(row[3])) {
                rows.add(new Row(source, row[1], depth, row[3], Double.parseDouble(row[4]),
                        Double.parseDouble(row[5]), place.get(row[3])));
            }
        }
        return rows;
    }

    private Map<String, Double> at(Penetration.Outcome outcome, double[] all, String geometry, double depth) {
        int at = Arrays.binarySearch(all, depth);
        Field field = outcome.fields().get(at);
        double[] slow = new double[Field.groups()];
        double[] numbers = new double[0];
        if (geometry.equals("sphere")) {
            slow = field.sphere();
            for (int k = 0; k < COSINES; k++) {
                double cosine = (k + 0.5) / COSINES;
                double slant = slant(depth, k);
                Field along = outcome.fields().get(Arrays.binarySearch(all, Math.min(DEEPEST, slant)));
                double share = 3 * cosine * cosine / COSINES;
                double[] line = Field.line(depth / slant);
                numbers = plus(numbers, straight(along), slant < DEEPEST ? share : 0);
                for (int m = 0; m < line.length; m++) {
                    numbers = plus(numbers, counted(field.level().made().get(m)), share * line[m]);
                }
            }
            numbers = plus(numbers, counted(field.returned().wall()), 2);
        } else {
            boolean open = geometry.startsWith("open");
            for (int m = 0; m < Field.directions() && !geometry.contains("from"); m++) {
                double slant = depth / Field.cosine(m);
                Field along = outcome.fields().get(Arrays.binarySearch(all, Math.min(DEEPEST, slant)));
                numbers = plus(numbers, straight(along), slant < DEEPEST ? Field.share(m) / 2 : 0);
                numbers = plus(numbers, counted(field.level().made().get(m)), Field.share(m) / 2);
            }
            numbers = plus(numbers, counted(field.level().up()), 0.5);
            if (open) {
                slow = outcome.ground();
            } else if (geometry.startsWith("level")) {
                slow = outcome.room().midst(depth);
            } else {
                NeutronEnclosure.Walls walls = outcome.room().walls();
                for (int m = 0; m < Field.directions(); m++) {
                    walls.add(depth, depth / Field.cosine(m), 1 / Field.cosine(m), Field.share(m));
                }
                slow = geometry.contains("from") ? walls.up() : walls.fluence();
            }
        }
        return named(numbers, slow);
    }

    private static double slant(double depth, int k) {
        double inner = radius(depth);
        double cosine = (k + 0.5) / COSINES;
        return Math.sqrt((inner + depth) * (inner + depth) - inner * inner * (1 - cosine * cosine)) - inner * cosine;
    }

    private static double radius(double depth) {
        return Math.max(LEAST_RADIUS, SHELLS * depth);
    }

    private double[] straight(Field field) {
        return body.counted(field.beam().straight());
    }

    private double[] counted(Beam beam) {
        return body.counted(beam);
    }

    private static double[] plus(double[] sum, double[] more, double factor) {
        double[] all = sum.length == 0 ? new double[more.length] : sum;
        for (int k = 0; k < more.length; k++) {
            all[k] += factor * more[k];
        }
        return all;
    }

    private static Map<String, Double> named(double[] n, double[] slow) {
        double slowDose = BodyDose.slow(slow);
        double slowFluence = 0;
        for (int g = 0; g < slow.length; g++) {
            slowFluence += Field.groupMeV(g) > 1 ? slow[g] : 0;
        }
        Map<String, Double> named = new LinkedHashMap<>();
        named.put("fluence of neutrons above 20 MeV", n[0]);
        named.put("fluence of neutrons of 1 to 20 MeV", slowFluence);
        named.put("fluence of protons above 100 MeV", n[1]);
        named.put("fluence of charged pions above 20 MeV", n[2]);
        named.put("fluence of muons above 20 MeV", n[3]);
        named.put("effective dose, neutrons of 0.1 to 20 MeV", slowDose);
        named.put("effective dose, neutrons above 20 MeV", n[4]);
        named.put("effective dose, protons", n[5]);
        named.put("effective dose, helium", n[6]);
        named.put("effective dose, pions and muons", n[7]);
        named.put("dose in soil, electrons and gammas", n[8]);
        named.put("effective dose without electrons and gammas", slowDose + n[4] + n[5] + n[6] + n[7]);
        return named;
    }
}
