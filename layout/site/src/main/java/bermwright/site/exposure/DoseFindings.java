// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What makes doses doubtful. */
final class DoseFindings {
    private static final double MSV = 1000;
    private static final String OURS = "our own planning figure";
    private static final String SETTING = "our own setting: rays are added until the dose changes by less";
    /** Share of a dose from beyond the table's end above which it is noted, and marked extrapolated. */
    private static final double NOTED = 0.01;
    private static final double EXTRAPOLATED = 0.1;
    /** Occupancy shares may add up to this far from 1 before it is said. */
    private static final double OCCUPANCY_SLACK = 0.01;

    private final List<StationDose> stations;
    private final List<Finding> findings = new ArrayList<>();

    private DoseFindings(List<StationDose> stations) {
        this.stations = stations;
    }

    static List<Finding> of(List<StationDose> stations) {
        DoseFindings made = new DoseFindings(stations);
        stations.forEach(made::uncertainties);
        if (!stations.isEmpty()) {
            made.occupancy();
            made.shelter();
        }
        return made.findings;
    }

    /** Persons whose dose is not known, or whose day the plan does not fill. */
    static List<Finding> people(List<PersonDose> people) {
        List<Finding> findings = new ArrayList<>();
        for (PersonDose person : people) {
            if (!person.why().isEmpty()) {
                findings.add(Finding.of(DoseRule.DOSE_PERSON_UNKNOWN, Level.REFUSE, person.person().id(), Figures.NONE,
                        "No dose of this person could be worked out: " + person.why() + "."));
            } else if (person.restHours() > 0) {
                findings.add(Finding.of(DoseRule.DOSE_PERSON_HOURS, Level.NOTE, person.person().id(),
                        Figures.of(24 - person.restHours(), 24, "h"), text("The plan gives %.2f hours of this person's"
                                + " day; the other %.2f are counted at the worst station.", 24 - person.restHours(),
                                person.restHours())));
            }
        }
        return findings;
    }

    private void uncertainties(StationDose station) {
        String subject = station.name();
        double share = station.seen().shareBeyondTable();
        if (share > EXTRAPOLATED) {
            findings.add(Finding.of(DoseRule.DOSE_EXTRAPOLATED, Level.WARN, subject, Figures.of(share, EXTRAPOLATED,
                    "1"),
                    text("%.0f %% of the dose comes through more soil than the response is tested to: the result is"
                            + " extrapolated. Beyond the end of its table the last value is taken, an upper bound.",
                            share * 100)));
        } else if (share > NOTED) {
            findings.add(Finding.of(DoseRule.DOSE_BEYOND_TABLE, Level.NOTE, subject, Figures.of(share, NOTED, "1"),
                    text("%.1f %% of the dose comes through more soil than the response is tested to, and is"
                            + " extrapolated. Beyond the end of its table the last value is taken, an upper bound.",
                            share * 100)));
        }
        double standing = station.standing().open();
        if (!(standing <= SiteDose.SETTLED)) {
            findings.add(Finding.of(DoseRule.DOSE_UPRIGHT_UNSETTLED, Level.WARN, subject,
                    Figures.of(standing, SiteDose.SETTLED, "1"), text("In the bare standing hull %.1f %% of the"
                            + " dose is still open after all directions.", standing * 100)));
        }
        double open = station.seen().openShare();
        if (!(open <= SiteDose.SETTLED)) {
            findings.add(Finding.of(DoseRule.DOSE_UNSETTLED, Level.WARN, subject, Figures.of(open, SiteDose.SETTLED,
                    "1"),
                    text("After %d directions %.1f %% of the dose is still open: too much comes through ways too narrow"
                            + " for the rays.", station.seen().directions(),
                    open * 100)));
        }
        if (station.seen().shareBeyondEdge() > NOTED) {
            findings.add(Finding.of(DoseRule.DOSE_BEYOND_GROUND, Level.NOTE, subject,
                    Figures.of(station.seen().shareBeyondEdge(), NOTED, "1"),
                    text("%.1f %% of the sky is seen through soil past the edge of the elevation file, which is"
                            + " taken as level there.", station.seen().shareBeyondEdge() * 100)));
        }
        if (Double.isNaN(station.reduction())) {
            findings.add(Finding.of(DoseRule.DOSE_UPRIGHT_UNKNOWN, Level.NOTE, subject, Figures.NONE,
                    "The dose in the bare standing hull is not known, since the hull cannot stand there: what the cover"
                            + " takes off it is not worked out, nor whether it makes it worse."));
        }
        if (station.reduction() < 0) {
            findings.add(Finding.of(DoseRule.DOSE_WORSE_THAN_UPRIGHT, Level.WARN, subject,
                    Figures.of(station.covered().best() * MSV, station.upright() * MSV, "mSv"),
                    text("Under this cover the dose is %.1f mSv, in the bare standing hull %.1f mSv: a thin cover makes"
                            + " neutrons and stops few particles.",
                    station.covered().best() * MSV, station.upright() * MSV)));
        }
    }

    /** What the number of directions rests on, and whether it was enough at every station. */
    static ModelNote directions(List<StationDose> stations) {
        List<String> open = stations.stream().flatMap(s -> Stream.of(
                s.seen().openShare() <= SiteDose.SETTLED ? "" : s.name(),
                s.standing().open() <= SiteDose.SETTLED ? "" : s.name() + " upright"))
                .filter(name -> !name.isEmpty()).toList();
        double greatest = stations.stream().mapToDouble(s -> Math.max(s.seen().openShare(), s.standing().open()))
                .max().orElse(0);
        return new ModelNote("sky-directions", "rays to the sky in azimuths and elevations that are halved until each"
                + " dose of a station changes by less than half a per cent",
                "ways to the sky wider than 2 degrees of azimuth, or at the end of a hull, tunnel or wall",
                open.isEmpty() ? text("%.2f %% at most", greatest * 100)
                        : text("not settled at %s: up to %.1f %% open", String.join(", ", open), greatest * 100),
                open.isEmpty() ? ModelNote.Status.COMPUTED : ModelNote.Status.EXTRAPOLATED,
                "common practice, no source");
    }

    private void occupancy() {
        double sum = stations.stream().mapToDouble(StationDose::occupancyShare).sum();
        if (Math.abs(sum - 1) > OCCUPANCY_SLACK) {
            findings.add(Finding.of(DoseRule.DOSE_OCCUPANCY, Level.NOTE, "crew", Figures.of(sum, 1, "1"),
                    text("The stations' shares of occupancy add up to %.2f; for the crew's dose the time inside is"
                            + " shared out in proportion%s.", sum, sum > 0 ? "" : ", equally since all are nothing")));
        }
    }

    private void shelter() {
        boolean event = stations.stream().anyMatch(s -> s.parts().eventAll().best() > 0);
        if (event && stations.stream().noneMatch(StationDose::stormShelter)) {
            findings.add(Finding.of(DoseRule.DOSE_NO_SHELTER, Level.WARN, "crew", Figures.NONE,
                    "No station is marked as a storm shelter; the event is judged at the station where it is worst."));
        }
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
