// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.AlignHatches;
import bermwright.editor.edit.CopyPart;
import bermwright.editor.edit.NewPart;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.RemovePart;
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
        bench.picked().filter(part -> !part.kind().isSingle()).ifPresent(part -> {
            RemovePart edit = new RemovePart(part);
            List<String> also = edit.alsoGone(bench.plan());
            if (bench.make(edit) && !also.isEmpty()) {
                notices.show("removed", part.words() + " was removed, and with it what cannot be without it: "
                        + String.join(", ", also) + ".", List.of(new Notices.Choice("Undo", bench::undo),
                        new Notices.Choice("Keep it so", () -> { })));
            }
        });
    }

    void copy() {
        bench.picked().filter(part -> !part.kind().isSingle()).ifPresent(part -> {
            String id = NewPart.freeId(bench.plan(), part.kind());
            double off = map.camera().height() * map.camera().metresPerPixel() * COPY_SHARE;
            if (bench.make(new CopyPart(part, id, off, -off))) {
                bench.pick(Optional.of(new Part(part.kind(), id)));
            }
        });
    }

    void align() {
        Plan plan = bench.plan();
        Optional<Hull> picked = bench.picked().filter(p -> p.kind() == Part.Kind.HULL).flatMap(p -> plan.hull(p.id()));
        List<AlignHatches> possible = new ArrayList<>();
        picked.ifPresent(mine -> mine.hatches().forEach(moved -> plan.hulls().stream()
                .filter(other -> !other.id().equals(mine.id()))
                .forEach(other -> other.hatches().forEach(fixed -> possible.add(new AlignHatches(
                        other.id() + "/" + fixed.id(), mine.id() + "/" + moved.id()))))));
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
