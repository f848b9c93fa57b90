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
    private final double perSpacing;
    private final RayWave finished;
    private final RayWave place;
    /** The batch: level unit directions, tangents of elevation, and the way over the way in plan. */
    final double[] east = new double[RayWave.RAYS];
    final double[] north = new double[RayWave.RAYS];
    final double[] tangents = new double[RayWave.RAYS];
    final double[] slants = new double[RayWave.RAYS];
    /** Where each leaves the hull around it, in plan, and the skin on it. */
    private final double[] until = new double[RayWave.RAYS];
    private final double[] skin = new double[RayWave.RAYS];

    SingleRays(SoilField field, HullSight[] sights, double[] start) {
        this.field = field;
        this.sights = sights;
        this.faces = new SoilFaces(field, start);
        this.perSpacing = 1 / field.spacing;
        finished = new RayWave(field, new RayWave.Surface(field.finished, field.steepness()), start,
                Optional.empty());
        place = field.inPlace == field.finished ? finished
                : new RayWave(field, new RayWave.Surface(field.inPlace, field.steepnessInPlace()), start,
                        Optional.of(finished));
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
        finished.put(this, until, many);
        finished.run(many);
        if (place != finished) {
            place.put(this, until, many);
            place.run(many);
        }
        for (int k = 0; k < many; k++) {
            int ray = first + k;
            double undisturbed = place.length[k];
            double over = finished.length[k] - undisturbed;
            // Not a number stays.
            into.placed[ray] = (over < 0 ? 0 : over) * slants[k] * field.placedDensity;
            into.inPlace[ray] = undisturbed * slants[k] * field.uniformDensity;
            into.skin[ray] = skin[k];
            into.rise[ray] = finished.face(k);
            faces.at(ray, east[k] * perSpacing, north[k] * perSpacing, into.rise, into.steep);
            into.setBeyond(ray, beyond(k) * slants[k]);
            into.beyondEdge += finished.belowAtEdge[k] && !Double.isNaN(over) ? 1 : 0;
        }
    }

    /** Soil beyond the first that a ray leaves, over the way in plan. */
    private double beyond(int k) {
        if (finished.again[k] == Double.POSITIVE_INFINITY) {
            return 0;
        }
        double undisturbed = place.again[k] == Double.POSITIVE_INFINITY ? 0 : place.length[k] - place.first[k];
        double all = finished.length[k] - finished.first[k];
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
