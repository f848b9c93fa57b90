// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import bermwright.shielding.raycast.ScenePath;
import bermwright.shielding.transport.BackwardField;
import java.util.Objects;

/** What walks by chance back from a station go by, and the dose of what comes to it straight. */
public final class WalkSource {
    private final BackwardField field;
    private final double seconds;
    private final SlantedDoses doses;
    private final ScenePath.Skin skin;

    WalkSource(BackwardField field, double seconds, SlantedDoses doses, ScenePath.Skin skin) {
        this.field = Objects.requireNonNull(field, "field");
        this.seconds = seconds;
        this.doses = doses;
        this.skin = skin;
    }

    /**
     * Reactions and sources, read backwards; what it counts is a second's for cosmic rays.
     *
     * @return the field
     */
    public BackwardField field() {
        return field;
    }

    /**
     * Over how much a dose counts.
     *
     * @return seconds of a day for cosmic rays, 1 for an event (s)
     */
    public double seconds() {
        return seconds;
    }

    /**
     * The hulls' skin.
     *
     * @return its layers
     */
    public ScenePath.Skin skin() {
        return skin;
    }

    /**
     * Dose of ions and protons that come straight along a ray, with what ions make in the body, as if all directions
     * were like it.
     *
     * @param arealDensity areal density along the ray, skins counted as soil (kg/m2), zero or more
     * @return dose (Sv, a day's for cosmic rays)
     */
    public double straightDose(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        return doses.straight(arealDensity);
    }
}
