// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Person;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.WorkStep;
import bermwright.site.planfile.PlanValues;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a plan names its own things, so that a new id reaches all of them and nothing is left naming what is gone. */
final class PlanNames {
    private static final Pattern ITEM = Pattern.compile("(\\w+)\\[(\\d+)](?:\\.(hatches|stations)\\[(\\d+)])?");

    /** Stands for the id; no name of a file holds this character. */
    private static final String ID = "\u0000";

    private final Plan plan;
    private final List<Mention> mentions = new ArrayList<>();

    /**
     * A place where something is named.
     *
     * @param path   path of the text that names it
     * @param around the text with {@link #ID} where the id stands, such as {@code A/ID} for a hatch of hull A
     * @param goes   path of what makes no sense without it
     * @param words  what people call that
     */
    record Mention(String path, String around, String goes, String words) {
    }

    private PlanNames(Plan plan) {
        this.plan = plan;
    }

    /**
     * Where the thing at a path is named.
     *
     * @param plan the plan
     * @param path path of an item, such as {@code hulls[0]} or {@code hulls[0].hatches[1]}
     * @return the places; none where nothing names it
     */
    static List<Mention> of(Plan plan, String path) {
        Matcher item = ITEM.matcher(path);
        PlanNames names = new PlanNames(plan);
        if (!item.matches()) {
            return List.of();
        }
        int index = Integer.parseInt(item.group(2));
        if (item.group(3) != null && item.group(1).equals("hulls") && index < plan.hulls().size()) {
            names.insideHull(plan.hulls().get(index), item.group(3), Integer.parseInt(item.group(4)));
        } else if (item.group(3) == null) {
            names.item(item.group(1), index);
        }
        return List.copyOf(names.mentions);
    }

    private void insideHull(Hull hull, String list, int index) {
        if (list.equals("hatches") && index < hull.hatches().size()) {
            tunnels(HatchName.of(hull, hull.hatches().get(index)).toString(), hull.id() + "/" + ID);
        } else if (list.equals("stations") && index < hull.stations().size()) {
            people(hull.id() + "/" + hull.stations().get(index).id(), hull.id() + "/" + ID);
        }
    }

    private void item(String list, int index) {
        Optional<Part.Kind> kind = List.of(Part.Kind.values()).stream().filter(k -> k.key().equals(list)).findFirst();
        List<String> ids = kind.map(k -> Part.ids(plan, k)).orElse(List.of());
        if (index >= ids.size()) {
            return;
        }
        String id = ids.get(index);
        switch (kind.orElseThrow()) {
            case HULL -> {
                plan.hulls().get(index).hatches().forEach(h -> tunnels(id + "/" + h.id(), ID + "/" + h.id()));
                plan.hulls().get(index).stations().forEach(s -> people(id + "/" + s.id(), ID + "/" + s.id()));
                steps(s -> s.step() != WorkStep.Kind.PREPARE && s.of().equals(id));
            }
            case PREPARATION -> steps(s -> s.step() == WorkStep.Kind.PREPARE && s.of().equals(id));
            case WALL -> {
                walls(id);
                // Where a preparation has the same id, a step that prepares it is about that.
                steps(s -> s.step() == WorkStep.Kind.PREPARE && s.of().equals(id)
                        && !Part.ids(plan, Part.Kind.PREPARATION).contains(id));
            }
            case LANDING_PAD -> pads(id);
            case MACHINE -> machines(id);
            case WORK_STEP -> followers(id);
            default -> { }
        }
    }

    private void tunnels(String hatch, String around) {
        for (int i = 0; i < plan.tunnels().size(); i++) {
            Tunnel tunnel = plan.tunnels().get(i);
            String path = "tunnels[" + i + "]";
            String words = "tunnel " + tunnel.id();
            if (tunnel.from().equals(hatch)) {
                mentions.add(new Mention(path + ".from", around, path, words));
            }
            if (tunnel.to().equals(hatch)) {
                mentions.add(new Mention(path + ".to", around, path, words));
            }
        }
    }

    private void people(String station, String around) {
        for (int i = 0; i < plan.exposure().people().size(); i++) {
            Person person = plan.exposure().people().get(i);
            String path = "exposure.people[" + i + "]";
            for (int k = 0; k < person.hours().size(); k++) {
                if (person.hours().get(k).at().equals(station)) {
                    mentions.add(new Mention(path + ".hours[" + k + "].at", around, path + ".hours[" + k + "]",
                            "hours of " + person.id() + " at " + station));
                }
            }
            if (person.shelter().filter(station::equals).isPresent()) {
                mentions.add(new Mention(path + ".shelter", around, path + ".shelter", "shelter of " + person.id()));
            }
        }
    }

    private void steps(Predicate<WorkStep> named) {
        for (int i = 0; i < plan.orderOfWork().size(); i++) {
            WorkStep step = plan.orderOfWork().get(i);
            if (named.test(step)) {
                String path = "order_of_work[" + i + "]";
                mentions.add(new Mention(path + ".of", ID, path, "step " + step.id()));
            }
        }
    }

    private void walls(String id) {
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            String path = "hulls[" + i + "].cover.";
            if (hull.cover().flatMap(c -> c.baseEndWall()).filter(id::equals).isPresent()) {
                mentions.add(new Mention(path + "base_end_wall", ID, path + "base_end_wall",
                        "wall of the base end of hull " + hull.id()));
            }
            if (hull.cover().flatMap(c -> c.farEndWall()).filter(id::equals).isPresent()) {
                mentions.add(new Mention(path + "far_end_wall", ID, path + "far_end_wall",
                        "wall of the far end of hull " + hull.id()));
            }
        }
    }

    private void pads(String id) {
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            if (hull.lowering().flatMap(g -> g.landing()).flatMap(l -> l.pad()).filter(id::equals).isPresent()) {
                String path = "hulls[" + i + "].lowering.landing.pad";
                mentions.add(new Mention(path, ID, path, "pad of hull " + hull.id()));
            }
        }
    }

    private void machines(String id) {
        for (int i = 0; i < plan.orderOfWork().size(); i++) {
            WorkStep step = plan.orderOfWork().get(i);
            if (step.machine().filter(id::equals).isPresent()) {
                String path = "order_of_work[" + i + "].machine";
                mentions.add(new Mention(path, ID, path, "machine of step " + step.id()));
            }
        }
    }

    private void followers(String id) {
        for (int i = 0; i < plan.orderOfWork().size(); i++) {
            WorkStep step = plan.orderOfWork().get(i);
            int place = step.after().indexOf(id);
            if (place >= 0) {
                String path = "order_of_work[" + i + "].after[" + place + "]";
                mentions.add(new Mention(path, ID, path, "\"after " + id + "\" of step " + step.id()));
            }
        }
    }

    /**
     * The plan once all that names a thing names it by another id.
     *
     * @param changed  the plan in which the thing has its new id already
     * @param mentions where it was named
     * @param id       the new id, as it stands between the quotes of JSON
     * @return the changed plan
     */
    static Plan renamed(Plan changed, List<Mention> mentions, String id) {
        Plan renamed = changed;
        for (Mention mention : mentions) {
            renamed = PlanValues.with(renamed, mention.path(), "\"" + mention.around().replace("\\", "\\\\")
                    .replace("\"", "\\\"").replace(ID, id) + "\"");
        }
        return renamed;
    }

    /**
     * All that goes when the thing at a path goes, the thing itself last; a step that goes is named by others in turn.
     *
     * @param plan the plan
     * @param path path of the thing
     * @return what goes, each once
     */
    static List<Mention> gone(Plan plan, String path) {
        Set<String> paths = new LinkedHashSet<>();
        List<Mention> gone = new ArrayList<>();
        List<String> open = new ArrayList<>(List.of(path));
        for (int i = 0; i < open.size(); i++) {
            for (Mention mention : of(plan, open.get(i))) {
                if (paths.add(mention.goes())) {
                    gone.add(mention);
                    open.add(mention.goes());
                }
            }
        }
        return gone.stream().filter(m -> paths.stream().noneMatch(p -> m.goes().startsWith(p + "."))).toList();
    }

    /**
     * A plan without some of its parts.
     *
     * @param plan  the plan
     * @param paths paths of what goes
     * @return the rest
     */
    static Plan without(Plan plan, List<String> paths) {
        Plan rest = plan;
        // Later items of a list first, so that the numbers of the earlier ones still hold.
        for (String path : paths.stream().distinct().sorted(Comparator.comparing(PlanNames::byNumber).reversed())
                .toList()) {
            rest = PlanValues.without(rest, path);
        }
        return rest;
    }

    /** A path whose numbers sort as numbers. */
    private static String byNumber(String path) {
        return Pattern.compile("\\d+").matcher(path).replaceAll(n -> String.format(Locale.ROOT, "%09d",
                Long.parseLong(n.group())));
    }
}
