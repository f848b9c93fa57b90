// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/**
 * Cuts the surfaces along one azimuth and finds how much of each ray of a fan lies below them.
 *
 * <p>Beyond the grid's edge, or a hole, the ground is taken as level at the last height.
 */
final class ProfileWalk {
    private static final double NUDGE = 1e-9;
    private SoilField field;
    private ProfileCut cut;
    private final SoilField nearField;
    private final ProfileCut near;
    private final SoilField farField;
    private final ProfileCut far;
    /** Whether nothing is placed or dug: then both surfaces are one. */
    final boolean plain;
    /** The finished surface, and the top of undisturbed soil. */
    final SurfaceFan finished;
    final SurfaceFan place;
    /** How many rays, from the lowest, were still in soil at the edge of the known ground. */
    int belowAtEdge;
    /** Vertices of the natural ground, kept only where density changes with depth. */
    double[] vertexAt = new double[64];
    double[] vertexNatural = new double[64];
    int vertices;

    private final double[] placeRise;
    private final double[] natural;

    ProfileWalk(SoilFields fields) {
        field = fields.near();
        nearField = field;
        farField = fields.far().orElse(null);
        plain = field.inPlace == field.finished && (farField == null || farField.inPlace == farField.finished);
        boolean kept = !plain || !field.uniform;
        near = new ProfileCut(field, kept);
        far = farField == null ? null : new ProfileCut(farField, kept);
        cut = near;
        finished = new SurfaceFan(plain && !field.uniform);
        place = plain ? finished : new SurfaceFan(!field.uniform, finished);
        int most = far == null ? near.at.length : Math.max(near.at.length, far.at.length);
        placeRise = new double[plain ? 0 : most];
        natural = new double[field.uniform ? 0 : most];
    }

    /** Walks outwards; the tangents stand from index 1, rising, all above zero or a single one, between bounds. */
    void walk(double[] start, Way way, double[] tangents, Voids voids) {
        double z0 = start[2];
        field = nearField;
        cut = near;
        cut.begin(start, way.east, way.north);
        belowAtEdge = 0;
        vertices = 0;
        finished.begin(tangents, voids, cut.heightAt(field.finished, 0) - z0);
        if (!plain) {
            place.begin(tangents, voids, cut.heightAt(field.inPlace, 0) - z0);
        }
        if (!field.uniform) {
            push(0, cut.heightAt(field.natural, 0));
        }
        boolean known = true;
        while (known && cut.next(tangents[1])) {
            known = run(z0);
        }
        if (known && far != null) {
            goOn(start, way, tangents[1]);
        }
        belowAtEdge = finished.below;
        if (belowAtEdge > 0 && tangents[1] > 0) {
            finished.level();
            if (!plain) {
                place.level();
            }
            if (!field.uniform) {
                push(finished.lastAt, vertexNatural[vertices - 1]);
            }
        }
        finished.end();
    }

    /** Goes on beyond the finer patch. */
    private void goOn(double[] start, Way way, double lowest) {
        double edge = near.edge;
        field = farField;
        cut = far;
        far.begin(start, way.east, way.north, edge);
        if (!(edge < far.edge * (1 - NUDGE))) {
            return;
        }
        boolean known = far.next(lowest);
        if (finished.below + place.below > 0 && (!known || far.from > edge)) {
            // Both meet at the seam but for the cells' straightness; what is below there comes out there.
            finished.surface(edge);
            if (!plain) {
                place.surface(edge);
            }
        }
        while (known) {
            known = run(start[2]) && far.next(lowest);
        }
    }

    /** Which way an azimuth leads. */
    static final class Way {
        double east;
        double north;
    }

    /** Passes one run; false where it ends in a hole. */
    private boolean run(double z0) {
        if (cut.from > finished.lastAt) {
            jump(z0);
        }
        int many = cut.count;
        int passed = finished.pass(cut.at, cut.rise, many);
        if (!plain) {
            cut.heights(field.inPlace, z0, placeRise);
            passed = place.pass(cut.at, placeRise, passed);
        }
        if (!field.uniform) {
            cut.heights(field.natural, 0, natural);
            push(passed);
        }
        if (passed == many && !cut.toEdge) {
            finished.surface(finished.lastAt);
            if (!plain) {
                place.surface(place.lastAt);
            }
        }
        return passed == many;
    }

    /** Goes on where the ground comes up to the lowest ray again. */
    private void jump(double z0) {
        finished.from(cut.from, cut.heightAt(field.finished, cut.from) - z0);
        if (!plain) {
            place.from(cut.from, cut.heightAt(field.inPlace, cut.from) - z0);
        }
        if (!field.uniform) {
            push(cut.from, cut.heightAt(field.natural, cut.from));
        }
    }

    private void push(int passed) {
        room(passed);
        System.arraycopy(cut.at, ProfileCut.MARGIN, vertexAt, vertices, passed);
        System.arraycopy(natural, ProfileCut.MARGIN, vertexNatural, vertices, passed);
        vertices += passed;
    }

    private void push(double at, double height) {
        room(1);
        vertexAt[vertices] = at;
        vertexNatural[vertices++] = height;
    }

    private void room(int more) {
        if (vertices + more > vertexAt.length) {
            int wide = 2 * (vertices + more);
            vertexAt = Arrays.copyOf(vertexAt, wide);
            vertexNatural = Arrays.copyOf(vertexNatural, wide);
        }
    }
}
