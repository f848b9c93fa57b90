// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.site.assessment.HullAtTilt;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.Hull;
import java.util.Comparator;
import java.util.Optional;

/** The tilt a person looks at: body, lines, poles and forces of one hull on its way down. */
public final class TiltModel {
    private final Workbench bench;
    private final Signal changed = new Signal();
    private double tiltDeg = 45;
    private boolean isOnMap;

    /**
     * The tilt of a workbench.
     *
     * @param bench the workbench
     */
    public TiltModel(Workbench bench) {
        this.bench = bench;
    }

    /**
     * Raised when another tilt is looked at.
     *
     * @return the signal
     */
    public Signal changed() {
        return changed;
    }

    /**
     * Looks at another tilt.
     *
     * @param degrees tilt in degrees, 0 standing
     */
    public void tilt(double degrees) {
        tiltDeg = degrees;
        changed.raise();
    }

    /**
     * The tilt looked at.
     *
     * @return tilt in degrees, at most the one at rest
     */
    public double tiltDeg() {
        return Math.min(tiltDeg, restDeg());
    }

    /**
     * The tilt at which the hull lies.
     *
     * @return tilt in degrees; 90 where lowering is not known
     */
    public double restDeg() {
        return result().map(r -> Math.toDegrees(r.restTilt())).orElse(90.0);
    }

    /**
     * Whether the map shows the hull at this tilt too.
     *
     * @param shown whether it does
     */
    public void onMap(boolean shown) {
        isOnMap = shown;
        changed.raise();
    }

    /**
     * The hull looked at: the one picked, else the first that is lowered.
     *
     * @return the hull, empty where there is none
     */
    public Optional<Hull> hull() {
        return bench.picked().filter(p -> p.kind() == Part.Kind.HULL).flatMap(p -> bench.plan().hull(p.id()))
                .or(() -> bench.plan().hulls().stream().filter(h -> h.arrival() == Hull.Arrival.LOWERED).findFirst());
    }

    /**
     * How that hull comes to lie.
     *
     * @return the answer, empty where there is none yet
     */
    public Optional<Laydown> laydown() {
        return hull().flatMap(h -> bench.answers().laydown(h.id()));
    }

    /**
     * Its lowering by lines.
     *
     * @return the answer, empty where it is not lowered by lines or nothing can be worked out
     */
    public Optional<LoweringResult> result() {
        return laydown().flatMap(Laydown::lowering);
    }

    /**
     * The forces nearest to the tilt looked at.
     *
     * @return the forces, empty where none are known
     */
    public Optional<TiltState> state() {
        double tilt = Math.toRadians(tiltDeg());
        return result().flatMap(r -> r.tilts().stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.tilt() - tilt))));
    }

    /**
     * The hull at the tilt looked at.
     *
     * @return the picture, empty where it is not laid down or its ground is not known
     */
    public Optional<HullAtTilt> picture() {
        return hull().filter(h -> h.arrival() == Hull.Arrival.LOWERED).flatMap(h -> laydown()
                .flatMap(Laydown::plane).map(plane -> HullAtTilt.of(h, plane, Math.toRadians(tiltDeg()))));
    }

    /**
     * The hull at the tilt looked at, where the map is to show it.
     *
     * @return the picture
     */
    public Optional<HullAtTilt> mapPicture() {
        return isOnMap ? picture() : Optional.empty();
    }
}
