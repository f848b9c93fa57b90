// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.ModelNote;
import bermwright.shielding.dose.DoseLimit;
import bermwright.site.finding.Finding;
import bermwright.site.finding.Finding.Figures;
import bermwright.site.finding.Finding.Level;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Doses held against the plan's limits, and what makes them doubtful. */
final class DoseFindings {
    private static final double MSV = 1000;
    /** Share of a dose from beyond the table's end above which it is noted, and marked extrapolated. */
    private static final double NOTED = 0.01;
    private static final double EXTRAPOLATED = 0.1;
    /** Occupancy shares may add up to this far from 1 before it is said. */
    private static final double OCCUPANCY_SLACK = 0.01;

    private final Plan plan;
    private final List<StationDose> stations;
    private final SiteDose.Outside outside;
    private final List<Finding> findings = new ArrayList<>();

    private DoseFindings(Plan plan, List<StationDose> stations, SiteDose.Outside outside) {
        this.plan = plan;
        this.stations = stations;
        this.outside = outside;
    }

    static List<Finding> of(Plan plan, List<StationDose> stations, SiteDose.Outside outside) {
        DoseFindings made = new DoseFindings(plan, stations, outside);
        stations.forEach(made::doubts);
        if (!stations.isEmpty()) {
            made.occupancy();
            made.shelter();
            for (ExposurePlan.Limit limit : plan.exposure().limits()) {
                made.published(limit);
                made.limit(limit, "crew",
                        CrewDose.of(plan.exposure(), stations, outside, limit.quantity()).against(limit), true);
                for (StationDose station : stations) {
                    made.limit(limit, station.hull() + "/" + station.station(),
                            CrewDose.alone(plan.exposure(), station, limit), false);
                }
            }
        }
        return made.findings;
    }

    private void doubts(StationDose station) {
        String subject = station.hull() + "/" + station.station();
        double share = station.seen().shareBeyondTable();
        if (share > EXTRAPOLATED) {
            findings.add(Finding.of("dose-extrapolated", Level.WARN, subject, Figures.of(share, EXTRAPOLATED, "1"),
                    text("%.0f %% of the dose comes through more soil than the response was made for; its last value is"
                            + " taken there, an upper bound, and the result is extrapolated.", share * 100)));
        } else if (share > NOTED) {
            findings.add(Finding.of("dose-beyond-table", Level.NOTE, subject, Figures.of(share, NOTED, "1"),
                    text("%.1f %% of the dose comes through more soil than the response was made for; its last value is"
                            + " taken there, an upper bound.", share * 100)));
        }
        double open = station.seen().openShare();
        if (!(open <= SiteDose.SETTLED)) {
            findings.add(Finding.of("dose-unsettled", Level.WARN, subject, Figures.of(open, SiteDose.SETTLED, "1"),
                    text("After %d directions %.1f %% of the dose is still open: too much comes through ways too narrow"
                            + " for the rays. Take the dose as known to that only.", station.seen().directions(),
                    open * 100)));
        }
        if (station.seen().shareBeyondEdge() > NOTED) {
            findings.add(Finding.of("dose-beyond-ground", Level.NOTE, subject,
                    Figures.of(station.seen().shareBeyondEdge(), NOTED, "1"),
                    text("%.1f %% of the sky is seen through soil past the edge of the elevation file, which is"
                            + " taken as level there.", station.seen().shareBeyondEdge() * 100)));
        }
        if (station.reduction() < 0) {
            findings.add(Finding.of("dose-worse-than-upright", Level.WARN, subject,
                    Figures.of(station.covered().best() * MSV, station.upright() * MSV, "mSv"),
                    text("Under this cover the dose is %.1f mSv, in the bare standing hull %.1f mSv: a thin cover makes"
                            + " neutrons and stops few particles. Make it thicker or leave it away.",
                    station.covered().best() * MSV, station.upright() * MSV)));
        }
    }

    /** What the number of directions rests on, and whether it was enough at every station. */
    static ModelNote directions(List<StationDose> stations) {
        List<StationDose> open = stations.stream().filter(s -> !(s.seen().openShare() <= SiteDose.SETTLED)).toList();
        double greatest = stations.stream().mapToDouble(s -> s.seen().openShare()).max().orElse(0);
        return new ModelNote("sky-directions", "rays to the sky in azimuths and elevations that are halved until each"
                + " dose of a station changes by less than half a per cent",
                "ways to the sky wider than 2 degrees of azimuth, or at the end of a hull, tunnel or wall",
                open.isEmpty() ? text("%.2f %% at most", greatest * 100)
                        : text("not settled at %s: up to %.1f %% open", String.join(", ",
                                open.stream().map(s -> s.hull() + "/" + s.station()).toList()), greatest * 100),
                open.isEmpty() ? ModelNote.Status.COMPUTED : ModelNote.Status.EXTRAPOLATED,
                "common practice, no source");
    }

    private void occupancy() {
        double sum = stations.stream().mapToDouble(StationDose::occupancyShare).sum();
        if (Math.abs(sum - 1) > OCCUPANCY_SLACK) {
            findings.add(Finding.of("dose-occupancy", Level.NOTE, "crew", Figures.of(sum, 1, "1"),
                    text("The stations' shares of occupancy add up to %.2f; for the crew's dose the time inside is"
                            + " shared out in proportion%s.", sum, sum > 0 ? "" : ", equally since all are nothing")));
        }
    }

    private void shelter() {
        boolean event = stations.stream().anyMatch(s -> s.parts().eventAll().best() > 0);
        if (event && stations.stream().noneMatch(StationDose::stormShelter)) {
            findings.add(Finding.of("dose-no-shelter", Level.WARN, "crew", Figures.NONE,
                    "No station is marked as a storm shelter; the event is judged at the station where it is worst."));
        }
    }

    private void limit(ExposurePlan.Limit limit, String subject, StationDose.Spread dose, boolean counts) {
        boolean above = !(dose.best() <= limit.limit());
        boolean mayBe = !(dose.high() <= limit.limit());
        if (!mayBe) {
            return;
        }
        Level level = !counts ? Level.NOTE : above ? Level.REFUSE : Level.WARN;
        double shown = above ? dose.best() : dose.high();
        String what = limit.from() == ExposurePlan.From.ALL ? "all sources" : limit.from().word();
        String unit = StationDose.milli(limit.quantity());
        String form = above ? "The %s from %s over %s is %.1f %7$s (16th to 84th percentile %.1f to %.1f); the limit is"
                + " %8$.1f %7$s." : "The %s from %s over %s is %.1f %7$s at best and may be %.1f to %.1f %7$s (16th to"
                + " 84th percentile); the limit of %8$.1f %7$s is met only if it is not high.";
        String whose = counts ? "" : " For somebody who stays at this station all the time.";
        findings.add(Finding.of(counts ? "dose-limit" : "dose-limit-full-time", level, subject,
                Figures.of(shown * MSV, limit.limit() * MSV, unit),
                text(form, limit.quantity(), what, limit.over().word(), dose.best() * MSV, dose.low() * MSV,
                        dose.high() * MSV, unit, limit.limit() * MSV) + whose).from(limit.source()));
    }

    /** Whether the plan allows more than a published standard does for the same quantity and time. */
    private void published(ExposurePlan.Limit limit) {
        DoseLimit.all().stream().filter(p -> p.quantity().equals(limit.quantity())
                        && p.over().equals(limit.over().word()) && p.limit() < limit.limit())
                .filter(p -> !p.name().startsWith("workers"))
                .findFirst().ifPresent(p -> {
                    String unit = StationDose.milli(limit.quantity());
                    findings.add(Finding.of("dose-limit-above-published", Level.NOTE, "exposure",
                            Figures.of(limit.limit() * MSV, p.limit() * MSV, unit),
                            text("The plan's limit on %s over %s is %.0f %s; a published standard has %.0f %s (%s).",
                                    limit.quantity(), limit.over().word(), limit.limit() * MSV, unit,
                                    p.limit() * MSV, unit, p.name())).from(p.source()));
                });
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
