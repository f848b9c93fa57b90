// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Azimuth;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SkyRays;
import bermwright.shielding.raycast.SkySweep;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Casts the rays of one station, and halves panels of elevation and sectors of azimuth where its doses have not
 * settled.
 */
final class SkyLook {
    private static final int FIRST_PANELS = 4;
    private static final int MOST_PANELS = 96;
    /** Panels are not halved below this part of the sine of the elevation. */
    private static final double LEAST_PANEL = 1e-5;
    /** Directions after which nothing is halved any more. */
    private static final int MOST_DIRECTIONS = 600_000;
    /** A dose below this share of the open sky's settles only to that share's own tolerance. */
    private static final double FAINT = 1e-6;
    /** Share of the allowed error that elevations may take, and azimuths. */
    private static final double ELEVATION_SHARE = 0.4;
    private static final double AZIMUTH_SHARE = 0.5;
    private static final double[] FIRST_SINES = first();

    private final SkySweep sweep;
    private final SkyRays rays = new SkyRays();
    private final List<Response> responses;
    private final double tolerance;
    private final KnownSky known;
    private final double[] azimuths;
    /** What a change of dose is held against, for each response. */
    private final double[] scale;
    final List<SkyRing> rings = new ArrayList<>();
    private int directions;
    /** Share of the dose that may still be open. */
    double openShare;

    SkyLook(SkySweep sweep, double[] azimuths, List<Response> responses, double tolerance, KnownSky known) {
        this.sweep = sweep;
        this.responses = responses;
        this.tolerance = tolerance;
        this.azimuths = azimuths;
        this.known = known;
        this.scale = new double[responses.size()];
    }

    private record Sector(SkyRing from, SkyRing middle, SkyRing to, double width, double error) {
    }

    private static double[] first() {
        double[] sines = new double[FIRST_PANELS * KronrodNodes.NODES];
        for (int p = 0; p < FIRST_PANELS; p++) {
            SkyPanel.sines((double) p / FIRST_PANELS, (p + 1.0) / FIRST_PANELS, sines, p * KronrodNodes.NODES);
        }
        return sines;
    }

    /** Looks until all doses have settled, or until the allowed number of azimuths is spent. */
    void settle() {
        for (double azimuth : azimuths) {
            rings.add(ring(azimuth));
        }
        weigh();
        rings.forEach(this::refine);
        weigh();
        double azimuthError = halve(AZIMUTH_SHARE * tolerance);
        double greatest = 0;
        for (int r = 0; r < scale.length; r++) {
            double error = 0;
            for (SkyRing ring : rings) {
                error += ring.turnShare * ring.errors[r];
            }
            greatest = Math.max(greatest, error / scale[r]);
        }
        openShare = greatest + azimuthError;
    }

    /** Sets what changes are held against, from the azimuths of the first turn. */
    private void weigh() {
        for (int r = 0; r < scale.length; r++) {
            double total = 0;
            for (int i = 0; i < azimuths.length; i++) {
                double width = (width(i) + width((i + azimuths.length - 1) % azimuths.length)) / 2;
                total += rings.get(i).doses[r] * width / (2 * Math.PI);
            }
            scale[r] = Math.max(Math.max(total, FAINT * responses.get(r).isotropicDose(0)), Double.MIN_NORMAL);
        }
    }

    /** The angle from an azimuth of the first turn to the next (rad). */
    private double width(int i) {
        return i + 1 < azimuths.length ? azimuths[i + 1] - azimuths[i] : azimuths[0] + 2 * Math.PI - azimuths[i];
    }

    private SkyRing ring(double azimuth) {
        KnownSky.Turn turn = known.turn(azimuth);
        List<SkyPanel> panels = new ArrayList<>(FIRST_PANELS);
        boolean isLooked = false;
        for (int p = 0; p < FIRST_PANELS; p++) {
            double from = (double) p / FIRST_PANELS;
            double to = (p + 1.0) / FIRST_PANELS;
            Optional<SkyPanel> seen = turn.panel(from, to);
            if (seen.isEmpty() && !isLooked) {
                sweep.look(new Azimuth(azimuth), FIRST_SINES, rays);
                isLooked = true;
            }
            panels.add(seen.orElseGet(() -> taken(turn, from, to, (int) (from * FIRST_SINES.length))));
        }
        directions += FIRST_SINES.length;
        return new SkyRing(azimuth, panels, turn);
    }

    /** A panel out of the fan that was looked along last. */
    private SkyPanel taken(KnownSky.Turn turn, double from, double to, int first) {
        SkyPanel panel = new SkyPanel(from, to, rays, first, responses);
        turn.keep(panel);
        return panel;
    }

    /** Halves the panels of an azimuth until its doses have settled; all that need it at once share a look. */
    private void refine(SkyRing ring) {
        while (ring.panels.size() < MOST_PANELS && directions < MOST_DIRECTIONS) {
            boolean[] wanted = new boolean[ring.panels.size()];
            int many = 0;
            for (int r = 0; r < scale.length; r++) {
                double allowed = ELEVATION_SHARE * tolerance * (scale[r] + ring.doses[r]) / 2;
                if (ring.errors[r] > allowed) {
                    many += mark(ring, r, allowed, wanted);
                }
            }
            if (many == 0) {
                return;
            }
            ring.take(halved(ring, wanted, many));
        }
    }

    private static int mark(SkyRing ring, int r, double allowed, boolean[] wanted) {
        int many = 0;
        for (int p = 0; p < wanted.length; p++) {
            SkyPanel panel = ring.panels.get(p);
            if (!wanted[p] && panel.errors[r] > allowed / (2 * wanted.length) && panel.to - panel.from > LEAST_PANEL) {
                wanted[p] = true;
                many++;
            }
        }
        return many;
    }

    private List<SkyPanel> halved(SkyRing ring, boolean[] wanted, int many) {
        int nodes = KronrodNodes.NODES;
        KnownSky.Turn turn = ring.known();
        double[] sines = new double[2 * many * nodes];
        SkyPanel[] halves = new SkyPanel[2 * wanted.length];
        int at = 0;
        for (int p = 0; p < wanted.length; p++) {
            SkyPanel panel = ring.panels.get(p);
            double middle = (panel.from + panel.to) / 2;
            if (wanted[p] && !known(turn, panel, halves, 2 * p)) {
                SkyPanel.sines(panel.from, middle, sines, at);
                SkyPanel.sines(middle, panel.to, sines, at + nodes);
                at += 2 * nodes;
            }
        }
        if (at > 0) {
            sweep.look(new Azimuth(ring.azimuth), Arrays.copyOf(sines, at), rays);
        }
        directions += sines.length;
        List<SkyPanel> changed = new ArrayList<>(wanted.length + many);
        int next = 0;
        for (int p = 0; p < wanted.length; p++) {
            SkyPanel panel = ring.panels.get(p);
            if (!wanted[p]) {
                changed.add(panel);
            } else if (halves[2 * p] != null) {
                changed.add(halves[2 * p]);
                changed.add(halves[2 * p + 1]);
            } else {
                double middle = (panel.from + panel.to) / 2;
                changed.add(taken(turn, panel.from, middle, next));
                changed.add(taken(turn, middle, panel.to, next + nodes));
                next += 2 * nodes;
            }
        }
        return changed;
    }

    /** Takes both halves of a panel where they are known; else neither. */
    private static boolean known(KnownSky.Turn turn, SkyPanel panel, SkyPanel[] halves, int at) {
        double middle = (panel.from + panel.to) / 2;
        Optional<SkyPanel> lower = turn.panel(panel.from, middle);
        Optional<SkyPanel> upper = turn.panel(middle, panel.to);
        boolean isKnown = lower.isPresent() && upper.isPresent();
        halves[at] = isKnown ? lower.get() : null;
        halves[at + 1] = isKnown ? upper.get() : null;
        return isKnown;
    }

    private double halve(double allowed) {
        PriorityQueue<Sector> open = new PriorityQueue<>(Comparator.comparingDouble(s -> -s.error));
        double error = 0;
        for (int i = 0; i < azimuths.length; i++) {
            Sector sector = sector(rings.get(i), rings.get((i + 1) % azimuths.length), width(i) / (2 * Math.PI));
            error += sector.error;
            open.add(sector);
        }
        while (error > allowed && directions < MOST_DIRECTIONS) {
            Sector worst = open.poll();
            Sector left = sector(worst.from, worst.middle, worst.width / 2);
            Sector right = sector(worst.middle, worst.to, worst.width / 2);
            error += left.error + right.error - worst.error;
            open.add(left);
            open.add(right);
        }
        for (Sector sector : open) {
            sector.from.turnShare += sector.width / 4;
            sector.middle.turnShare += sector.width / 2;
            sector.to.turnShare += sector.width / 4;
        }
        return Math.max(0, error);
    }

    private Sector sector(SkyRing from, SkyRing to, double width) {
        SkyRing middle = ring(from.azimuth + width * Math.PI);
        refine(middle);
        rings.add(middle);
        double error = 0;
        for (int r = 0; r < scale.length; r++) {
            double change = Math.abs(from.doses[r] + to.doses[r] - 2 * middle.doses[r]) / 4 * width;
            error = Math.max(error, change / scale[r]);
        }
        return new Sector(from, middle, to, width, error);
    }
}
