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
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * An anchor in the ground as the plan states it; which figures it needs depends on its kind.
 *
 * <p>What reckons with it reads {@link #built()}, a sealed type, or {@link #footing()}: a new kind is a constant
 * here and a record there, and a key of the plan where it has a size that no other kind has.
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
    /** Sizes of anchors. */
    public enum Size {
        /** Width across the pull. */
        WIDTH("width_m"),
        /** Height. */
        HEIGHT("height_m"),
        /** Length along the pull. */
        LENGTH("length_m"),
        /** Depth to the lower edge or the tip. */
        DEPTH("depth_m"),
        /** Mass. */
        MASS("mass_t"),
        /** How many act together. */
        COUNT("count"),
        /** Diameter of helix or shaft. */
        DIAMETER("diameter_m");

        private final String key;

        Size(String key) {
            this.key = key;
        }

        /**
         * Its key in plans.
         *
         * @return such as {@code width_m}
         */
        public String key() {
            return key;
        }
    }

    /**
     * Kinds of anchor; each says what sizes it has, by which of them it is made to hold more and
     * what it is built of; the mechanics are those of what is built.
     */
    public enum Kind {
        /** A buried plate. */
        PLATE(List.of(Size.WIDTH, Size.HEIGHT, Size.DEPTH), List.of(Size.WIDTH, Size.DEPTH),
                a -> all(a.width, a.height, a.depth) && at(a.depth) >= at(a.height)
                ? Optional.of(new Plate(at(a.width), at(a.height), at(a.depth))) : Optional.empty()),
        /** A buried block. */
        BLOCK(List.of(Size.WIDTH, Size.HEIGHT, Size.LENGTH, Size.DEPTH), List.of(Size.WIDTH, Size.DEPTH),
                a -> all(a.width, a.height, a.depth) && at(a.depth) >= at(a.height)
                ? Optional.of(new Block(at(a.width), at(a.height), a.length.orElse(at(a.height)), at(a.depth)))
                : Optional.empty()),
        /** A weight on the ground. */
        BALLAST(List.of(Size.MASS), List.of(Size.MASS),
                a -> all(a.mass) ? Optional.of(new Ballast(at(a.mass))) : Optional.empty()),
        /** Screw piles. */
        SCREW(List.of(Size.COUNT, Size.DIAMETER, Size.DEPTH), List.of(Size.COUNT, Size.DEPTH),
                a -> all(a.diameter, a.depth) && a.count.orElse(1) >= 1
                ? Optional.of(new Screw(a.count.orElse(1), at(a.diameter), at(a.depth))) : Optional.empty()),
        /** Driven piles. */
        PILE(List.of(Size.COUNT, Size.DIAMETER, Size.DEPTH), List.of(Size.COUNT, Size.DEPTH),
                a -> all(a.diameter, a.depth) && a.count.orElse(1) >= 1
                ? Optional.of(new Pile(a.count.orElse(1), at(a.diameter), at(a.depth))) : Optional.empty());

        private final List<Size> sizes;
        private final List<Size> holdsMoreBy;
        private final Function<Anchor, Optional<? extends bermwright.lowering.rig.Anchor>> built;

        Kind(List<Size> sizes, List<Size> holdsMoreBy,
                Function<Anchor, Optional<? extends bermwright.lowering.rig.Anchor>> built) {
            this.sizes = sizes;
            this.holdsMoreBy = holdsMoreBy;
            this.built = built;
        }

        /**
         * The sizes that anchors of this kind have.
         *
         * @return the sizes, all others mean nothing for it
         */
        public List<Size> sizes() {
            return sizes;
        }

        /**
         * The sizes by which it is made to hold more.
         *
         * @return the sizes, what is changed first at the head
         */
        public List<Size> holdsMoreBy() {
            return holdsMoreBy;
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
