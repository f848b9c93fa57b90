// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Require;
import java.util.Arrays;
import java.util.Optional;

/** Single rays from one station through both surfaces of soil of one density, a batch at a time. */
final class SingleRays {
    private final SoilField field;
    private final HullSight[] sights;
    private final SoilFaces faces;
    private final RayWave finished;
    private final RayWave place;
    /** The same beyond a finer patch, or those themselves where there is none. */
    private final RayWave finishedFar;
    private final RayWave placeFar;
    /** The batch: level unit directions, tangents of elevation, and the way over the way in plan. */
    final double[] east = new double[RayWave.RAYS];
    final double[] north = new double[RayWave.RAYS];
    final double[] tangents = new double[RayWave.RAYS];
    final double[] slants = new double[RayWave.RAYS];
    /** Where each leaves the hull around it, in plan, and the skin on it. */
    private final double[] until = new double[RayWave.RAYS];
    private final double[] skin = new double[RayWave.RAYS];

    SingleRays(SoilFields fields, HullSight[] sights, double[] start) {
        this.field = fields.near();
        this.sights = sights;
        this.faces = new SoilFaces(fields, start);
        boolean goesOn = fields.far().isPresent();
        boolean plain = field.inPlace == field.finished
                && fields.far().map(f -> f.inPlace == f.finished).orElse(true);
        finished = finished(field, start, goesOn);
        finishedFar = fields.far().map(f -> finished(f, start, false)).orElse(finished);
        place = plain ? finished : inPlace(field, start, finished, goesOn);
        placeFar = plain ? finishedFar : fields.far().map(f -> inPlace(f, start, finishedFar, false)).orElse(place);
    }

    private static RayWave finished(SoilField soil, double[] start, boolean goesOn) {
        return new RayWave(soil, new RayWave.Surface(soil.finished, soil.steepness(), goesOn), start,
                Optional.empty());
    }

    private static RayWave inPlace(SoilField soil, double[] start, RayWave outer, boolean goesOn) {
        return new RayWave(soil, new RayWave.Surface(soil.inPlace, soil.steepnessInPlace(), goesOn), start,
                Optional.of(outer));
    }

    /**
     * Follows a batch; rays that another hull may stand in the way of, or that end in a hole of the ground, come out
     * as not a number.
     */
    void look(double[][] directions, int first, int many, SkyRays into) {
        System.arraycopy(directions[0], first, east, 0, many);
        System.arraycopy(directions[1], first, north, 0, many);
        System.arraycopy(directions[2], first, tangents, 0, many);
        for (int k = 0; k < many; k++) {
            slants[k] = 1 / Math.sqrt(east[k] * east[k] + north[k] * north[k]);
        }
        for (int k = 0; k < many; k++) {
            Require.that(tangents[k] > 0 && slants[k] < Double.POSITIVE_INFINITY,
                    "the upward part of ray %s is %s; accepted: above 0 and below 1", first + k, tangents[k]);
        }
        for (int k = 0; k < many; k++) {
            east[k] *= slants[k];
            north[k] *= slants[k];
            tangents[k] *= slants[k];
        }
        hulls(many);
        follow(finished, finishedFar, many);
        if (place != finished) {
            follow(place, placeFar, many);
        }
        for (int k = 0; k < many; k++) {
            int ray = first + k;
            double undisturbed = placeFar.length[k];
            double over = finishedFar.length[k] - undisturbed;
            // Not a number stays.
            into.placed[ray] = (over < 0 ? 0 : over) * slants[k] * field.placedDensity;
            into.inPlace[ray] = undisturbed * slants[k] * field.uniformDensity;
            into.skin[ray] = skin[k];
            into.rise[ray] = finishedFar.face(k);
            faces.at(ray, east[k], north[k], into.rise, into.steep);
            into.setBeyond(ray, beyond(k) * slants[k]);
            into.beyondEdge += finishedFar.belowAtEdge[k] && !Double.isNaN(over) ? 1 : 0;
        }
    }

    private void follow(RayWave near, RayWave far, int many) {
        near.put(this, until, many);
        near.run(many);
        if (far != near) {
            far.put(this, until, many);
            far.goOn(near, many);
        }
    }

    /** Soil beyond the first that a ray leaves, over the way in plan. */
    private double beyond(int k) {
        if (finishedFar.again[k] == Double.POSITIVE_INFINITY) {
            return 0;
        }
        double undisturbed = placeFar.again[k] == Double.POSITIVE_INFINITY ? 0 : placeFar.length[k] - placeFar.first[k];
        double all = finishedFar.length[k] - finishedFar.first[k];
        return Math.max(0, all - undisturbed) * field.placedDensity + undisturbed * field.uniformDensity;
    }

    private void hulls(int many) {
        HullSight own = null;
        for (HullSight sight : sights) {
            own = own == null && sight.inside ? sight : own;
        }
        if (own == null) {
            Arrays.fill(until, 0);
            Arrays.fill(skin, 0);
        } else {
            own.leaveAll(this, many, until, skin);
        }
        for (HullSight sight : sights) {
            for (int k = 0; sight != own && k < many; k++) {
                if (sight.isAhead(east[k], north[k])) {
                    until[k] = Double.NaN;
                }
            }
        }
    }
}
