// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.WallSolid;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The azimuths in which a station sees something else in one scene than in another. Rays of any other azimuth cross
 * the very same in both; of some that are named here they may do so too.
 */
public final class SkyChange {
    /** Equal parts of a turn that are told apart. */
    private static final int PARTS = 3600;
    private static final double PART = 2 * Math.PI / PARTS;
    /** Parts added on either side, so that no rounding counts. */
    private static final int BESIDE = 1;

    private final BitSet turn = new BitSet(PARTS);
    private final List<HullSight> sights;
    private final List<WallSolid> walls;
    private final Vec3 station;

    private SkyChange(Vec3 station, List<HullSight> sights, List<WallSolid> walls) {
        this.station = station;
        this.sights = sights;
        this.walls = walls;
    }

    static SkyChange everywhere() {
        SkyChange all = new SkyChange(new Vec3(0, 0, 0), List.of(), List.of());
        all.turn.set(0, PARTS);
        return all;
    }

    /** What hulls and walls change that only one of two scenes holds. */
    static SkyChange of(Vec3 station, List<HullSolid> hulls, List<WallSolid> walls) {
        SkyChange change = new SkyChange(station, hulls.stream().map(h -> new HullSight(h, station)).toList(),
                List.copyOf(walls));
        if (change.sights.stream().anyMatch(s -> s.inside)) {
            change.turn.set(0, PARTS);
        }
        return change;
    }

    /** Adds tiles of soil that differ. */
    void take(SoilField field, Optional<boolean[]> tiles) {
        if (tiles.isEmpty()) {
            return;
        }
        double side = field.spacing * (1 << Tiles.SHIFT);
        boolean[] changed = tiles.get();
        for (int i = 0; i < changed.length; i++) {
            if (changed[i]) {
                box(field.west + i % field.tiles.columns * side - station.x(),
                        field.south + i / field.tiles.columns * side - station.y(), side);
            }
        }
    }

    /** Adds the azimuths over a square, its south-west corner seen from the station. */
    private void box(double west, double south, double side) {
        double rim = 1e-6 * side;
        if (west - rim <= 0 && west + side + rim >= 0 && south - rim <= 0 && south + side + rim >= 0) {
            turn.set(0, PARTS);
            return;
        }
        double middle = Math.atan2(west + side / 2, south + side / 2);
        double least = 0;
        double greatest = 0;
        for (int corner = 0; corner < 4; corner++) {
            double off = Math.IEEEremainder(Math.atan2(west + (corner & 1) * side, south + (corner >> 1) * side)
                    - middle, 2 * Math.PI);
            least = Math.min(least, off);
            greatest = Math.max(greatest, off);
        }
        int first = (int) Math.floor((middle + least) / PART) - BESIDE;
        int last = (int) Math.floor((middle + greatest) / PART) + BESIDE;
        for (int part = first; part <= last; part++) {
            turn.set(Math.floorMod(part, PARTS));
        }
    }

    /**
     * Whether rays of an azimuth may cross something else.
     *
     * @param azimuth azimuth (rad)
     * @return false where they cross the very same
     */
    public boolean reaches(double azimuth) {
        if (turn.get(Math.floorMod((int) Math.floor(azimuth / PART), PARTS))) {
            return true;
        }
        Azimuth to = new Azimuth(azimuth);
        return sights.stream().anyMatch(s -> s.isAhead(to.east(), to.north()))
                || walls.stream().anyMatch(w -> isMet(w, to.east(), to.north()));
    }

    /** Whether the upright plane of an azimuth meets a wall, or nearly so. */
    private boolean isMet(WallSolid wall, double east, double north) {
        double fromEast = wall.from().east() - station.x();
        double fromNorth = wall.from().north() - station.y();
        double toEast = wall.to().east() - station.x();
        double toNorth = wall.to().north() - station.y();
        double one = east * fromNorth - north * fromEast;
        double other = east * toNorth - north * toEast;
        double rim = 1e-6 * (1 + Math.abs(one) + Math.abs(other));
        boolean isBeside = one > rim && other > rim || one < -rim && other < -rim;
        return !isBeside && Math.max(east * fromEast + north * fromNorth, east * toEast + north * toNorth) > -rim;
    }

    /**
     * How much of a turn it reaches by soil alone, to tell a small change from a large one.
     *
     * @return share of the turn (1), 0 to 1
     */
    public double share() {
        return (double) turn.cardinality() / PARTS;
    }

    /**
     * Whether nothing differs at all.
     *
     * @return true where rays of every azimuth cross the very same
     */
    public boolean isNone() {
        return turn.isEmpty() && sights.isEmpty() && walls.isEmpty();
    }
}
