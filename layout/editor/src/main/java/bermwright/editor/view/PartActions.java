// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.AlignHatches;
import bermwright.editor.edit.Arranged;
import bermwright.editor.edit.CopyPart;
import bermwright.editor.edit.NewPart;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.RemovePart;
import bermwright.editor.edit.Together;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.Workbench;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceDialog;

/** What menus and buttons do to parts of the plan. */
final class PartActions {
    /** Share of the map that the whole plan fills (1). */
    static final double WHOLE = 0.9;
    /** Share of the map that one part fills (1). */
    static final double PART = 0.6;
    private static final double COPY_SHARE = 0.12;

    private final Workbench bench;
    private final MapPane map;
    private final Notices notices;
    private List<Part> remembered = List.of();

    PartActions(Workbench bench, MapPane map, Notices notices) {
        this.notices = notices;
        this.bench = bench;
        this.map = map;
    }

    void add(Part.Kind kind) {
        MapCamera camera = map.camera();
        double size = Math.min(camera.width(), camera.height()) * camera.metresPerPixel() * 0.2;
        NewPart.of(bench.plan(), kind, camera.centre(), size).ifPresentOrElse(edit -> {
            if (bench.make(edit)) {
                bench.pick(Optional.of(edit.part()));
            }
        }, () -> bench.tell(kind == Part.Kind.TUNNEL
                ? "A tunnel joins hatches of two hulls; give two hulls a hatch first."
                : "A step of work needs a hull first."));
    }

    void remove() {
        List<Part> parts = bench.allPicked().stream().filter(part -> !part.kind().isSingle()).toList();
        if (parts.isEmpty()) {
            return;
        }
        String words = parts.size() == 1 ? parts.get(0).words() : parts.size() + " things";
        List<String> also = parts.stream().flatMap(p -> new RemovePart(p).alsoGone(bench.plan()).stream()).distinct()
                .toList();
        if (bench.make(new Together("Remove " + words, parts.stream().map(p -> (PlanEdit) new RemovePart(p)).toList()))
                && !also.isEmpty()) {
            notices.show("removed", words + (parts.size() == 1 ? " was" : " were") + " removed, and with it what cannot"
                    + " be without it: " + String.join(", ", also) + ".", List.of(new Notices.Choice("Undo",
                            bench::undo), new Notices.Choice("Keep it so", () -> { })));
        }
    }

    void copy() {
        double off = map.camera().height() * map.camera().metresPerPixel() * COPY_SHARE;
        put(bench.allPicked(), off, -off);
    }

    /** Remembers what is picked, to be put elsewhere. */
    void remember() {
        remembered = bench.allPicked();
    }

    /** Puts copies of what was remembered at the pointer, or beside it where the pointer is not on the map. */
    void paste() {
        List<Part> there = remembered.stream().filter(p -> p.isIn(bench.plan())).toList();
        Optional<MapCamera.Box> box = there.stream().flatMap(p -> bench.box(p).stream())
                .reduce(MapCamera.Box::with);
        double off = map.camera().height() * map.camera().metresPerPixel() * COPY_SHARE;
        Optional<Point> to = map.pointer();
        put(there, to.flatMap(t -> box.map(b -> t.east() - b.centre().east())).orElse(off),
                to.flatMap(t -> box.map(b -> t.north() - b.centre().north())).orElse(-off));
    }

    private void put(List<Part> parts, double east, double north) {
        List<PlanEdit> edits = new ArrayList<>();
        List<Part> copies = new ArrayList<>();
        Plan plan = bench.plan();
        for (Part part : parts.stream().filter(p -> !p.kind().isSingle()).toList()) {
            Part copy = new Part(part.kind(), NewPart.freeId(plan, part.kind()));
            CopyPart edit = new CopyPart(part, copy.id(), east, north);
            plan = edit.applied(plan);
            edits.add(edit);
            copies.add(copy);
        }
        if (!edits.isEmpty() && bench.make(edits.size() == 1 ? edits.get(0)
                : new Together("Copy " + edits.size() + " things", edits))) {
            bench.pickAll(copies);
        }
    }

    /** Ways to put several things in order. */
    enum Order {
        /** In one line. */
        ALIGN("In line with the first", 2),
        /** The same way. */
        PARALLEL("Hulls the same way as the first", 2),
        /** Evenly apart. */
        SPREAD("Evenly between the two farthest apart", 3),
        /** A quarter turn. */
        TURN("Turn all by 90\u00b0", 1);

        private final String words;
        private final int fewest;

        Order(String words, int fewest) {
            this.words = words;
            this.fewest = fewest;
        }

        String words() {
            return words;
        }
    }

    /** Puts what is picked in order. */
    void arrange(Order order) {
        List<Part> parts = bench.allPicked();
        if (parts.size() < order.fewest) {
            bench.tell("Pick " + order.fewest + " things or more first: Ctrl + click, or Shift + drag a frame.");
            return;
        }
        bench.make(switch (order) {
            case ALIGN -> Arranged.aligned(bench.plan(), parts);
            case PARALLEL -> Arranged.parallel(bench.plan(), parts);
            case SPREAD -> Arranged.spread(bench.plan(), parts);
            default -> Arranged.turned(bench.plan(), parts, Math.PI / 2);
        });
    }

    void align() {
        Plan plan = bench.plan();
        Optional<Hull> picked = bench.picked().filter(p -> p.kind() == Part.Kind.HULL).flatMap(p -> plan.hull(p.id()));
        List<AlignHatches> possible = new ArrayList<>();
        picked.ifPresent(mine -> mine.hatches().forEach(moved -> plan.hulls().stream()
                .filter(other -> !other.id().equals(mine.id()))
                .forEach(other -> other.hatches().forEach(fixed -> possible.add(new AlignHatches(
                        other.named(fixed.id()), mine.named(moved.id())))))));
        if (possible.isEmpty()) {
            bench.tell("Pick a hull with a hatch; another hull needs a hatch too.");
            return;
        }
        if (possible.size() == 1) {
            bench.make(possible.get(0));
            return;
        }
        ChoiceDialog<String> dialog = new ChoiceDialog<>(possible.get(0).words(),
                possible.stream().map(AlignHatches::words).toList());
        dialog.setTitle("Align hatches");
        dialog.setHeaderText("The picked hull is turned and moved so that its hatch squarely faces the other.");
        Dialogs.dress(dialog, map.getScene().getWindow());
        dialog.showAndWait().ifPresent(words -> possible.stream().filter(edit -> edit.words().equals(words))
                .findFirst().ifPresent(bench::make));
    }

    void flyTo(Part part) {
        bench.box(part).ifPresent(box -> map.flyTo(box, PART));
    }

    void flyTo(Point place) {
        MapCamera here = map.camera();
        MapCamera closer = here.metresPerPixel() > 0.35 ? new MapCamera(place, 0.25, here.width(), here.height())
                : here.at(place);
        map.fly(closer);
    }

    void fit() {
        bench.box().ifPresent(box -> map.flyTo(box, WHOLE));
    }
}
