// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.raycast.SkyRays;
import bermwright.shielding.raycast.SkySweep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The whole sky as one station sees it, in as many directions as the dose there needs.
 *
 * <p>Elevations are Gauss nodes in panels of equal solid angle; azimuths are halved where the dose still changes.
 */
public final class SkyView {
    /** Azimuths to begin with; odd, so that no hull's own symmetry hides behind it. */
    private static final int FIRST_AZIMUTHS = 23;
    private static final int FIRST_PANELS = 4;
    private static final int MOST_PANELS = 64;
    private static final int MOST_RINGS = 4000;
    /** Where the first azimuth looks (rad); any value that is no even share of a turn. */
    private static final double FIRST_LOOK = 0.1234;
    /** A dose below this share of the open sky's settles only to that share's own tolerance. */
    private static final double FAINT = 1e-4;
    /** Share of the allowed error that elevations may take, and azimuths. */
    private static final double ELEVATION_SHARE = 0.4;
    private static final double AZIMUTH_SHARE = 0.4;

    private final Vec3 station;
    private final List<Ring> rings;
    private final double[] sines;
    private final double[] shares;
    private final double settled;

    private SkyView(Vec3 station, List<Ring> rings, Nodes nodes, double settled) {
        this.station = station;
        this.rings = List.copyOf(rings);
        this.sines = nodes.sines;
        this.shares = nodes.shares;
        this.settled = settled;
    }

    /** One azimuth with all its rays, and the share of a turn it stands for. */
    static final class Ring {
        final double azimuth;
        final double[][] crossed;
        final int beyondEdge;
        final double[] doses;
        double turnShare;

        Ring(double azimuth, double[][] crossed, int beyondEdge, double[] doses) {
            this.azimuth = azimuth;
            this.crossed = crossed;
            this.beyondEdge = beyondEdge;
            this.doses = doses;
        }
    }

    private record Nodes(double[] sines, double[] shares) {
        static Nodes of(int panels) {
            double[] x = GaussNodes.AT;
            double[] w = GaussNodes.SHARE;
            double[] sines = new double[panels * x.length];
            double[] shares = new double[sines.length];
            for (int p = 0; p < panels; p++) {
                for (int i = 0; i < x.length; i++) {
                    sines[p * x.length + i] = (p + x[i]) / panels;
                    shares[p * x.length + i] = w[i] / panels;
                }
            }
            return new Nodes(sines, shares);
        }
    }

    private record Sector(Ring from, Ring middle, Ring to, double width, double error) {
    }

    /**
     * Looks at the sky until the doses are settled.
     *
     * @param scene     the scene, ready for rays
     * @param station   where to look from
     * @param responses the responses that have to settle, at least one
     * @param tolerance share of each dose that may stay open (1), such as 0.005
     * @return the view
     */
    public static SkyView settled(SceneRays scene, Vec3 station, List<Response> responses, double tolerance) {
        SkySweep sweep = scene.from(station);
        SkyRays rays = new SkyRays();
        int panels = FIRST_PANELS;
        Looker looker = new Looker(sweep, rays, responses, Nodes.of(panels));
        List<Ring> first = looker.turn();
        double elevationError = Double.POSITIVE_INFINITY;
        while (panels < MOST_PANELS) {
            Looker finer = new Looker(sweep, rays, responses, Nodes.of(panels * 2));
            List<Ring> more = finer.turn();
            elevationError = greatestChange(first, more, responses);
            panels *= 2;
            looker = finer;
            first = more;
            if (elevationError <= ELEVATION_SHARE * tolerance) {
                break;
            }
        }
        List<Ring> rings = new ArrayList<>();
        double azimuthError = looker.refine(first, AZIMUTH_SHARE * tolerance, rings);
        return new SkyView(station, rings, looker.nodes, elevationError + azimuthError);
    }

    private static double greatestChange(List<Ring> coarse, List<Ring> fine, List<Response> responses) {
        double greatest = 0;
        for (int r = 0; r < responses.size(); r++) {
            double change = 0;
            double total = 0;
            for (int i = 0; i < fine.size(); i++) {
                change += Math.abs(fine.get(i).doses[r] - coarse.get(i).doses[r]) / fine.size();
                total += fine.get(i).doses[r] / fine.size();
            }
            greatest = Math.max(greatest, change / scale(total, responses.get(r)));
        }
        return greatest;
    }

    /** What a change of dose is held against. */
    private static double scale(double dose, Response response) {
        return Math.max(Math.max(dose, FAINT * response.isotropicDose(0)), Double.MIN_NORMAL);
    }

    /** Casts the rays of single azimuths and halves sectors where the dose has not settled. */
    private static final class Looker {
        private final SkySweep sweep;
        private final SkyRays rays;
        private final List<Response> responses;
        private final Nodes nodes;

        Looker(SkySweep sweep, SkyRays rays, List<Response> responses, Nodes nodes) {
            this.sweep = sweep;
            this.rays = rays;
            this.responses = responses;
            this.nodes = nodes;
        }

        List<Ring> turn() {
            List<Ring> rings = new ArrayList<>();
            for (int i = 0; i < FIRST_AZIMUTHS; i++) {
                rings.add(ring(FIRST_LOOK + 2 * Math.PI * i / FIRST_AZIMUTHS));
            }
            return rings;
        }

        Ring ring(double azimuth) {
            sweep.look(new Azimuth(azimuth), nodes.sines, rays);
            double[] doses = new double[responses.size()];
            for (int r = 0; r < doses.length; r++) {
                Response response = responses.get(r);
                double equivalence = response.skinEquivalence();
                for (int k = 0; k < rays.count(); k++) {
                    doses[r] += nodes.shares[k] * response.isotropicDose(
                            rays.placed(k) + rays.inPlace(k) + rays.skin(k) * equivalence);
                }
            }
            return new Ring(azimuth, rays.copy(), rays.beyondEdge(), doses);
        }

        double refine(List<Ring> first, double allowed, List<Ring> into) {
            PriorityQueue<Sector> open = new PriorityQueue<>(Comparator.comparingDouble(s -> -s.error));
            double[] total = new double[responses.size()];
            for (Ring ring : first) {
                for (int r = 0; r < total.length; r++) {
                    total[r] += ring.doses[r] / first.size();
                }
            }
            into.addAll(first);
            for (int r = 0; r < total.length; r++) {
                total[r] = scale(total[r], responses.get(r));
            }
            double error = 0;
            for (int i = 0; i < first.size(); i++) {
                Sector sector = sector(first.get(i), first.get((i + 1) % first.size()), 1.0 / first.size(), total,
                        into);
                error += sector.error;
                open.add(sector);
            }
            while (error > allowed && into.size() < MOST_RINGS) {
                Sector worst = open.poll();
                Sector left = sector(worst.from, worst.middle, worst.width / 2, total, into);
                Sector right = sector(worst.middle, worst.to, worst.width / 2, total, into);
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

        private Sector sector(Ring from, Ring to, double width, double[] total, List<Ring> into) {
            double turn = (to.azimuth - from.azimuth) % (2 * Math.PI);
            Ring middle = ring(from.azimuth + (turn < 0 ? turn + 2 * Math.PI : turn) / 2);
            into.add(middle);
            double error = 0;
            for (int r = 0; r < total.length; r++) {
                double change = Math.abs(from.doses[r] + to.doses[r] - 2 * middle.doses[r]) / 4 * width;
                error = Math.max(error, change / total[r]);
            }
            return new Sector(from, middle, to, width, error);
        }
    }

    /** Takes one direction at a time. */
    @FunctionalInterface
    public interface Visitor {
        /**
         * One direction.
         *
         * @param direction what is seen there
         */
        void visit(Direction direction);
    }

    /**
     * One direction of the sky and what lies in it.
     *
     * @param azimuth azimuth (rad)
     * @param sine    sine of the elevation (1), 0 to 1
     * @param share   share of the whole ball of directions it stands for (1); all of a view's together are 0.5
     * @param placed  placed soil (kg/m2)
     * @param inPlace undisturbed soil (kg/m2)
     * @param skin    skins at a slant (kg/m2)
     * @param slant   how much longer than thick the way through the outer layer is (1)
     */
    public record Direction(double azimuth, double sine, double share, double placed, double inPlace, double skin,
            double slant) {
        /**
         * Everything counted as soil.
         *
         * @param skinEquivalence what one unit of skin counts as in soil (1)
         * @return areal density (kg/m2)
         */
        public double arealDensity(double skinEquivalence) {
            return placed + inPlace + skin * skinEquivalence;
        }
    }

    /**
     * Goes through all directions.
     *
     * @param visitor takes each of them
     */
    public void forEach(Visitor visitor) {
        for (Ring ring : rings) {
            for (int k = 0; k < sines.length; k++) {
                visitor.visit(new Direction(ring.azimuth, sines[k], ring.turnShare * shares[k] / 2,
                        ring.crossed[0][k], ring.crossed[1][k], ring.crossed[2][k], ring.crossed[3][k]));
            }
        }
    }

    /**
     * Where it was looked from.
     *
     * @return the station
     */
    public Vec3 station() {
        return station;
    }

    /**
     * How many directions were looked along.
     *
     * @return the number (1)
     */
    public int directions() {
        return rings.size() * sines.length;
    }

    /**
     * The share of the dose that may still be open, as halving azimuths and elevations last changed it.
     *
     * @return share (1)
     */
    public double openShare() {
        return settled;
    }

    /**
     * The share of the sky whose rays were still in soil where the known ground ends.
     *
     * @return share of the sky (1), 0 to 1
     */
    public double shareBeyondEdge() {
        double share = 0;
        for (Ring ring : rings) {
            for (int k = 0; k < ring.beyondEdge; k++) {
                share += ring.turnShare * shares[k];
            }
        }
        return share;
    }
}
