// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.foundation.Point;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.LiveSite;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the outlines of a site into what the map draws; outlines that stayed the same keep their figures. */
public final class MapFigures {
    private final Map<Shape, List<MapFigure>> known;
    private final List<MapFigure> figures;

    private MapFigures(LiveSite site, Map<Shape, List<MapFigure>> before) {
        this.known = new IdentityHashMap<>();
        List<MapFigure> all = new ArrayList<>();
        for (Shape shape : site.shapes()) {
            List<MapFigure> drawn = before.containsKey(shape) ? before.get(shape) : drawn(site.plan(), shape);
            known.put(shape, drawn);
            all.addAll(drawn);
        }
        for (Hull hull : site.plan().hulls()) {
            inside(all, site, hull);
        }
        all.sort(Comparator.comparing(MapFigure::look));
        this.figures = List.copyOf(all);
    }

    /**
     * The figures of a site.
     *
     * @param site the outlines
     * @return the figures
     */
    public static MapFigures of(LiveSite site) {
        return new MapFigures(site, Map.of());
    }

    /**
     * The figures of a changed site.
     *
     * @param changed the outlines of the changed site
     * @return the figures
     */
    public MapFigures with(LiveSite changed) {
        return new MapFigures(changed, known);
    }

    /**
     * The figures in the order they are drawn.
     *
     * @return the figures
     */
    public List<MapFigure> figures() {
        return figures;
    }

    /**
     * The ways of the haulers.
     *
     * @param assessment the assessment that found them
     * @return one figure for each haul
     */
    public static List<MapFigure> hauls(Assessment assessment) {
        return assessment.earthworks().map(e -> e.hauls().stream().filter(h -> h.way().size() > 1)
                .map(h -> MapFigure.line(FigureLook.HAUL_WAY, new Part(Part.Kind.BORROW_GROUND, h.from()), "",
                        h.way())).toList()).orElse(List.of());
    }

    /**
     * The ways of people outside to the nearest storm shelter; one that several share is drawn once.
     *
     * @param assessment the assessment that found them
     * @return one figure for each way
     */
    public static List<MapFigure> footWays(Assessment assessment) {
        Map<List<Point>, MapFigure> shared = new LinkedHashMap<>();
        assessment.waysOut().shelters().stream().filter(w -> w.way().size() > 1)
                .forEach(w -> Part.bySubject(assessment.plan(), w.from()).ifPresent(part -> shared.putIfAbsent(w.way(),
                        MapFigure.line(FigureLook.FOOT_WAY, part, "", w.way()))));
        return List.copyOf(shared.values());
    }

    private static List<MapFigure> drawn(Plan plan, Shape shape) {
        Optional<Part> part = part(shape);
        if (part.isEmpty()) {
            return List.of();
        }
        List<MapFigure> drawn = new ArrayList<>();
        FigureLook look = FigureLook.of(shape);
        drawn.add(MapFigure.area(look, part.get(), label(look, shape), shape.outline().corners()));
        Point centre = shape.outline().centre();
        if (shape.kind() == ShapeKind.ANCHOR) {
            drawn.add(MapFigure.mark(anchorLook(shape), part.get(), "", centre));
        } else if (shape.kind() == ShapeKind.POLE_FOOT) {
            drawn.add(MapFigure.mark(FigureLook.POLE_MARK, part.get(), "", centre));
        }
        return List.copyOf(drawn);
    }

    private static String label(FigureLook look, Shape shape) {
        return switch (look) {
            case LYING, BORROW, STOCKPILE, PREPARATION, PAD, KEEP_OUT, TUNNEL -> shape.subject();
            case PASS_THROUGH -> shape.part();
            case CORRIDOR -> shape.part().isEmpty() || shape.part().endsWith(" 1") ? shape.subject() : "";
            default -> "";
        };
    }

    private static Optional<Part> part(Shape shape) {
        Part.Kind kind = switch (shape.kind()) {
            case KEEP_OUT -> Part.Kind.KEEP_OUT;
            case CORRIDOR -> Part.Kind.CORRIDOR;
            case PAD, PAD_STAND_OFF -> Part.Kind.LANDING_PAD;
            case PREPARATION -> Part.Kind.PREPARATION;
            case BORROW -> Part.Kind.BORROW_GROUND;
            case STOCKPILE -> Part.Kind.STOCKPILE;
            case WALL -> Part.Kind.WALL;
            case TUNNEL -> Part.Kind.TUNNEL;
            default -> Part.Kind.HULL;
        };
        return Optional.of(new Part(kind, shape.subject()));
    }

    private static FigureLook anchorLook(Shape shape) {
        return shape.anchor().flatMap(a -> Arrays.stream(FigureLook.values())
                .filter(l -> l.name().equals("ANCHOR_" + a.kind().name())).findFirst()).orElse(FigureLook.ANCHOR_OTHER);
    }

    private static void inside(List<MapFigure> all, LiveSite site, Hull hull) {
        Part part = Part.hull(hull.id());
        if (hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
            hull.stations().forEach(s -> all.add(MapFigure.mark(FigureLook.STATION, part, s.id(),
                    hull.lyingAt(site.metres(), s.along(), s.across()))));
        }
        hull.hatches().forEach(h -> site.hatch(HatchName.of(hull, h).toString())
                .ifPresent(place -> all.add(MapFigure.mark(FigureLook.HATCH, part, h.id(), place))));
    }
}
