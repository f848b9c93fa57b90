// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.gear.GearPlaces;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of lowering gear that can be moved by itself, and where it stands on the ground.
 *
 * @param piece what it is
 * @param set   number of its set of stays, from 0; 0 for all else
 * @param place where it stands
 */
public record GearSpot(Piece piece, int set, Point place) {
    /** Pieces of gear. */
    public enum Piece {
        /** Winches of the lowering lines with their anchors. */
        WINCH("winches"),
        /** Poles. */
        POLE("poles"),
        /** Anchors of a set of stays. */
        STAY("stays"),
        /** The winch of the pull-over line with its anchor. */
        PULL_OVER("pull-over winch");

        private final String word;

        Piece(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /**
     * The gear of a hull.
     *
     * @param hull   the hull
     * @param metres true metres
     * @return each piece; none where it is not lowered by lines
     */
    public static List<GearSpot> of(Hull hull, TrueMetres metres) {
        List<GearSpot> spots = new ArrayList<>();
        if (hull.arrival() != Hull.Arrival.LOWERED
                || hull.lowering().filter(g -> g.means() == LoweringGear.Means.LINES).isEmpty()) {
            return spots;
        }
        GearPlaces places = GearPlaces.of(hull);
        places.lines().forEach(l -> spots.add(new GearSpot(Piece.WINCH, 0, hull.lyingAt(metres, l.winch().ahead(),
                l.winch().left()))));
        places.poles().forEach(p -> spots.add(new GearSpot(Piece.POLE, 0, hull.lyingAt(metres, p.foot().ahead(),
                p.foot().left()))));
        places.stays().forEach(s -> spots.add(new GearSpot(Piece.STAY, s.set(), hull.lyingAt(metres,
                s.anchor().ahead(), s.anchor().left()))));
        places.pullOver().ifPresent(p -> spots.add(new GearSpot(Piece.PULL_OVER, 0, hull.lyingAt(metres,
                p.winch().ahead(), p.winch().left()))));
        return spots;
    }
}
