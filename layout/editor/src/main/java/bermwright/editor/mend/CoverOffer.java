// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.SetValue;
import bermwright.editor.edit.Together;
import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.finding.Rule;
import bermwright.shielding.cover.CoverThickness;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.SizedCover;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The least covers that meet a plan's dose limits, as one edit; offered beside findings about dose. */
public final class CoverOffer {
    private static final Set<Rule> RULES = Set.of(DoseRule.DOSE_LIMIT, DoseRule.DOSE_LIMIT_FULL_TIME,
            DoseRule.DOSE_ABOVE_PUBLISHED, DoseRule.DOSE_WORSE_THAN_UPRIGHT, DoseRule.DOSE_THINNER_IS_BETTER);
    private static final double CENTI = 100;

    private CoverOffer() {
    }

    /**
     * Whether another thickness of the covers may mend a finding.
     *
     * @param finding the finding
     * @return true for doses over a limit or worse than under less soil
     */
    public static boolean isFor(Finding finding) {
        return RULES.contains(finding.rule());
    }

    /**
     * The covers that were found, as one edit of a plan.
     *
     * @param plan  the plan
     * @param sized the least covers that meet its limits
     * @return the offer; empty where the limits cannot be met or nothing would change
     */
    public static Optional<Offer> of(Plan plan, SizedCover sized) {
        List<PlanEdit> edits = new ArrayList<>();
        TreeMap<String, CoverThickness> found = new TreeMap<>(sized.thickness());
        found.forEach((id, thickness) -> plan.hull(id).flatMap(Hull::cover).ifPresent(cover ->
                edits.addAll(edits(Part.hull(id).path(plan) + ".cover.", cover, thickness))));
        if (!sized.isMet() || edits.isEmpty()) {
            return Optional.empty();
        }
        String words = "Cover " + found.entrySet().stream().map(e -> String.format(Locale.ROOT, "%s %.2f m", e.getKey(),
                up(e.getValue().crown()))).collect(Collectors.joining(", "))
                + String.format(Locale.ROOT, " at the crown (%.0f m\u00b3 of soil)", sized.volume());
        return Optional.of(new Offer(words, new Together("Size the covers", edits), true));
    }

    private static List<PlanEdit> edits(String path, CoverPlan cover, CoverThickness thickness) {
        List<PlanEdit> edits = new ArrayList<>();
        edits.add(value(path + "crown_m", thickness.crown()));
        edits.add(value(path + "flank_m", thickness.flank()));
        if (cover.baseEnd() == CoverPlan.End.COVERED) {
            edits.add(value(path + "base_end_m", thickness.baseEnd()));
        }
        if (cover.farEnd() == CoverPlan.End.COVERED) {
            edits.add(value(path + "far_end_m", thickness.farEnd()));
        }
        return edits;
    }

    private static PlanEdit value(String path, double thickness) {
        return new SetValue(path, String.format(Locale.ROOT, "%.2f", up(thickness)), "Size the cover");
    }

    /** To the next whole centimetre, so that rounding never takes cover away. */
    private static double up(double thickness) {
        return Math.ceil(thickness * CENTI - 1e-6) / CENTI;
    }
}
