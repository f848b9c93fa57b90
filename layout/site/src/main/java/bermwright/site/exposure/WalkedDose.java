// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.WalkSource;
import bermwright.shielding.fold.FoldedDose;
import bermwright.shielding.fold.SkyView;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.walk.StationWalk;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The dose at one station from one source as particles make it that are followed by chance through the scene as it
 * stands, beside the dose that is shown; for somebody who spends the whole stay and the event there.
 *
 * @param hull     the hull
 * @param station  the station's id
 * @param source   cosmic rays over the stay, or the event's name
 * @param shown    the dose that pages show
 * @param straight what comes straight: ions and protons that did not react, with what ions make in the body (Sv)
 * @param ground   gammas of the ground, as the dose that is shown counts them (Sv)
 * @param found    what the walks found, over the stay or the event
 */
public record WalkedDose(String hull, String station, String source, StationDose.Spread shown, double straight,
        double ground, StationWalk.Found found) {
    /** Id of the model behind the walks. */
    public static final String MODEL = "dose-walk";
    /** A source that gives less than this share of the station's dose is asked for with the error of such a share. */
    private static final double ENOUGH = 0.2;
    private static final double LEAST_GUIDE = 50;
    private static final double GREATEST_GUIDE = 8000;
    /** Standard errors of the walks by which the band of the dose is widened. */
    private static final double ERRORS = 2;
    private static final double TOO_GREAT = 0.2;

    /**
     * Which stations to walk from, and how long.
     *
     * @param stations names as hull/station; all where there are none
     * @param walks    how long to walk from each
     */
    public record Asked(List<String> stations, StationWalk.Asked walks) {
        /** Copies the names. */
        public Asked {
            stations = List.copyOf(stations);
        }

        boolean names(StationDose dose) {
            return stations.isEmpty() || stations.contains(dose.name());
        }
    }

    /**
     * The dose by walks.
     *
     * @return dose (Sv)
     */
    public double total() {
        return straight + ground + found.fast() + found.slow();
    }

    /**
     * The walks over what is shown.
     *
     * @return ratio (1); NaN where nothing is shown
     */
    public double ratio() {
        return shown.best() > 0 ? total() / shown.best() : Double.NaN;
    }

    /** Whether both agree. */
    public enum Verdict {
        /** The walks, give or take two standard errors, lie within the band of the dose that is shown. */
        AGREE("agree within errors"),
        /** They do not. */
        APART("apart"),
        /** Chance alone is a fifth of the dose or more, so nothing can be said. */
        UNKNOWN("not known, chance too great");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * The word used in pages.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * Whether both agree within their errors.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        double slack = ERRORS * found.error();
        if (!(found.error() < TOO_GREAT * total())) {
            return Verdict.UNKNOWN;
        }
        return total() + slack >= shown.low() && total() - slack <= shown.high() ? Verdict.AGREE : Verdict.APART;
    }

    /**
     * What walks are made through.
     *
     * @param plan    the plan
     * @param cover   its cover
     * @param sources where responses come from
     * @param dose    the doses that are shown
     */
    public record Through(Plan plan, SiteCover cover, DoseSources sources, SiteDose dose) {
    }

    /**
     * Walks from the stations of a plan.
     *
     * @param site     what walks are made through
     * @param asked    which stations, and how long
     * @param progress told how far the work has come; may cancel it
     * @return for each station cosmic rays, then the event where there is one
     */
    public static List<WalkedDose> all(Through site, Asked asked, Progress progress) {
        Plan plan = site.plan;
        SiteScene scene = SiteScene.of(plan, site.cover);
        List<StationDose> stations = site.dose.stations().stream().filter(asked::names).toList();
        List<WalkedDose> walked = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            StationDose station = stations.get(i);
            Hull hull = plan.hull(station.hull()).orElseThrow();
            Place place = new Place(plan, SceneRays.of(scene.forRays(plan, SiteCover.density(plan, hull))),
                    SiteScene.place(hull.stations().stream()
                            .filter(s -> s.id().equals(station.station())).findFirst().orElseThrow(),
                            scene.hull(hull.id()).orElseThrow()), station, asked.walks);
            walked.addAll(place.walk(hull, site.sources, progress.part((double) i / stations.size(),
                    (i + 1.0) / stations.size())));
        }
        return walked;
    }

    /** One source: its name, the dose that is shown, its response, and what walks go by. */
    private record From(String name, StationDose.Spread dose, Response response, WalkSource source) {
    }

    private record Place(Plan plan, SceneRays scene, Vec3 at, StationDose shown, StationWalk.Asked asked) {
        List<WalkedDose> walk(Hull hull, DoseSources sources, Progress progress) {
            DoseSources.OfHull of = sources.of(plan, hull);
            SkyView view = SkyView.settled(scene, at, of.all(), SiteDose.SETTLED);
            double depth = Math.max(LEAST_GUIDE, Math.min(GREATEST_GUIDE, shown.seen().medianArealDensity()));
            List<WalkedDose> walked = new ArrayList<>();
            walked.add(walk(new From("cosmic rays over the stay", shown.parts().cosmicAll(), of.cosmic(),
                    sources.cosmicWalk(plan, hull, depth, Progress.NONE)), view, progress.part(0, 0.5)));
            Optional<WalkSource> event = sources.eventWalk(plan, hull, depth, Progress.NONE);
            if (event.isPresent() && of.event().isPresent()) {
                walked.add(walk(new From(sources.spectrum(plan.exposure()).orElseThrow().name(),
                        shown.parts().eventAll(), of.event().get(), event.get()), view, progress.part(0.5, 1)));
            }
            return walked;
        }

        private WalkedDose walk(From from, SkyView view, Progress progress) {
            WalkSource source = from.source;
            double[] straight = new double[1];
            view.forEach(d -> straight[0] += d.share() * source.straightDose(d.arealDensity(
                    source.skin().equivalence())));
            double ground = FoldedDose.groundGammas(view, from.response, scene.scene().soil());
            double days = from.response.per() == Response.Per.DAY ? plan.exposure().stayDays() : 1;
            StationWalk.Asked enough = asked.withEnough(ENOUGH * asked.error() * shown.covered().best() / days);
            StationWalk.Found found = StationWalk.walk(new StationWalk.At(source, scene, at), straight[0] + ground,
                    enough, new Progress() {
                @Override
                public void report(double share, String step) {
                    progress.report(share, shown.name() + ", " + from.name + ": " + step);
                }

                @Override
                public boolean isCancelled() {
                    return progress.isCancelled();
                }
            });
            return new WalkedDose(shown.hull(), shown.station(), from.name, from.dose, days * straight[0],
                    days * ground, found.times(days));
        }
    }

    /**
     * What stands behind walks.
     *
     * @return the note
     */
    public static ModelNote model() {
        return new ModelNote(MODEL, "particles followed by chance, one by one, from the station back to the sky through"
                + " the scene as it stands: hulls with the layers of their skins, mound, ground, neighbours, walls."
                + " It shares cross sections, yields of reactions, spectra and dose coefficients with the dose that is"
                + " shown, and takes from it what comes straight and the gammas of the ground; it has no slabs, no"
                + " levelled walls and no diffusion", "any cover to 1000 g/cm2; a wall counts as soil; hulls beside"
                + " the station's own have its skin's layers, as many as they weigh; charged particles slow down in"
                + " steps of the energy grid; air and people are left out",
                "the standard error beside each dose is chance alone, and stops at the share asked for of the dose from"
                + " its source or of a fifth of the station's whole dose; what reactions and spectrum may be off by is"
                + " in the band of the dose that is shown", ModelNote.Status.COMPUTED, "own walker; held against the"
                + " Monte Carlo with Geant4 11.4.0, own run, 2026, in rooms and level ground: 0.89 to 1.09 of it");
    }
}
