// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.lowering.body.SweptProfile;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works a lowering by lines out, from upright to lying. */
public final class Lowering {
    /** The step in which tilts are listed where nobody asks for another, in degrees. */
    public static final double USUAL_STEP_DEG = 1;

    private Lowering() {
    }

    /**
     * Works a lowering out with tilts listed in steps of one degree.
     *
     * @param setup the case
     * @return the result, or why there is none
     */
    public static Lowered of(LoweringCase setup) {
        return of(setup, USUAL_STEP_DEG);
    }

    /**
     * Works a lowering out. Every tenth of a degree is looked at whatever the step of the list.
     *
     * @param setup    the case
     * @param stepDeg step of the listed tilts in degrees, 0.1 to 90; rounded to tenths
     * @return the result, or why there is none
     */
    public static Lowered of(LoweringCase setup, double stepDeg) {
        Require.within("step of tilts", stepDeg, 0.1, 90, "deg");
        SweptProfile sweep = SweptProfile.of(setup.tipping());
        CaseFindings findings = new CaseFindings(setup);
        List<Finding> before = findings.beforeScan(sweep);
        if (findings.isHopeless()) {
            return new Lowered(Optional.empty(), before);
        }
        TiltScan scan = new TiltScan(setup.tipping(), setup.rig());
        Chain chain = Chain.of(setup);
        List<Finding> all = new ArrayList<>(before);
        all.addAll(findings.afterScan(scan, chain));
        all.sort((a, b) -> a.level().compareTo(b.level()));
        Optional<TiltState> rest = scan.statics().at(setup.tipping().restTilt());
        if (rest.isEmpty() || scan.states().isEmpty()) {
            return new Lowered(Optional.empty(), all);
        }
        return new Lowered(Optional.of(result(setup, new Parts(scan, chain, sweep, all, rest.get()), stepDeg)), all);
    }

    private record Parts(TiltScan scan, Chain chain, SweptProfile sweep, List<Finding> findings,
            TiltState rest) {
    }

    private static LoweringResult result(LoweringCase setup, Parts parts, double stepDeg) {
        TiltScan scan = parts.scan;
        HandOver band = HandOver.of(setup.tipping());
        SequenceWords words = new SequenceWords(setup, band);
        TiltState worst = scan.greatest(TiltState::lineEach).orElseThrow();
        return new LoweringResult(band.balance(), band.to(), setup.tipping().restTilt(),
                scan.greatest(TiltState::pullOver).map(TiltState::pullOver).orElse(0.0),
                worst.lineEach(), worst.tilt(), scan.angleAtRest(), scan.every(stepDeg), parts.chain.factors(),
                parts.chain, governing(parts.chain),
                new Balances(parts.rest.lineTotal(), scan.handAtRest()), band, scan.deadPoints(),
                words.holdPoints(), words.sequence(), parts.sweep, parts.findings,
                notes(setup.soil().strength().greatest().isBeyondDesign()));
    }

    private static String governing(Chain chain) {
        return chain.governing().stream().filter(r -> r.factor().isPresent()).findFirst()
                .map(r -> r.part().words() + " (" + r.loadWords() + ")")
                .orElse("not known, for no rating is given");
    }

    private static List<ModelNote> notes(boolean beyond) {
        return List.of(
                new ModelNote("lowering-statics",
                        "moments about the pivot line at every tilt: rigid body, straight weightless lines, held still",
                        "a pivot that neither slides nor sinks, lines that are taut",
                        "as good as mass, centre of mass and places are known; 1 % of the mass is 1 % of every force",
                        ModelNote.Status.COMPUTED, "statics, closed form"),
                new ModelNote("lowering-anchors",
                        "earth pressure, uplift and bearing scaled by gravity, with density and strength of the"
                                + " ground as the plan states them; steel on soil at two thirds of the friction angle",
                        "dry soil, static pull, shallow anchors, level ground, anchors apart from each other;"
                                + " friction angles up to 45 degrees, above that extrapolated",
                        "measured anchors on Earth scatter by 15 to 30 % about such forms; in dense ground uplift"
                                + " by peak friction was found up to twice too high; unproven in lunar soil:"
                                + " proof-load each",
                        beyond ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED,
                        "Rankine; Teng (1962); Meyerhof and Adams (1968); Broms (1964);"
                                + " Vesic (1973); EN 1997-1, 6.5.3 (10), from memory"),
                new ModelNote("lowering-poles",
                        "a straight hinged column by Euler and two codes, wall buckling with a knock-down",
                        "load along the pole, no bend from sun on one side, head held by stays",
                        "the codes differ by a tenth; a bow or an eccentric head takes a tenth to a third off",
                        ModelNote.Status.COMPUTED,
                        "EN 1993-1-1, 6.3.1; ANSI/AISC 360, E3, from memory; NASA SP-8007, from memory"));
    }
}
