// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.site.plan.WorkStep;
import java.util.List;
import java.util.Optional;

/**
 * Names one thing of a plan, so that it can be picked, shown in a form, moved or taken out.
 *
 * @param kind what it is
 * @param id   its id; empty for the things a plan holds once
 */
public record Part(Kind kind, String id) {
    /** What a plan holds. */
    public enum Kind {
        /** A lander. */
        HULL("hulls", "Hull"),
        /** An area nothing may touch. */
        KEEP_OUT("keep_outs", "Keep-out"),
        /** A way kept free. */
        CORRIDOR("corridors", "Corridor"),
        /** A landing pad. */
        LANDING_PAD("landing_pads", "Landing pad"),
        /** Ground shaped before the work. */
        PREPARATION("preparations", "Preparation"),
        /** Where soil is taken. */
        BORROW_GROUND("borrow_grounds", "Borrow ground"),
        /** Where soil waits. */
        STOCKPILE("stockpiles", "Stockpile"),
        /** A wall that holds soil back. */
        WALL("walls", "Wall"),
        /** A tunnel between hatches. */
        TUNNEL("tunnels", "Tunnel"),
        /** Machines of one kind. */
        MACHINE("machines", "Machine"),
        /** A step of the work. */
        WORK_STEP("order_of_work", "Step"),
        /** The plan itself. */
        PLAN("", "Plan"),
        /** The ground and its soil. */
        GROUND("ground", "Ground and soil"),
        /** Stay, sun and limits. */
        EXPOSURE("exposure", "Stay and limits"),
        /** Rules of the plan. */
        RULES("rules", "Rules");

        private final String key;
        private final String word;

        Kind(String key, String word) {
            this.key = key;
            this.word = word;
        }

        /**
         * The key of a plan file under which these stand.
         *
         * @return the key; nothing for the plan itself
         */
        public String key() {
            return key;
        }

        /**
         * What people call one.
         *
         * @return the words, the first letter large
         */
        public String word() {
            return word;
        }

        /**
         * Whether a plan holds this once, without an id.
         *
         * @return true for the plan itself, ground, exposure and rules
         */
        public boolean isSingle() {
            return this == PLAN || this == GROUND || this == EXPOSURE || this == RULES;
        }
    }

    /**
     * A hull.
     *
     * @param id its id
     * @return the part
     */
    public static Part hull(String id) {
        return new Part(Kind.HULL, id);
    }

    /**
     * What people call this part, such as {@code Hull A}.
     *
     * @return the words
     */
    public String words() {
        return id.isEmpty() ? kind.word() : kind.word() + " " + id;
    }

    /**
     * The ids of all parts of a kind, in the plan's order.
     *
     * @param plan the plan
     * @param kind the kind
     * @return the ids; none for what a plan holds once
     */
    public static List<String> ids(Plan plan, Kind kind) {
        return switch (kind) {
            case HULL -> plan.hulls().stream().map(Hull::id).toList();
            case KEEP_OUT -> plan.keepOuts().stream().map(KeepOut::id).toList();
            case CORRIDOR -> plan.corridors().stream().map(Corridor::id).toList();
            case LANDING_PAD -> plan.landingPads().stream().map(LandingPad::id).toList();
            case PREPARATION -> plan.preparations().stream().map(Preparation::id).toList();
            case BORROW_GROUND -> plan.borrowGrounds().stream().map(BorrowGround::id).toList();
            case STOCKPILE -> plan.stockpiles().stream().map(Stockpile::id).toList();
            case WALL -> plan.walls().stream().map(Wall::id).toList();
            case TUNNEL -> plan.tunnels().stream().map(Tunnel::id).toList();
            case MACHINE -> plan.machines().stream().map(Machine::id).toList();
            case WORK_STEP -> plan.orderOfWork().stream().map(WorkStep::id).toList();
            case PLAN, GROUND, EXPOSURE, RULES -> List.of();
        };
    }

    /**
     * Where this part stands in its list.
     *
     * @param plan the plan
     * @return the index (1) from 0; -1 where the plan holds it once or not at all
     */
    public int index(Plan plan) {
        return ids(plan, kind).indexOf(id);
    }

    /**
     * Whether a plan holds this part.
     *
     * @param plan the plan
     * @return true where it does
     */
    public boolean isIn(Plan plan) {
        return kind.isSingle() || index(plan) >= 0;
    }

    /**
     * The path of this part in a plan file, such as {@code hulls[0]}.
     *
     * @param plan the plan
     * @return the path; nothing for the plan itself
     */
    public String path(Plan plan) {
        return kind.isSingle() ? kind.key() : kind.key() + "[" + index(plan) + "]";
    }

    /**
     * The part a finding is about.
     *
     * @param plan    the plan
     * @param subject the finding's subject, such as {@code A} or {@code A/bunks}
     * @return the part, empty where no part has that id
     */
    public static Optional<Part> bySubject(Plan plan, String subject) {
        for (String name : List.of(subject, subject.split("/", 2)[0])) {
            for (Kind kind : Kind.values()) {
                if (ids(plan, kind).contains(name)) {
                    return Optional.of(new Part(kind, name));
                }
            }
        }
        return Optional.empty();
    }
}
