// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

/** Single rays from one station, through both surfaces of soil of one density. */
final class SingleRays {
    private final SoilField field;
    private final RayWave finished;
    private final RayWave place;
    private final double[] slants = new double[RayWave.RAYS];
    /** Which of the caller's rays these are. */
    private final int[] whose = new int[RayWave.RAYS];
    private int many;

    SingleRays(SoilField field, double[] start) {
        this.field = field;
        finished = new RayWave(field, field.finished, field.steepness(), start);
        place = field.inPlace == field.finished ? finished
                : new RayWave(field, field.inPlace, field.steepnessInPlace(), start);
    }

    boolean isFull() {
        return many == RayWave.RAYS;
    }

    /** Puts one of the caller's rays at a distance in plan, where it leaves the hull around it. */
    void put(int ray, ProfileWalk.Way way, double tangent, double from) {
        whose[many] = ray;
        slants[many] = Math.sqrt(1 + tangent * tangent);
        finished.put(many, way.east, way.north, tangent, from);
        if (place != finished) {
            place.put(many, way.east, way.north, tangent, from);
        }
        many++;
    }

    /** Follows all rays put so far; those that end in a hole of the ground are told as not a number. */
    void run(SkyRays into) {
        finished.run(many);
        if (place != finished) {
            place.run(many);
        }
        for (int k = 0; k < many; k++) {
            int ray = whose[k];
            double all = finished.length[k];
            double undisturbed = place.length[k];
            into.placed[ray] = place == finished ? all * 0
                    : Math.max(0, all - undisturbed) * slants[k] * field.placedDensity;
            into.inPlace[ray] = undisturbed * slants[k] * field.uniformDensity;
            into.rise[ray] = finished.exitRise[k];
            into.beyondEdge += finished.belowAtEdge[k] ? 1 : 0;
        }
        many = 0;
    }
}
