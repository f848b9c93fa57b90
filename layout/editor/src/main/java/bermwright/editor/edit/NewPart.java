// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Plan;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a new part of each kind looks like before anyone has given it figures of its own. */
public final class NewPart {
    private static final double PAD_RADIUS = 15;
    /** A shorter way tells no direction (m). */
    private static final double LEAST_WAY = 0.5;

    private NewPart() {
    }

    /**
     * An id that no part of a kind has yet.
     *
     * @param plan the plan
     * @param kind the kind
     * @return the next letter for hulls, else a word and a number
     */
    public static String freeId(Plan plan, Part.Kind kind) {
        List<String> taken = Part.ids(plan, kind);
        if (kind == Part.Kind.HULL) {
            for (char letter = 'A'; letter <= 'Z'; letter++) {
                if (!taken.contains(String.valueOf(letter))) {
                    return String.valueOf(letter);
                }
            }
        }
        String word = kind == Part.Kind.WORK_STEP ? "" : kind.word().toLowerCase(Locale.ROOT).replace(' ', '-') + "-";
        for (int number = 1;; number++) {
            if (!taken.contains(word + number)) {
                return word + number;
            }
        }
    }

    /**
     * Adds a part of a kind.
     *
     * @param plan the plan
     * @param kind the kind, one a plan can hold several of
     * @param at   where it goes
     * @param size about how large an area is made (m), above 0
     * @return the edit; empty for a tunnel where there are not two hatches, and a step where there is no hull
     */
    public static Optional<AddItem> of(Plan plan, Part.Kind kind, Point at, double size) {
        String id = freeId(plan, kind);
        String name = "\"id\":\"" + id + "\"";
        return body(plan, kind, at, size).map(body -> new AddItem(new Part(kind, id), "{" + name + "," + body + "}"));
    }

    /**
     * Adds a part that was drawn.
     *
     * @param plan    the plan
     * @param kind    a kind that has a place
     * @param corners a hull's base and a place the way it is laid down, a pad's centre and a place on its edge, or the
     *                corners of an area or line
     * @return the edit; empty for a kind without a place
     */
    public static Optional<AddItem> drawn(Plan plan, Part.Kind kind, List<Point> corners) {
        Point at = corners.get(0);
        String ring = list(corners.toArray(new Point[0]));
        Optional<String> body = switch (kind) {
            case HULL -> Optional.of(hull(at).replace("\"lay_down_azimuth_deg\":90",
                    "\"lay_down_azimuth_deg\":" + number(way(corners).degrees())));
            case LANDING_PAD -> Optional.of("\"centre\":" + place(at) + ",\"radius_m\":" + number(corners.size() < 2
                    ? PAD_RADIUS : Math.max(1, at.distance(corners.get(1)))));
            case KEEP_OUT, STOCKPILE -> Optional.of("\"area\":" + ring);
            case PREPARATION -> Optional.of("\"kind\":\"bench\",\"area\":" + ring);
            case BORROW_GROUND -> Optional.of("\"area\":" + ring + ",\"greatest_depth_m\":0.8");
            case CORRIDOR -> Optional.of("\"width_m\":6,\"line\":" + ring);
            case WALL -> Optional.of("\"line\":" + ring + ",\"height_m\":4,\"thickness_m\":1");
            default -> Optional.empty();
        };
        String id = freeId(plan, kind);
        return body.map(b -> new AddItem(new Part(kind, id), "{\"id\":\"" + id + "\"," + b + "}"));
    }

    /**
     * The way a hull is laid down that was drawn.
     *
     * @param corners its base and, where there is one, a place in that direction
     * @return the azimuth to a tenth of a degree; east where none was drawn
     */
    public static Azimuth way(List<Point> corners) {
        return corners.size() < 2 || corners.get(0).distance(corners.get(1)) < LEAST_WAY ? Azimuth.ofDegrees(90)
                : Azimuth.ofDegrees(Math.rint(Azimuth.from(corners.get(0), corners.get(1)).degrees() * 10) / 10);
    }

    private static Optional<String> body(Plan plan, Part.Kind kind, Point at, double size) {
        return switch (kind) {
            case HULL -> Optional.of(hull(at));
            case KEEP_OUT -> Optional.of("\"area\":" + square(at, size));
            case CORRIDOR -> Optional.of("\"width_m\":6,\"line\":" + line(at, size));
            case LANDING_PAD -> Optional.of("\"centre\":" + place(at) + ",\"radius_m\":15");
            case PREPARATION -> Optional.of("\"kind\":\"bench\",\"area\":" + square(at, size));
            case BORROW_GROUND -> Optional.of("\"area\":" + square(at, 2 * size) + ",\"greatest_depth_m\":0.8");
            case STOCKPILE -> Optional.of("\"area\":" + square(at, size));
            case WALL -> Optional.of("\"line\":" + line(at, size / 2) + ",\"height_m\":4,\"thickness_m\":1");
            case TUNNEL -> tunnel(plan);
            case MACHINE -> Optional.of("\"kind\":\"scoop hauler\",\"load_t\":2,\"speed_m_s\":0.6");
            case WORK_STEP -> plan.hulls().stream().findFirst()
                    .map(h -> "\"step\":\"lower\",\"of\":\"" + h.id() + "\"");
            case PLAN, GROUND, EXPOSURE, RULES -> Optional.empty();
        };
    }

    private static String hull(Point at) {
        return "\"length_m\":38,\"diameter_m\":7.4,\"mass_t\":74,\"centre_of_mass_from_base_m\":20,"
                + "\"skin\":[{\"material\":\"steel\",\"areal_density_g_cm2\":3.2}],"
                + "\"shell\":{\"thickness_mm\":4,\"modulus_GPa\":200,\"yield_MPa\":350},\"inner_pressure_kPa\":70,"
                + "\"base_centre\":" + place(at)
                + ",\"lay_down_azimuth_deg\":90,\"cover\":{\"thickness_m\":2.5}";
    }

    private static Optional<String> tunnel(Plan plan) {
        List<String> hatches = plan.hulls().stream()
                .flatMap(h -> h.hatches().stream().map(x -> HatchName.of(h, x).toString())).toList();
        return hatches.stream().skip(1)
                .filter(to -> !HatchName.of(to).hull().equals(HatchName.of(hatches.get(0)).hull())).findFirst()
                .map(to -> "\"from\":\"" + hatches.get(0) + "\",\"to\":\"" + to + "\",\"diameter_m\":2.4");
    }

    private static String place(Point at) {
        return "{\"east_m\":" + number(at.east()) + ",\"north_m\":" + number(at.north()) + "}";
    }

    private static String square(Point at, double size) {
        double half = size / 2;
        return list(new Point(at.east() - half, at.north() - half), new Point(at.east() + half, at.north() - half),
                new Point(at.east() + half, at.north() + half), new Point(at.east() - half, at.north() + half));
    }

    private static String line(Point at, double size) {
        return list(new Point(at.east() - size / 2, at.north()), new Point(at.east() + size / 2, at.north()));
    }

    private static String list(Point... corners) {
        StringBuilder text = new StringBuilder("[");
        for (Point p : corners) {
            text.append(text.length() > 1 ? "," : "").append('[').append(number(p.east())).append(',')
                    .append(number(p.north())).append(']');
        }
        return text.append(']').toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
