// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.material.Element;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Table;
import bermwright.shielding.transport.FragmentYields;
import bermwright.shielding.transport.IonReactions;
import bermwright.shielding.transport.Stopping;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The page that puts every answer beside the published figure, misses on top. */
final class Validation {
    private static final String TABLES = "/bermwright/shielding/published/";
    private static final List<String> TABLES_OF_FIGURES = List.of("pstar-protons.csv", "pstar-ranges.csv",
            "icru-ions-water.csv", "astar-alumina.csv", "barashenkov-1994-protons.csv", "villagrasa-2007-iron.csv",
            "icrp-116-iso.csv", "icrp-116-helium.csv");
    /** What the hand-set production of the noted first chain gave for the rows; blank where it was not noted. */
    private static final Map<String, String> BEFORE = Map.ofEntries(Map.entry("regolith-180", "228 (tuned on it)"),
            Map.entry("surface-2024", "408"), Map.entry("absorbed-kept", "0.90"), Map.entry("surface-minimum", "408"),
            Map.entry("surface-effective", "408"), Map.entry("secondary-share-100", "0.65"),
            Map.entry("february-1956-30", "169"), Map.entry("february-1956-150", "65"),
            Map.entry("free-absorbed", "166"), Map.entry("cruise-absorbed", "0.40"),
            Map.entry("cruise-equivalent", "1.36"), Map.entry("neutron-production", "13.3 (tuned on it)"),
            Map.entry("air-226", "5.0 hadronic (tuned on it)"), Map.entry("air-300", "2.9 hadronic (tuned on it)"),
            Map.entry("air-400", "1.3 hadronic (tuned on it)"), Map.entry("air-700", "0.13 hadronic (tuned on it)"));

    private static final List<String> NOT_A_CHECK =
            List.of("neutrons-rise-and-fall", "albedo-share", "beyond-500", "beyond-1500");

    /** Rows that led to a mend, or whose quantity was changed after ours had been seen. */
    private static final Set<String> SEEN = Set.of("air-226", "air-300", "air-400", "air-700", "sea-level-neutrons",
            "sea-level-protons", "sea-level-muons", "surface-2024", "surface-maximum", "surface-minimum",
            "surface-effective", "free-effective", "regolith-180", "rise-of-dose", "aluminium-minimum",
            "ground-neutrons", "surface-neutral");

    private static final String HEAD = """
            # Validation of the radiation rooms

            Made by `ValidationTest` from the code that plans use; the test fails when this page is out of date.
            Planning estimate, not a radiation-protection record; qualified health physics decides; keep dose as
            low as reasonably achievable.

            How to read it: each row compares a printed figure with ours in the figure's own quantity and for its own
            sun. "Accepted" was set by what the source says of its own spread before ours was known, but for muons and
            protons at sea level, which were added after ours had been seen. First come the rows
            that miss, with the reason as far as we know it, then those inside; rows whose band is so wide that it can
            hardly fail are shown apart as "not a check"; then what the answer rests on. Doses under a dome on the
            ground count half of what comes square through a wall, what the floor throws back of it, and all of the
            slow neutrons in the room.

            Nothing was tuned: no number in the production of particles saw a row of this page
            (`closure-numbers.csv`, and a test). The air rows did lead to the search for errors of structure, and
            to their repair without fitting: fast pions scattered evenly in the centre of mass, loss of slow neutrons to
            charged particles counted as inelastic, hadrons made at an angle counted as straight ahead, and of late the
            cascade of fast hadrons. Rows that led to a mend, or whose quantity was changed after ours had been seen,
            are marked "seen": whoever likes may leave them out.

            """;

    private static final String MISSES = """

            ## Misses

            | row | printed | ours | accepted | counted as | why |
            | --- | --- | --- | --- | --- | --- |
            """;

    private static final String BODY = """

            ## The body

            Dose equivalent of the body is the tissue-weighted dose equivalent (effective dose equivalent): every
            particle, protons too, by the quality factor of 1990 over the depths at which skin (weight 0.01), red marrow
            (0.12) and all other tissues (0.87) lie in a person of simple solids (`body-depths.csv`, made by
            `BodyDepthTable` from the mathematical phantom of Snyder et al. and Cristy and Eckerman; dimensions from an
            open copy, some of them and marrow by bone from memory). Abstracts of calculations that print a dose
            equivalent of a person name no organ, so all of them are held against this one quantity. Measurements by a
            thin detector are held against a point behind 0.01 g/cm2, and papers that speak of effective dose, or of its
            limits, against the effective dose that plans use: coefficients of ICRP 116 for protons and neutrons, and
            helium and heavier ions, with all that they make in the body, over the same depths.

            Until 1 December 2026 a person was a sphere of water: skin at 0.01 g/cm2, lens at 0.3, marrow at 5, others
            at 10. No row of this page asked for the change; the body was compared with ICRP 116 (below) first. Gray
            equivalent in free space behind aluminium, sphere before over body now:

            | | 0 | 1 | 2 | 4 | 8 | 12 | 20 | 40 g/cm2 |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            | August 1972, skin | 2.23 | 2.05 | 2.01 | 1.96 | 1.91 | 1.87 | 1.82 | 1.64 |
            | August 1972, lens | 2.95 | 2.58 | 2.44 | 2.30 | 2.16 | 2.08 | 1.98 | 1.72 |
            | August 1972, marrow | 0.87 | 1.08 | 1.21 | 1.37 | 1.54 | 1.63 | 1.69 | 1.54 |
            | October 1989, skin | 2.47 | 2.08 | 1.99 | 1.88 | 1.74 | 1.66 | 1.54 | 1.39 |
            | October 1989, lens | 3.63 | 2.72 | 2.41 | 2.13 | 1.87 | 1.73 | 1.58 | 1.40 |
            | October 1989, marrow | 0.69 | 1.07 | 1.26 | 1.45 | 1.55 | 1.56 | 1.51 | 1.40 |
            | February 1956, skin | 2.20 | 1.92 | 1.81 | 1.63 | 1.40 | 1.28 | 1.19 | 1.15 |
            | February 1956, lens | 2.75 | 2.27 | 2.04 | 1.74 | 1.43 | 1.29 | 1.19 | 1.14 |
            | February 1956, marrow | 0.97 | 1.12 | 1.18 | 1.23 | 1.22 | 1.20 | 1.17 | 1.15 |


            Skin halves, as half of all ways to it lead through the body; a lens has the head behind it. The issue that
            asked for it expects a sphere of 5 cm to overdo marrow by up to 2 to 3 behind 4 to 12 g/cm2; here it does by
            1.2 to 1.6, as the ribs, pelvis and skull of this body lie right under the skin. The band of organ doses is
            wider by 35 % for it, less by e behind each 50 g/cm2.

            What follows is of the sphere, as it was found. Until lately all ions counted behind 5 g/cm2, and rows were
            held against unlike organs: surface-2024 and
            free-effective against blood-forming organs, regolith-180, of one sentence with surface-2024, against the
            skin. The change follows published practice and one rule for all rows, but it was chosen after misses had
            been seen: whoever likes may count the rows below as not blind. At the larger depth it began to matter that
            nucleons and pions which ions make in the body, and what their reactions leave on the spot, were not
            counted; they are now ("with all"), which no row asked for and helium in ICRP 116, below, bears out.
            altitude-0 and altitude-3000 are new; their tolerance was set before ours was known. rise-of-dose and
            aluminium-minimum changed quantity, not depth.

            | row | printed | before | behind 5 and 10 | with all |
            | --- | --- | --- | --- | --- |
            | surface-2024 | 267 | 384 (a miss) | 316 | 322 |
            | surface-maximum | 110 | 200 (a miss) | 165 | 169 |
            | surface-minimum | 380 | 411 | 316 | 322 |
            | surface-effective | 416 | 411 | 316 | 322 |
            | regolith-180 | 200 | 203 | 198 | 198 |
            | free-effective | 523 | 693 | 556 | 569 |
            | absorbed-kept | 1 | 1.04 | 1.01 | 1.01 |
            | ground-share | 0.135 | 0.088 | 0.111 | 0.105 |
            | secondary-share-0 | 0.05 | 0.091 | 0.112 | 0.107 |
            | secondary-share-100 | 0.47 | 0.723 | 0.725 | 0.719 |
            | albedo-share | 0.1 | 0.080 | 0.099 | 0.094 |
            | surface-day | 1369 | 1546 | 1546 | 1569 |
            | surface-silicon | 13.2 | 10.70 | 10.70 | 10.78 |
            | free-absorbed | 162 | 170 | 170 | 172 |
            | cruise-absorbed | 0.481 | 0.426 | 0.426 | 0.429 |
            | cruise-equivalent | 1.84 | 1.29 | 1.29 | 1.32 |

            The effective dose that plans use moved on open ground from 411 by 332 to 350 mSv a year at solar minimum,
            and behind 180 g/cm2 by less than a hundredth.

            The body beside the body model of ICRP 116: tissue-weighted absorbed dose per fluence, printed as effective
            dose over the weight of the arriving radiation (20 for helium, 2 for protons), energies spread by a fifth;
            ours over printed, and what the sphere gave. Above 2 GeV what ions make in the body goes straight on here
            through up to 50 g/cm2, and aside in truth: too much, and more than in the sphere.

            """;

    /** What the sphere gave until 1 December 2026, helium and protons. */
    private static final String[] SPHERE = {"0.12 | 0.12", "1.33 | 1.35", "1.13 | 1.10", "0.98 | 0.97", "0.99 | 0.96",
        "0.99 | 0.95", "1.01 | 0.96", "1.15 | 1.02", "1.32 | 1.15"};

    private static final String ROOMS = """

            ## Slow neutrons in a room

            Each piece of wall sends into the room what its own cover makes and lets through, and gives back a part of
            what reaches it; the floor is a source too (`NeutronEnclosure`). In free space rays come from all sides; in
            air, which goes on below, slow neutrons are counted without a net current. The footing is diffusion with
            partial currents and albedo (Lamarsh 1966, ch. 5), no number of it chosen.

            Held against (`NeutronEnclosureLawTest`): the albedo and emission of a half space in closed form; exact
            transport (Chandrasekhar's H function): 0.645 of 0.650; Milne's 0.7104 in a slab without loss, within 1.5 %;
            and one group of neutrons that walk by chance, with their own rays from the sky, through the same shapes.

            A wall is as thick as the first soil on the ray lies square to the face through which the ray leaves it, so
            an even slope looks as thick from all sides (`WallThicknessLawTest`). Soil that the ray clips further out
            weakens what flies along it, but makes no wall thicker; what of a ridge keeps rays from a wall's outer face
            is left out.

            | shape | ours over walks |
            | --- | --- |
            | cylinder of 4 m under 0.1 to 2.4 m of mound | 1.00 to 1.17 |
            | level cover of 15, 50, 180 g/cm2 | 0.84, 0.94, 0.98 |
            | sphere wider than its wall, in free space | 1.06 to 1.10 |
            | sphere narrower than its wall | 0.63 to 0.74 |

            So 20 % of the slow neutrons' part, less than a tenth of most doses. Earlier the cover was taken where a
            tenth of the sky is thinner, a judgement. What moved with it: cruise from 1.22 to 1.28 mSv a day, the least
            dose in aluminium from 35 to 20 g/cm2, regolith-180 from 188 to 196 mSv a year; under mounds at solar
            minimum a few tens of g/cm2 are no longer worse than none, since rays cross them at a slant.

            ## The cascade of fast hadrons

            Until lately the nucleons of a fast collision went apart as two clusters that fell to pieces evenly, so that
            the share of momentum they kept fell with energy (moments at an exponent of 1.7, elastic collisions in
            nuclei counted: 0.41 at 10 GeV, 0.31 at 30, 0.22 at 100), and elastic collisions died out above 10 GeV, as
            their formula was used beyond its range. Measurements scale. Now collisions with up to two pions go apart as
            resonances, those with more have leading particles (`LeadingParticles`), elastic cross sections and slopes
            are those of the Review of Particle Physics and of Regge fits, nucleons that leave near to each other leave
            as clusters (`Coalescence`), and the table is finer near the projectile's own energy, where it had smeared
            elastic collisions. Light nuclei had been too wide (nitrogen 2.85 fm in the root mean square, measured
            2.54); they have their measured sizes now and the reach of nucleons on top, by which the cascade's own cross
            sections come within 5 % of the evaluated ones at most energies from 70 MeV to 10 GeV (12 % at 300 MeV).

            Moments are 0.42, 0.36, 0.33. In reactions that make hadrons, as these figures are printed: nucleons 0.34,
            0.29, 0.28 (printed 0.298), charged mesons 0.08, 0.11, 0.11 (printed 0.091), pions of pions 0.32, 0.31, 0.30
            (printed 0.27; Gaisser 1990, from memory); such reactions are 0.893 of all on carbon at 31 GeV/c (printed
            0.892; Abgrall et al. 2011, from memory).

            The straight march, which goes on in bodies and skins, is held against walks by chance in three dimensions
            in which each reaction is a cascade of its own (`CascadeWalkLawTest`).

            Walks by chance that follow particles back from a station with the same reactions (`dose --walk`,
            `WalkLawTest`) stand at 0.94, 0.96 and 1.00 of the Monte Carlo in rooms of 20, 100 and 300 g/cm2, at 1.00,
            0.95, 1.00 and 1.09 in level ground at 10, 100, 400 and 1000 g/cm2 for protons of cosmic rays, at 0.97 for
            helium at 100, and at 1.01, 1.04 and 1.02 in rooms of 20, 100 and 300 g/cm2 for February 1956, each give
            or take 0.02 by chance (0.04 at 1000).

            The search began from misses in air, so who likes may count the air rows as not blind; no number was set by
            them. Steps went both ways: with everything but the sizes of nuclei, sea-level-neutrons stood at 19.7 and
            sea-level-protons at 1.58. Protons at sea level are now counted as those that come straight down, as the
            figure counts them; before, made protons were counted as if none had strayed from its ray.

            | row | printed | before | after these changes alone |
            | --- | --- | --- | --- |
            | regolith-180 | 200 | 198 | 187 |
            | ground-neutrons | 65.1 | 63.1 | 51.8 |
            | neutron-production | 16 | 15.4 | 12.8 |
            | secondary-share-100 | 0.47 | 0.719 | 0.693 |
            | february-1956-30 | 250 | 190 | 183 |
            | air-226 | 7.5 | 8.13 | 7.33 |
            | air-300 | 4.3 | 4.91 | 4.40 |
            | air-400 | 2.4 | 2.44 | 2.17 |
            | air-700 | 0.2 | 0.293 (a miss) | 0.264 (a miss) |
            | altitude-3000 | 0.24 | 0.242 | 0.219 |
            | altitude-0 | 0.040 | 0.032 | 0.031 |
            | sea-level-neutrons | 12.9 | 17.8 | 16.5 |
            | sea-level-protons | 0.9 | 2.08 (a miss) | 1.30 |
            | sea-level-muons | 70 | 63.9 | 69.1 |

            The row rise-of-dose was the greatest dose from 30 g/cm2 on and is now the greatest beyond where the dose
            has stopped falling: with fewer neutrons the rise of the dose equivalent of the body is a few thousandths,
            that of the effective dose 3 %.

            What is left in air: hadrons at sea level are 1.3 and 1.4 times as many as printed. Of this, some 10 % may
            be the arriving spectrum, which stands 8 % at 30 GeV and 16 to 26 % at 100 GeV above two published ones for
            outside the heliosphere, modulated alike (Burger et al. 2000; Vos and Potgieter 2015; from memory). Between
            700 g/cm2 and sea level neutrons above 10 MeV fall by e over 133 g/cm2 (printed 131, JEDEC, from memory),
            upright nucleons above 10 GeV over 125 (printed 120, Review of Particle Physics, from memory). The density
            of the air changes neutrons by 1 %.

            ## The deep tail

            The one published figure for soil, 20 mSv a year at 1000 g/cm2 in free space (Globus and Strout 2014, a
            published deterministic transport), stands 4.4 times above ours; the Monte Carlo above, with the same
            arriving protons and helium, within a fifth of it. In air, where there are measurements behind 700 to 1033
            g/cm2, ours gives more than they. Deeper than 1000 g/cm2 nothing is left to compare with: extrapolated.
            """;

    private Validation() {
    }

    static String page() {
        StringBuilder page = new StringBuilder();
        List<String> inside = new ArrayList<>();
        List<String> idle = new ArrayList<>();
        for (String[] row : DoseRows.printed()) {
            double ours = DoseRows.answers().get(row[0]);
            boolean in = ours >= Double.parseDouble(row[2]) && ours <= Double.parseDouble(row[3]);
            String start = "| " + row[0] + " | " + row[1] + " " + row[4] + " | " + brief(ours) + " | " + row[2] + " to "
                    + row[3] + " | " + row[8] + " | ";
            if (in) {
                (NOT_A_CHECK.contains(row[0]) ? idle : inside).add(start + BEFORE.getOrDefault(row[0], "") + " | no"
                        + (SEEN.contains(row[0]) ? ", seen" : "") + " | "
                        + (row[6].equals("yes") ? "from memory: " : "") + row[7] + " |");
            } else {
                page.append(start).append(SEEN.contains(row[0]) ? "Seen. " : "").append(why(row[0])).append(' ')
                        .append(row[7]).append(" |\n");
            }
        }
        page.append("| manganese of iron | 95.6 mb | ").append(brief(iron(25)))
                .append(" | within 25 % | cross section | The distance is the formula's: ours gives its test value"
                        + " and agrees line by line with its author's program; charge 25 is the sum of masses 50 to 55"
                        + " (53: 47, 54: 46, 55: 19 mb). Charges 26 and 24 to 20 lie within a fifth. Villagrasa-Canton"
                        + " et al. (2007), iron on hydrogen. |\n");
        page.append("| neutrons of lead, 2 to 20 MeV | 6.5 and 8.3 | 8.8 and 10.2 | within 20 % | number | "
                + "Evaporation by the liquid drop is too rich in neutrons for lead, which no shield here holds; "
                + "Leray et al. (2002), from memory, protons of 0.8 and 1.2 GeV. |\n");
        page.insert(0, HEAD + summary(inside.size(), idle.size()) + MISSES);
        page.append("\n## Doses inside their tolerance\n\n| row | printed | ours | accepted | counted as "
                + "| hand-set closure before | tuned on | source |\n"
                + "| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        inside.forEach(line -> page.append(line).append('\n'));
        page.append("\n## Not a check\n\nTheir bands are so wide that ours could hardly miss them; they count for"
                + " nothing.\n\n| row | printed | ours | accepted | counted as | hand-set closure before | tuned on |"
                + " source |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        idle.forEach(line -> page.append(line).append('\n'));
        MonteCarloPage.add(page);
        long held = ModelSpreadTest.inside(counting());
        page.append("\n## Bands\n\nLow and high are made of parts, none of which is fitted to a row of this page: the"
                + " standard deviation of the logarithm (%) by depth. Cosmic rays: ").append(ModelSpread.words(true))
                .append(". Events of a stated spectrum: ").append(ModelSpread.words(false))
                .append(". Beside it stand sun, density and thickness. The band of cosmic rays holds ").append(held)
                .append(" of ").append(counting().size()).append(" published figures, and all rows of cosmic rays")
                .append(" of the Monte Carlo; one standard deviation should hold two thirds. Until 30 November 2026 it")
                .append(" was the distance of published figures: a factor 1.3 to 50 g/cm2, 1.5 at 300, 2 at 500, 2.4")
                .append(" at 1000.\n");
        page.append(BODY);
        body(page);
        page.append(ROOMS);
        physics(page);
        return page.toString();
    }

    private static String summary(int inside, int idle) {
        long remembered = DoseRows.printed().stream().filter(r -> r[6].equals("yes")).count();
        return "Of " + (DoseRows.printed().size() - idle) + " doses and fluxes " + inside + " are inside (" + remembered
                + " are from memory); " + idle + " more are not a check. With stopping, ranges, cross sections,"
                + " fragments, spectra and coefficients "
                + checks() + " printed figures in tables are compared in each test run, beside single ones in the"
                + " tests.\n";
    }

    /** Printed figures in the tables of this room. */
    static int checks() {
        int sum = DoseRows.printed().size();
        for (String table : TABLES_OF_FIGURES) {
            for (String[] row : rowsWithHead(table).subList(1, rowsWithHead(table).size())) {
                sum += (int) java.util.Arrays.stream(row).skip(1).filter(v -> !v.isBlank()).count();
            }
        }
        return sum + rowsWithHead("ion-cross-sections.csv").size() - 1;
    }

    private static String why(String id) {
        return switch (id) {
            case "surface-neutral" -> "Gammas of the ground give 0.30 of it (3.4 mSv a year, Naito et al. 2023), its"
                    + " slow neutrons 0.18, its fast ones 0.05. Two published figures disagree: gammas and neutrons of"
                    + " the ground as Naito et al. print them (row ground-neutrons) make at most 0.8. What lander and"
                    + " instrument add around the detector is not in ours, and we know no figure for it; so a factor"
                    + " six stays unexplained.";
            case "secondary-share-0" -> "Ours holds what open ground throws back above 20 MeV: nucleons, pions and"
                    + " muons, which in the Monte Carlo below are 17 % of what protons give in the open. Row"
                    + " ground-share, which counts neutrons alone as its source does, is inside.";
            case "rise-of-dose" -> "Ours falls all the way, by little from 40 to 75 g/cm2: what strays from its ray"
                    + " is lost to a wall seen square. The Monte Carlo below has protons alone rise to 30 g/cm2 under"
                    + " level ground and to 100 in a sphere, as ours do; heavier ions, which fall, decide. A rise of"
                    + " some hundredths hangs on the shape of the shelter, which the abstract does not name.";
            case "sea-level-neutrons", "sea-level-protons" -> "Before, straight transport lost too much in level"
                    + " layers (0.73 of the Monte Carlo below at 1000 g/cm2), which hid this. Left are fast nucleons"
                    + " that fall by e over 125 g/cm2 of air (printed 120, Review of Particle Physics, from memory), a"
                    + " factor 1.4 at 1033 g/cm2; an arriving spectrum 8 to 26 % high above 30 GeV; and pions too many"
                    + " deep down.";
            case "air-700" -> "The remembered figure is itself unsure: from that of 400 g/cm2 on it falls by e over 121"
                    + " g/cm2, faster than neutrons do by JEDEC (131), and muons fall slower; altitude-3000, below more"
                    + " air, under a more active sun and behind a magnetic cut-off, is printed higher.";
            default -> "Not understood.";
        };
    }

    private static List<PublishedDose> counting() {
        return PublishedDose.cosmic().stream().filter(d -> d.work().counts()).toList();
    }

    private static void body(StringBuilder page) {
        page.append("| MeV per nucleon | helium | protons | sphere: helium | protons |\n"
                + "| --- | --- | --- | --- | --- |\n");
        double[] energies = BodyCheck.energies();
        for (int i = 0; i < energies.length; i++) {
            page.append(String.format(Locale.ROOT, "| %.0f | %.2f | %.2f | %s |\n", energies[i],
                    BodyCheck.helium(energies[i]), BodyCheck.protons(energies[i]), SPHERE[i]));
        }
        page.append(String.format(Locale.ROOT, "| helium of open space at W 10 | %.2f |  | 1.10 |  |\n",
                BodyCheck.heliumBehind(10, 0)));
        page.append(String.format(Locale.ROOT, "| helium behind 50 g/cm2 at W 10 | %.2f |  | 1.09 |  |\n",
                BodyCheck.heliumBehind(10, 50)));
    }

    private static void physics(StringBuilder page) {
        page.append("\n## Physics underneath\n\n| table | largest distance | where | goal |\n"
                + "| --- | --- | --- | --- |\n");
        for (String material : List.of("water", "aluminium", "silicon", "alumina", "air")) {
            Stopping stopping = Stopping.in(Materials.named(material));
            column(page, "proton stopping in " + material, new String[] {"pstar-protons.csv", material},
                    "1 % above 30 MeV",
                    r -> stopping.protonMeVPerGCm2(r));
        }
        for (String material : List.of("water", "aluminium", "silicon", "alumina")) {
            Stopping stopping = Stopping.in(Materials.named(material));
            column(page, "proton range in " + material, new String[] {"pstar-ranges.csv", material},
                    "1 % above 30 MeV",
                    r -> stopping.protonRangeGCm2(r));
        }
        Stopping water = Stopping.in(Materials.named("water"));
        String[] ions = {"He", "C", "O", "Ne", "Si", "Ar"};
        for (String ion : ions) {
            int charge = Element.of(ion).charge();
            column(page, ion + " stopping in water", new String[] {"icru-ions-water.csv", ion},
                    "4 % above 30 MeV/n",
                    r -> water.ionMeVPerGCm2(charge, r));
        }
        for (String[] row : Table.rows(Validation.class, TABLES + "ion-cross-sections.csv", ",")) {
            double ours = IonReactions.crossSectionMb(Integer.parseInt(row[1]), Double.parseDouble(row[2]),
                    Element.of(row[4]), Double.parseDouble(row[3]));
            line(page, "reactions " + row[0], ours / Double.parseDouble(row[5]) - 1, row[3] + " MeV/n", "5 to 12 %");
        }
        double worst = 0;
        String where = "";
        for (String[] row : Table.rows(Validation.class, TABLES + "villagrasa-2007-iron.csv", ",")) {
            double off = iron(Integer.parseInt(row[0])) / Double.parseDouble(row[1]) - 1;
            if (Math.abs(off) > Math.abs(worst)) {
                worst = off;
                where = "charge " + row[0];
            }
        }
        line(page, "elements of iron on hydrogen", worst, where, "25 %");
    }

    private interface Answer {
        double at(double energy);
    }

    private static void column(StringBuilder page, String title, String[] place, String goal, Answer answer) {
        List<String[]> rows = rowsWithHead(place[0]);
        int index = List.of(rows.get(0)).indexOf(place[1]);
        double worst = 0;
        String where = "";
        for (String[] row : rows.subList(1, rows.size())) {
            if (index < row.length && !row[index].isBlank()) {
                double off = answer.at(Double.parseDouble(row[0])) / Double.parseDouble(row[index]) - 1;
                if (Math.abs(off) > Math.abs(worst)) {
                    worst = off;
                    where = row[0] + " MeV";
                }
            }
        }
        line(page, title, worst, where, goal);
    }

    private static List<String[]> rowsWithHead(String table) {
        List<String[]> rows = new ArrayList<>();
        try (java.io.InputStream stream = Validation.class.getResourceAsStream(TABLES + table)) {
            for (String line : new String(stream.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#")) {
                    rows.add(line.split(",", -1));
                }
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return rows;
    }

    private static void line(StringBuilder page, String title, double off, String where, String goal) {
        page.append("| ").append(title).append(" | ").append(String.format(Locale.ROOT, "%+.1f %%", 100 * off))
                .append(" | ").append(where).append(" | ").append(goal).append(" |\n");
    }

    private static double iron(int charge) {
        double sum = 0;
        for (int a = charge; a < 56; a++) {
            sum += 1000 * FragmentYields.crossSectionB(new FragmentYields.Nucleus(56, 26), 1,
                    new FragmentYields.Nucleus(a, charge));
        }
        return sum;
    }

    private static String brief(double value) {
        return String.format(Locale.ROOT, value >= 100 ? "%.0f" : value >= 1 ? "%.2f" : "%.3f", value);
    }
}
