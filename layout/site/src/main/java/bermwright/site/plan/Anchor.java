// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.lowering.rig.Anchor.Ballast;
import bermwright.lowering.rig.Anchor.Block;
import bermwright.lowering.rig.Anchor.Dug;
import bermwright.lowering.rig.Anchor.Footing;
import bermwright.lowering.rig.Anchor.Pile;
import bermwright.lowering.rig.Anchor.Plate;
import bermwright.lowering.rig.Anchor.Screw;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * An anchor in the ground as the plan states it; which figures it needs depends on its kind.
 *
 * <p>What reckons with it reads {@link #built()}, a sealed type, or {@link #footing()}: a new kind is a constant
 * here, a
 * record there, and its keys.
 *
 * @param kind     its kind
 * @param width    plate, block: width across the pull (m)
 * @param height   plate, block: height (m)
 * @param length   block: length along the pull (m)
 * @param depth    plate, block: depth to its lower edge (m); screw, pile: depth of its tip (m)
 * @param mass     ballast: mass (kg)
 * @param count    screw, pile: how many act together (1)
 * @param diameter screw: helix diameter (m); pile: shaft diameter (m)
 * @param annotations note, own keys and the keys given
 */
public record Anchor(Kind kind, OptionalDouble width, OptionalDouble height, OptionalDouble length,
        OptionalDouble depth, OptionalDouble mass, OptionalInt count, OptionalDouble diameter,
        Annotations annotations) {
    /** Kinds of anchor; each says what it is built of, and the mechanics are those of what is built. */
    public enum Kind {
        /** A buried plate. */
        PLATE(a -> all(a.width, a.height, a.depth) && at(a.depth) >= at(a.height)
                ? Optional.of(new Plate(at(a.width), at(a.height), at(a.depth))) : Optional.empty()),
        /** A buried block. */
        BLOCK(a -> all(a.width, a.height, a.depth) && at(a.depth) >= at(a.height)
                ? Optional.of(new Block(at(a.width), at(a.height), a.length.orElse(at(a.height)), at(a.depth)))
                : Optional.empty()),
        /** A weight on the ground. */
        BALLAST(a -> all(a.mass) ? Optional.of(new Ballast(at(a.mass))) : Optional.empty()),
        /** Screw piles. */
        SCREW(a -> all(a.diameter, a.depth) && a.count.orElse(1) >= 1
                ? Optional.of(new Screw(a.count.orElse(1), at(a.diameter), at(a.depth))) : Optional.empty()),
        /** Driven piles. */
        PILE(a -> all(a.diameter, a.depth) && a.count.orElse(1) >= 1
                ? Optional.of(new Pile(a.count.orElse(1), at(a.diameter), at(a.depth))) : Optional.empty());

        private final Function<Anchor, Optional<? extends bermwright.lowering.rig.Anchor>> built;

        Kind(Function<Anchor, Optional<? extends bermwright.lowering.rig.Anchor>> built) {
            this.built = built;
        }

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        private static double at(OptionalDouble size) {
            return size.orElse(Double.NaN);
        }

        private static boolean all(OptionalDouble... sizes) {
            return Arrays.stream(sizes).allMatch(s -> at(s) > 0);
        }
    }

    /**
     * The anchor as it is built: a sealed type with its capacity, its ground and its mass.
     *
     * @return empty where the plan leaves out a size that its kind needs
     */
    public Optional<bermwright.lowering.rig.Anchor> built() {
        return kind.built.apply(this).map(b -> b);
    }

    /**
     * The ground it takes.
     *
     * @return that of what is built; where a size is left out what is known of it, one metre for what is not
     */
    public Footing footing() {
        double deep = depth.orElse(0);
        return built().map(bermwright.lowering.rig.Anchor::footing).orElseGet(() -> new Footing(length.orElse(1),
                width.orElse(1), deep, deep > 0 && width.isPresent() ? Dug.HOLE : Dug.NOTHING, height.orElse(0),
                length.orElse(0)));
    }
}
