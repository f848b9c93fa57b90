// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

/** Where a ray's line enters and leaves a hull, to be filled again and again; not to be shared between threads. */
public final class HullCrossing {
    private double enter;
    private double leave;
    private double enterSlant;
    private double leaveSlant;

    /** A crossing to be filled. */
    public HullCrossing() {
        clear();
    }

    void clear() {
        enter = Double.POSITIVE_INFINITY;
        leave = Double.NEGATIVE_INFINITY;
        enterSlant = 1;
        leaveSlant = 1;
    }

    void meet(double distance, double slant) {
        if (distance < enter) {
            enter = distance;
            enterSlant = slant;
        }
        if (distance > leave) {
            leave = distance;
            leaveSlant = slant;
        }
    }

    /** For a ray that starts inside: only the way out counts. */
    void leaveAt(double distance, double slant) {
        enter = Double.NEGATIVE_INFINITY;
        leave = distance;
        enterSlant = 1;
        leaveSlant = slant;
    }

    boolean isMet() {
        return leave > enter;
    }

    /**
     * Where the line goes in.
     *
     * @return distance from the ray's start (m), negative behind it
     */
    public double enter() {
        return enter;
    }

    /**
     * Where the line comes out.
     *
     * @return distance from the ray's start (m), negative behind it
     */
    public double leave() {
        return leave;
    }

    /**
     * How much longer than the skin is thick the way through it is, going in.
     *
     * @return slant (1), at least 1
     */
    public double enterSlant() {
        return enterSlant;
    }

    /**
     * How much longer than the skin is thick the way through it is, coming out.
     *
     * @return slant (1), at least 1
     */
    public double leaveSlant() {
        return leaveSlant;
    }
}
