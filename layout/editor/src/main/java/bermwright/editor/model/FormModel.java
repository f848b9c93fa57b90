// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.editor.edit.RemoveItem;
import bermwright.editor.edit.SetValue;
import bermwright.foundation.InputException;
import bermwright.site.planfile.PlanValues;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The form of the picked part. What was typed and is not accepted stays in the form, with what would be accepted,
 * until it is mended or another value takes its place.
 */
public final class FormModel {
    private static final Pattern ID = Pattern.compile("\"id\":\"([^\"]*)\"");
    /** From one depth of a profile to a new one (m). */
    private static final double DEEPER = 0.5;

    private final Workbench bench;
    private final Map<String, Refused> refused = new LinkedHashMap<>();

    /**
     * The form of a workbench.
     *
     * @param bench the workbench
     */
    public FormModel(Workbench bench) {
        this.bench = bench;
    }

    /**
     * A text that was not accepted.
     *
     * @param text     the text as typed
     * @param reason   why, and what would be accepted
     * @param standing the value that still stands in the plan, as text
     */
    public record Refused(String text, String reason, String standing) {
    }

    /**
     * The form.
     *
     * @return a block with all entries, empty where nothing is picked
     */
    public Optional<FormEntry.Block> form() {
        return bench.picked().flatMap(part -> FormReader.read(bench.plan(), part, false)
                .map(form -> FormLayout.grouped(form, part.kind())));
    }

    /**
     * The form with every key there is, also those that a thing of its kind does not have.
     *
     * @return a block with all entries in the order of the file, empty where nothing is picked
     */
    Optional<FormEntry.Block> whole() {
        return bench.picked().flatMap(part -> FormReader.read(bench.plan(), part, true));
    }

    /**
     * What is written into a field that names a file.
     *
     * @param chosen the file
     * @return its path from the plan's folder where both are on one disk, else its whole path
     */
    public String fileText(Path chosen) {
        return NewPlan.path(chosen, bench.document().file());
    }

    /**
     * The folder that paths in the plan start from.
     *
     * @return the folder
     */
    public Path folder() {
        return bench.document().file().getParent();
    }

    /**
     * What people call the key at the end of a path.
     *
     * @param path the path in the plan file
     * @return the words; those of the list or object around it where the path ends in a list item
     */
    public static String nameOf(String path) {
        return PlanValues.key(path).map(key -> FormWords.label(path, key)).orElse("");
    }

    /**
     * What was typed into a field and not accepted.
     *
     * @param field the field
     * @return the text and the reason; empty where the field is in order, also once another value took its place
     */
    public Optional<Refused> refused(FormEntry.Field field) {
        Refused typed = refused.get(field.path());
        if (typed != null && !typed.standing.equals(field.text())) {
            refused.remove(field.path());
            return Optional.empty();
        }
        return Optional.ofNullable(typed);
    }

    /**
     * How many texts in the form were not accepted.
     *
     * @return their number (1)
     */
    public int refusedCount() {
        return refused.size();
    }

    /**
     * Takes what was typed into a field.
     *
     * @param field the field as it was shown
     * @param typed the text
     * @return true where the field is in order afterwards
     */
    public boolean type(FormEntry.Field field, String typed) {
        String text = typed.strip();
        if (text.equals(field.text()) && (field.isGiven() || !text.isEmpty())) {
            refused.remove(field.path());
            return true;
        }
        try {
            PlanEdit edit = text.isEmpty() && !field.isNeeded()
                    ? new RemoveItem(field.path(), "Leave out " + words(field))
                    : new SetValue(field.path(), FieldText.json(field, text), "Set " + words(field));
            Optional<Part> renamed = renamed(field, text);
            bench.make(edit.words(), edit.applied(bench.document().plan()));
            refused.remove(field.path());
            renamed.ifPresent(part -> bench.pick(Optional.of(part)));
            return true;
        } catch (InputException refusal) {
            String reason = refusal.accepted().isEmpty() ? FormWords.people(refusal.getMessage())
                    : "Accepted: " + refusal.accepted();
            if (!refusal.key().isEmpty() && !refusal.key().equals(field.path())) {
                reason = FormWords.people(refusal.getMessage());
            }
            refused.put(field.path(), new Refused(typed, reason, field.text()));
            return false;
        }
    }

    private Optional<Part> renamed(FormEntry.Field field, String text) {
        return bench.picked().filter(part -> field.path().equals(part.path(bench.document().plan()) + ".id"))
                .map(part -> new Part(part.kind(), text));
    }

    private String words(FormEntry.Field field) {
        String of = bench.picked().map(Part::words).orElse("plan");
        return field.label() + " of " + of;
    }

    /**
     * Puts a block into the plan, or a new item at the end of a list.
     *
     * @param entry the block or list
     * @return true where it was done
     */
    public boolean add(FormEntry entry) {
        if (entry instanceof FormEntry.Block block) {
            return bench.make(new SetValue(block.path(), block.addition(), "Add " + block.label()));
        } else if (entry instanceof FormEntry.Items items) {
            String json = deeper(items, freeId(items));
            return bench.make(new SetValue(items.path() + "[" + items.items().size() + "]", json,
                    "Add to " + items.label()));
        }
        return false;
    }

    /** A new item of a profile half a metre below the last one, for the depths of a profile must grow. */
    private static String deeper(FormEntry.Items items, String json) {
        return items.items().stream().flatMap(item -> item.entries().stream())
                .filter(e -> e.path().endsWith(".depth_m") && e instanceof FormEntry.Field)
                .map(e -> Double.parseDouble(((FormEntry.Field) e).text())).reduce((above, below) -> below)
                .map(last -> json.replace("\"depth_m\":0,", "\"depth_m\":" + (last + DEEPER) + ",")).orElse(json);
    }

    /** A new item's JSON with an id that none of the list has yet. */
    private static String freeId(FormEntry.Items items) {
        Matcher id = ID.matcher(items.addition());
        if (!id.find()) {
            return items.addition();
        }
        Set<String> taken = items.items().stream().flatMap(item -> item.entries().stream())
                .filter(e -> e.path().endsWith(".id") && e instanceof FormEntry.Field)
                .map(e -> ((FormEntry.Field) e).text()).collect(Collectors.toSet());
        String free = id.group(1);
        for (int number = 2; taken.contains(free); number++) {
            free = id.group(1) + "-" + number;
        }
        return items.addition().replace(id.group(), "\"id\":\"" + free + "\"");
    }

    /**
     * Takes a block or list item out.
     *
     * @param block the block
     * @return true where it was done
     */
    public boolean remove(FormEntry.Block block) {
        refused.keySet().removeIf(path -> path.startsWith(block.path()));
        return bench.make(new RemoveItem(block.path(), "Take out " + block.label()));
    }
}
