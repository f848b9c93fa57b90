// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Arranged;
import bermwright.editor.edit.DropCorner;
import bermwright.editor.edit.GearSpot;
import bermwright.editor.edit.HatchAxis;
import bermwright.editor.edit.InsertCorner;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.MoveGear;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.PartOutline;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.ShiftCorner;
import bermwright.editor.edit.Turn;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the hand does on the map: pick, move, turn, shift corners, with snapping of hatches; told places, not pixels.
 *
 * <p>While the hand is down the plan is only tried; letting go makes it one step that can be undone.
 */
public final class MapHands {
    /** Hatches that face each other better than this snap into line (rad). */
    private static final double FACING = Math.toRadians(20);
    /** A turn this close to facing squarely snaps to it (rad). */
    private static final double TURN_SNAP = Math.toRadians(2.5);
    private static final double TURN_STEP_DEG = 0.5;

    private final Workbench bench;
    private final Snapping snapping = new Snapping();
    private final Drafting draft;
    private Optional<Grip> grip = Optional.empty();
    private Optional<SnapLine> snap = Optional.empty();
    private Optional<Nudging> nudging = Optional.empty();

    /**
     * Hands over a workbench.
     *
     * @param bench the workbench
     */
    public MapHands(Workbench bench) {
        this.bench = bench;
        this.draft = new Drafting(bench, snapping);
    }

    /** What a handle does. */
    public enum HandleKind {
        /** Turns the hull. */
        TURN,
        /** Shifts a corner. */
        CORNER,
        /** Makes a new corner in the middle of an edge. */
        NEW_CORNER,
        /** Moves a piece of gear. */
        GEAR
    }

    /**
     * A spot on the map that can be taken hold of.
     *
     * @param kind  what it does
     * @param place where it is
     * @param index corner's number (1), from 0
     */
    public record Handle(HandleKind kind, Point place, int index) {
    }

    /**
     * Two hatches in line.
     *
     * @param from one hatch
     * @param to   the other
     */
    public record SnapLine(Point from, Point to) {
    }

    /**
     * How the hand holds the map.
     *
     * @param metresPerPixel projected metres in one pixel (m), above 0
     * @param isFree         whether snapping is off
     */
    public record Feel(double metresPerPixel, boolean isFree) {
        private static final double REACH_PIXELS = 9;

        double reach() {
            return REACH_PIXELS * metresPerPixel;
        }
    }

    /** Steps made by keys, one after the other. */
    private record Nudging(Part part, Plan first, Plan last) {
    }

    private record Grip(Part part, Optional<Handle> handle, Point start, Plan before) {
    }

    /**
     * The handles of the picked part.
     *
     * @param metresPerPixel projected metres in one pixel (m), above 0
     * @return the handles, none where nothing is picked
     */
    public List<Handle> handles(double metresPerPixel) {
        List<Handle> handles = new ArrayList<>();
        bench.picked().filter(part -> part.isIn(bench.plan()) && bench.allPicked().size() == 1).ifPresent(part -> {
            Plan plan = bench.plan();
            if (part.kind() == Part.Kind.HULL) {
                Hull hull = plan.hull(part.id()).orElseThrow();
                handles.add(new Handle(HandleKind.TURN, hull.lyingAt(bench.metres(),
                        hull.length(), 0).moved(hull.layDownAzimuth(), 22 * metresPerPixel, 0), 0));
                List<GearSpot> gear = GearSpot.of(hull, bench.metres());
                for (int i = 0; i < gear.size(); i++) {
                    handles.add(new Handle(HandleKind.GEAR, gear.get(i).place(), i));
                }
            } else if (PartOutline.fewestCorners(part.kind()) >= 2) {
                List<Point> corners = PartOutline.corners(plan, part);
                boolean ring = PartOutline.fewestCorners(part.kind()) == 3;
                for (int i = 0; i < corners.size(); i++) {
                    handles.add(new Handle(HandleKind.CORNER, corners.get(i), i));
                    if (ring || i + 1 < corners.size()) {
                        Point next = corners.get((i + 1) % corners.size());
                        handles.add(new Handle(HandleKind.NEW_CORNER, new Point((corners.get(i).east() + next.east())
                                / 2, (corners.get(i).north() + next.north()) / 2), i + 1));
                    }
                }
            }
        });
        return handles;
    }

    /**
     * The part under a place; where several lie over each other, the one drawn last.
     *
     * @param place the place
     * @param feel  how the hand holds the map
     * @return the part, empty on bare ground
     */
    public Optional<Part> partAt(Point place, Feel feel) {
        return figureAt(place, feel).flatMap(MapFigure::part);
    }

    /**
     * The figure under a place; where several lie over each other, the one drawn last.
     *
     * @param place the place
     * @param feel  how the hand holds the map
     * @return the figure, empty on bare ground
     */
    public Optional<MapFigure> figureAt(Point place, Feel feel) {
        return bench.figures().stream()
                .filter(f -> f.part().isPresent() && f.distance(place) <= (f.isClosed() ? 0 : feel.reach()))
                .max(Comparator.comparing(MapFigure::look));
    }

    /**
     * The hand goes down.
     *
     * @param place where
     * @param feel  how the hand holds the map
     * @return true where it took hold of something; else the map itself is to be moved
     */
    public boolean press(Point place, Feel feel) {
        Optional<Handle> handle = handles(feel.metresPerPixel()).stream()
                .filter(h -> h.place().distance(place) <= feel.reach())
                .min(Comparator.comparingDouble(h -> h.place().distance(place)));
        if (handle.isPresent()) {
            grip = bench.picked().map(part -> new Grip(part, handle, place, bench.plan()));
            return true;
        }
        Optional<Part> body = bodyAt(place, feel);
        Optional<Part> part = body.or(() -> partAt(place, feel));
        if (body.filter(bench.allPicked()::contains).isEmpty()) {
            bench.pick(part);
        }
        grip = body.map(p -> new Grip(p, Optional.empty(), place, bench.plan()));
        return grip.isPresent();
    }

    /** The part whose own body is under a place: what a drag from there moves; zones around it are not its body. */
    private Optional<Part> bodyAt(Point place, Feel feel) {
        return bench.figures().stream().filter(f -> f.part().isPresent() && f.look().isBody()
                && f.distance(place) <= (f.isClosed() ? 0 : feel.reach())).max(Comparator.comparing(MapFigure::look))
                .flatMap(MapFigure::part);
    }

    /**
     * The hand moves while it is down.
     *
     * @param place where it is now
     * @param feel  how the hand holds the map
     */
    public void drag(Point place, Feel feel) {
        snap = Optional.empty();
        grip.ifPresent(held -> {
            PlanEdit edit = edit(held, place, feel);
            bench.tryOut(edit.words(), edit.applied(held.before));
        });
    }

    private PlanEdit edit(Grip held, Point place, Feel feel) {
        if (held.handle.isEmpty()) {
            if (bench.allPicked().size() > 1) {
                Move move = together(held, new Move(held.part, place.east() - held.start.east(),
                        place.north() - held.start.north()), feel);
                return Arranged.moved(bench.allPicked(), move.east(), move.north());
            }
            Move move = new Move(held.part, place.east() - held.start.east(), place.north() - held.start.north());
            return held.part.kind() == Part.Kind.HULL && !feel.isFree() ? snapped(held, move, feel) : move;
        }
        Handle handle = held.handle.get();
        return switch (handle.kind()) {
            case CORNER -> new ShiftCorner(held.part, handle.index(), place);
            case NEW_CORNER -> new InsertCorner(held.part, handle.index(), place);
            case TURN -> turned(held, place, feel);
            case GEAR -> new MoveGear(held.part.id(), GearSpot.of(held.before.hull(held.part.id()).orElseThrow(),
                    bench.metres()).get(handle.index()), place, bench.metres());
        };
    }

    private PlanEdit turned(Grip held, Point place, Feel feel) {
        Hull hull = held.before.hull(held.part.id()).orElseThrow();
        if (place.distance(hull.baseCentre()) < 1e-6) {
            return new Turn(hull.id(), hull.layDownAzimuth());
        }
        double degrees = Azimuth.from(hull.baseCentre(), place).degrees();
        Azimuth azimuth = Azimuth.ofDegrees(feel.isFree() ? degrees
                : Math.rint(degrees / TURN_STEP_DEG) * TURN_STEP_DEG);
        Turn turn = new Turn(hull.id(), azimuth);
        if (feel.isFree()) {
            return turn;
        }
        for (HatchPair pair : pairs(turn.applied(held.before), hull.id())) {
            double left = pair.fixed.turnToFace(pair.moved);
            if (Math.abs(left) < TURN_SNAP && pair.fixed.ahead(pair.moved.place()) > 0) {
                snap = Optional.of(new SnapLine(pair.fixed.place(), pair.moved.place()));
                return new Turn(hull.id(), azimuth.turned(left));
            }
        }
        Optional<Azimuth> square = snapping.way(held.before, hull.id(), azimuth);
        square.ifPresent(way -> snap = Optional.of(new SnapLine(hull.baseCentre(), hull.baseCentre().moved(way,
                2 * hull.length(), 0))));
        return square.map(way -> new Turn(hull.id(), way)).orElse(turn);
    }

    private PlanEdit snapped(Grip held, Move move, Feel feel) {
        double closest = feel.reach();
        Move best = move;
        for (HatchPair pair : pairs(move.applied(held.before), held.part.id())) {
            double aside = pair.fixed.aside(pair.moved.place());
            boolean faces = Math.abs(pair.fixed.turnToFace(pair.moved)) < FACING
                    && pair.fixed.ahead(pair.moved.place()) > 0;
            if (faces && Math.abs(aside) < closest) {
                closest = Math.abs(aside);
                Point onAxis = pair.moved.place().moved(pair.fixed.outward(), 0, -aside);
                best = new Move(held.part, move.east() + onAxis.east() - pair.moved.place().east(),
                        move.north() + onAxis.north() - pair.moved.place().north());
                snap = Optional.of(new SnapLine(pair.fixed.place(), onAxis));
            }
        }
        return snap.isPresent() ? best : inLine(held, move, feel, Set.of(held.part.id()));
    }

    /** Several things move as the hull does that the hand holds, which snaps to what stays. */
    private Move together(Grip held, Move move, Feel feel) {
        return held.part.kind() != Part.Kind.HULL || feel.isFree() ? move : inLine(held, move, feel, bench.allPicked()
                .stream().filter(p -> p.kind() == Part.Kind.HULL).map(Part::id).collect(Collectors.toSet()));
    }

    /** The base in line with the axis of a hull that stays, or on the grid. */
    private Move inLine(Grip held, Move move, Feel feel, Set<String> moving) {
        Point base = held.before.hull(held.part.id()).orElseThrow().baseCentre();
        Snapping.Snapped to = snapping.base(held.before, moving, new Point(base.east() + move.east(),
                base.north() + move.north()), feel);
        snap = to.guides().stream().findFirst();
        return new Move(held.part, to.place().east() - base.east(), to.place().north() - base.north());
    }

    private record HatchPair(HatchAxis fixed, HatchAxis moved) {
    }

    private static List<HatchPair> pairs(Plan plan, String moving) {
        List<HatchPair> pairs = new ArrayList<>();
        List<HatchAxis> mine = plan.hull(moving).map(MapHands::axes).orElse(List.of());
        for (Hull other : plan.hulls()) {
            if (!other.id().equals(moving)) {
                axes(other).forEach(fixed -> mine.forEach(moved -> pairs.add(new HatchPair(fixed, moved))));
            }
        }
        return pairs;
    }

    private static List<HatchAxis> axes(Hull hull) {
        return hull.hatches().stream().flatMap(hatch -> HatchAxis.of(hull, hatch).stream()).toList();
    }

    /**
     * Picks what is under a place beside what is picked already.
     *
     * @param place the place
     * @param feel  how the hand holds the map
     */
    public void pickAlso(Point place, Feel feel) {
        bodyAt(place, feel).or(() -> partAt(place, feel)).ifPresent(bench::pickAlso);
    }

    /**
     * Picks all parts whose body lies whole in a frame.
     *
     * @param one   one corner of the frame
     * @param other the corner across
     */
    public void pickWithin(Point one, Point other) {
        MapCamera.Box frame = MapFigure.around(List.of(one, other));
        bench.pickAll(bench.figures().stream().filter(f -> f.look().isBody() && frame.contains(f.box()))
                .flatMap(f -> f.part().stream()).distinct().toList());
    }

    /**
     * What is being drawn with the tool in the hand.
     *
     * @return the drafting
     */
    public Drafting draft() {
        return draft;
    }

    /**
     * What places snap to.
     *
     * @return the snapping
     */
    public Snapping snapping() {
        return snapping;
    }

    /**
     * Place, way and verdict of what the hand holds, as they are read at the pointer.
     *
     * @return the words; empty while it holds nothing
     */
    public Optional<String> readout() {
        return grip.filter(g -> bench.isTrying()).map(g -> {
            List<Point> corners = PartOutline.corners(bench.plan(), g.part);
            return Readout.between(g.part, g.before, bench.plan()) + (corners.isEmpty() ? ""
                    : "\n" + UnitWords.place(corners.get(0))) + "\n" + Verdict.of(bench, g.part);
        });
    }

    /** The hand lets go: what was tried becomes a step. */
    public void release() {
        grip = Optional.empty();
        snap = Optional.empty();
        bench.settle();
    }

    /** The hand lets go without wanting what was tried. */
    public void giveUp() {
        grip = Optional.empty();
        snap = Optional.empty();
        bench.giveUp();
    }

    /**
     * Takes the corner under a place out of the picked part.
     *
     * @param place the place
     * @param feel  how the hand holds the map
     * @return true where a corner was there
     */
    public boolean dropCorner(Point place, Feel feel) {
        Optional<Handle> corner = handles(feel.metresPerPixel()).stream()
                .filter(h -> h.kind() == HandleKind.CORNER && h.place().distance(place) <= feel.reach()).findFirst();
        corner.ifPresent(h -> bench.make(new DropCorner(bench.picked().orElseThrow(), h.index())));
        return corner.isPresent();
    }

    /**
     * Moves the picked part by a small way, as the arrow keys do.
     *
     * @param east  way east (m)
     * @param north way north (m)
     */
    public void nudge(double east, double north) {
        bench.picked().ifPresent(part -> step(part, bench.allPicked().size() > 1
                ? Arranged.moved(bench.allPicked(), east, north) : new Move(part, east, north)));
    }

    private void step(Part part, PlanEdit edit) {
        Plan before = bench.document().plan();
        if (bench.make(edit)) {
            boolean goesOn = nudging.filter(n -> n.part.equals(part) && n.last.equals(before)).isPresent();
            nudging = Optional.of(new Nudging(part, goesOn ? nudging.get().first : before, bench.document().plan()));
        }
    }

    /**
     * How far the keys have moved and turned the picked part, taken together since they began.
     *
     * @return such as {@code Hull A: 3.0 m east, 0.2 m south}; empty where the last step was not made by a key
     */
    public Optional<String> nudged() {
        return nudging.filter(n -> n.last.equals(bench.document().plan())).map(n -> Readout.between(n.part, n.first,
                n.last));
    }

    /**
     * Turns the picked hull by a small angle.
     *
     * @param turn clockwise turn (rad)
     */
    public void nudgeTurn(double turn) {
        if (bench.allPicked().size() > 1) {
            bench.picked().ifPresent(part -> step(part, Arranged.turned(bench.plan(), bench.allPicked(), turn)));
            return;
        }
        bench.picked().filter(part -> part.kind() == Part.Kind.HULL).flatMap(part -> bench.plan().hull(part.id()))
                .ifPresent(h -> step(Part.hull(h.id()), new Turn(h.id(), h.layDownAzimuth().turned(turn))));
    }

    /**
     * Whether the hand holds something.
     *
     * @return true from press to release
     */
    public boolean isHolding() {
        return grip.isPresent();
    }

    /**
     * The hatches that snapped into line just now.
     *
     * @return the line between them, empty where nothing snapped
     */
    public Optional<SnapLine> snapLine() {
        return snap;
    }
}
