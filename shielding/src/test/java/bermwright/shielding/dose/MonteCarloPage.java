// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The part of the page of comparisons that shows ours beside the Monte Carlo, and beside cosmogenic nuclides. */
final class MonteCarloPage {
    private static final String TOTAL = "effective dose without electrons and gammas";
    private static final Map<String, String> QUANTITIES = Map.of("effective dose, neutrons of 0.1 to 20 MeV",
            "slow neutrons", "effective dose, neutrons above 20 MeV", "fast neutrons", "effective dose, protons",
            "protons", "effective dose, pions and muons", "pions and muons");
    private static final Map<String, String> SOURCES = Map.of("gcr_p", "cosmic protons", "gcr_he", "cosmic helium",
            "feb1956", "February 1956", "band300", "protons about 300 MeV", "band3000", "protons about 3 GeV",
            "band30000", "protons about 30 GeV");
    private static final double[] BOUNDS = {50, 180, 500, 1000};
    /** Below this spallation makes next to no beryllium of oxygen (MeV). */
    private static final double SPALLATION_MEV = 40;

    private static final String HEAD = """

            ## Beside a Monte Carlo

            Monte Carlo with Geant4 11.4.0, own run, 2026; Bertini and FTF models; the same arriving spectra, so that
            only transport and reactions are compared. Figures to compare with, not measurements. All rows were
            compared and seen while the transport was made; nothing is fitted to them, but whoever likes may count them
            as not blind. Part of the cases is kept back and not known to us. The other nuclear model (binary cascade
            below 6 GeV) gives 0.89 of what stands here.

            Effective dose without electrons and gammas, ours over theirs, by depth (g/cm2). "Before" is the straight
            march that stood here until 30 November 2026.

            """;

    private static final String BEFORE = """

            | before | 20 | 50 | 100 | 180 | 300 | 500 | 1000 |
            | --- | --- | --- | --- | --- | --- | --- | --- |
            | cosmic protons, level ground | 0.79 | 0.85 | 0.90 | 0.91 | 0.88 | 0.81 | 0.73 |
            | cosmic protons, room | 0.89 | 0.89 | 0.88 | 0.85 | 0.80 | 0.72 | |
            | cosmic protons, sphere | 1.04 | 1.00 | 0.98 | 1.01 | 1.05 | 1.10 | 1.27 |
            | cosmic helium, level ground | 0.85 | 0.91 | 0.94 | 0.92 | 0.86 | 0.78 | 0.67 |
            | February 1956, room | 1.04 | 1.07 | 1.08 | 0.96 | 0.71 | 0.39 | |
            | February 1956, sphere | 1.11 | 1.16 | 1.20 | 1.16 | 0.98 | 0.64 | 0.3 |
            """;

    private static final String CAUSES = """

            What was mended, causes and not rows: hadrons that reactions make are carried through the slab by direction
            (`SlabHadrons`), so what scatters out of a ray leaves it, what comes in at a slant feeds its neighbours, and
            what goes up leaves the ground; charged pions that go back are followed; stopped negative pions are captured
            with all they send out; elastic scattering turns nucleons aside; gammas of nuclei count. What is left:
            protons of 10 to 100 GeV make fewer slow nucleons than with the string model, which gives 2 to 2.5 times as
            many of 20 to 100 MeV at 5 GeV as all cascades, ours among them; charged pions above some GeV reach too deep
            (1.5 at 400, 3 at 1000 g/cm2, a few hundredths of the dose), as no kaons share their energy; electrons and
            gammas near the surface are half as many again; in bulging walls only the way of what arrives is bent, not
            that of what it makes.

            """;

    private MonteCarloPage() {
    }

    static void add(StringBuilder page) {
        page.append(HEAD);
        totals(page);
        page.append(BEFORE).append("\nBy particle, cosmic protons and February 1956:\n");
        parts(page);
        page.append(CAUSES);
        spread(page);
        cosmogenic(page);
    }

    private static void totals(StringBuilder page) {
        Map<String, TreeMap<Double, Double>> table = new LinkedHashMap<>();
        for (MonteCarlo.Row row : MonteCarlo.all()) {
            if (row.quantity().equals(TOTAL)) {
                table.computeIfAbsent(SOURCES.get(row.source()) + ", " + row.geometry(), k -> new TreeMap<>())
                        .put(row.depthGCm2(), row.ratio());
            }
        }
        table(page, table);
    }

    private static void parts(StringBuilder page) {
        Map<String, TreeMap<Double, Double>> table = new LinkedHashMap<>();
        for (MonteCarlo.Row row : MonteCarlo.all()) {
            if (QUANTITIES.containsKey(row.quantity()) && (row.source().equals("gcr_p")
                    || row.source().equals("feb1956")) && row.error() < 0.1) {
                table.computeIfAbsent(SOURCES.get(row.source()) + ", " + row.geometry() + ", "
                        + QUANTITIES.get(row.quantity()), k -> new TreeMap<>()).put(row.depthGCm2(), row.ratio());
            }
        }
        page.append('\n');
        table(page, table);
    }

    private static void table(StringBuilder page, Map<String, TreeMap<Double, Double>> table) {
        TreeMap<Double, Boolean> depths = new TreeMap<>();
        table.values().forEach(row -> row.keySet().forEach(d -> depths.put(d, true)));
        page.append("| compared, seen |");
        depths.keySet().forEach(d -> page.append(String.format(Locale.ROOT, " %.0f |", d)));
        page.append("\n| --- |").append(" --- |".repeat(depths.size())).append('\n');
        table.forEach((name, row) -> {
            page.append("| ").append(name).append(" |");
            depths.keySet().forEach(d -> page.append(row.containsKey(d)
                    ? String.format(Locale.ROOT, " %.2f |", row.get(d)) : "  |"));
            page.append('\n');
        });
    }

    /** Spread of ours over theirs, as one number: the root mean square of the logarithm. */
    private static void spread(StringBuilder page) {
        page.append("Spread of ours over others as one number, the root mean square of the logarithm:\n\n"
                + "| kind | to 50 g/cm2 | to 180 | to 500 | to 1000 |\n| --- | --- | --- | --- | --- |\n");
        for (String[] kind : new String[][] {{"calculated: Monte Carlo, cosmic rays", "gcr_p", "gcr_he"},
            {"calculated: Monte Carlo, February 1956", "feb1956", "feb1956"}}) {
            page.append("| ").append(kind[0]).append(" |");
            for (int b = 0; b < BOUNDS.length; b++) {
                List<Double> logs = new ArrayList<>();
                for (MonteCarlo.Row row : MonteCarlo.all()) {
                    boolean counts = row.quantity().equals(TOTAL) && (row.source().equals(kind[1])
                            || row.source().equals(kind[2]));
                    if (counts && row.depthGCm2() <= BOUNDS[b] && (b == 0 || row.depthGCm2() > BOUNDS[b - 1])) {
                        logs.add(Math.log(row.ratio()));
                    }
                }
                page.append(number(logs));
            }
            page.append('\n');
        }
        for (String kind : new String[] {"measured", "calculated, published", "remembered"}) {
            page.append("| ").append(kind).append(" doses |");
            for (int b = 0; b < BOUNDS.length; b++) {
                List<Double> logs = new ArrayList<>();
                for (PublishedDose dose : PublishedDose.cosmic()) {
                    double depth = dose.arealDensity() / 10;
                    if (dose.work().counts() && kind.equals(kind(dose)) && depth <= BOUNDS[b]
                            && (b == 0 || depth > BOUNDS[b - 1])) {
                        logs.add(dose.distance());
                    }
                }
                page.append(number(logs));
            }
            page.append('\n');
        }
    }

    private static String kind(PublishedDose dose) {
        String source = dose.work().source();
        return source.contains("from memory") ? "remembered"
                : source.contains("Zhang") || source.contains("Zeitlin") ? "measured" : "calculated, published";
    }

    private static String number(List<Double> logs) {
        double sum = logs.stream().mapToDouble(l -> l * l).sum();
        return logs.isEmpty() ? "  |" : String.format(Locale.ROOT, " %.2f (%d) |", Math.sqrt(sum / logs.size()),
                logs.size());
    }

    private static void cosmogenic(StringBuilder page) {
        Penetration penetration =
                new Penetration(new Shield(Materials.named("highland"), List.of()), 1, Penetration.Resolution.STANDARD);
        List<Field> fields = penetration.carry(Beam.cosmic(new CosmicSpectrum(50), penetration.grid(), 0),
                new double[] {0, 150, 400}, Progress.NONE).fields();
        double half = Math.log(2) * 250 / Math.log(fast(penetration, fields.get(1)) / fast(penetration, fields.get(2)));
        page.append(String.format(Locale.ROOT, """

                ## Depth profiles of cosmogenic nuclides

                Measured in lunar cores, half attenuation of 10Be 120 and of 36Cl 132 g/cm2 at 150 to 400 g/cm2
                (Nishiizumi et al. 1984, Earth Planet. Sci. Lett. 70, 157). Ours, neutrons above %.0f MeV under level
                highland soil between those depths, which make most of them: %.0f g/cm2; those above 20 MeV of the Monte
                Carlo between 250 and 400 g/cm2: 136. So ours fall a tenth too slowly; compared after the transport was
                made, nothing follows from it there.
                """, SPALLATION_MEV, half));
    }

    private static double fast(Penetration penetration, Field field) {
        double sum = 0;
        for (int i = 0; i < penetration.grid().size(); i++) {
            double width = penetration.grid().energyMeV(i) < SPALLATION_MEV ? 0 : penetration.grid().widthMeV(i);
            sum += width * field.level().up().fluence(0, i);
            for (int m = 0; m < Field.directions(); m++) {
                sum += width * Field.share(m) * field.level().made().get(m).fluence(0, i);
            }
        }
        return sum;
    }
}
