// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * The rigid body that is laid down.
 *
 * @param outline             its outside
 * @param mass                mass with residual propellant (kg), positive
 * @param centre              centre of mass
 * @param inertiaAboutCentre  moment of inertia about the line through the centre of mass that is parallel to the
 *                            pivot line (kg m2), zero or more
 * @param residualPropellant  the part of the mass that is liquid and may slosh (kg), zero up to the mass
 */
public record Body(Outline outline, double mass, MassCentre centre, double inertiaAboutCentre,
        double residualPropellant) {
    /** Refuses a body without mass, or more liquid than mass. */
    public Body {
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(centre, "centre");
        Require.positive("mass", mass, "kg");
        Require.notNegative("moment of inertia", inertiaAboutCentre, "kg m2");
        Require.within("residual propellant", residualPropellant, 0, mass, "kg");
    }

    /**
     * A dry body with the inertia of a uniform thin-walled tube of its size: m (R2/2 + L2/12).
     *
     * @param outline its outside
     * @param mass    mass (kg), positive
     * @param centre  centre of mass
     * @return the body
     */
    public static Body uniform(Outline outline, double mass, MassCentre centre) {
        double inertia = mass * (outline.radius() * outline.radius() / 2
                + outline.length() * outline.length() / 12);
        return new Body(outline, mass, centre, inertia, 0);
    }

    /**
     * This body with another mass, its inertia about the centre scaled with the mass.
     *
     * @param newMass mass (kg), positive
     * @return the changed body
     */
    public Body withMass(double newMass) {
        double share = newMass / mass;
        return new Body(outline, newMass, centre, inertiaAboutCentre * share, residualPropellant * share);
    }

    /**
     * This body with another centre of mass.
     *
     * @param newCentre centre of mass
     * @return the changed body
     */
    public Body withCentre(MassCentre newCentre) {
        return new Body(outline, mass, newCentre, inertiaAboutCentre, residualPropellant);
    }
}
