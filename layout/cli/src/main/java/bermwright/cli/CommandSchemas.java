// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What commands that do not assess a plan as it stands give with {@code --json}. */
final class CommandSchemas {
    /** Path, type, unit (nothing for words) and meaning. */
    private record Row(String path, String type, String unit, String meaning) {
    }

    private static final String SHARE = "1";

    private static final List<Row> DOUBTS = List.of(
            new Row("samples", "integer", SHARE, "Samples worked out."),
            new Row("failed_samples", "integer", SHARE, "Samples that could not be worked out, which are left out."),
            new Row("seed", "integer", "", "Seed that repeats the samples."),
            new Row("sentences[]", "string", "", "What the doubts come to: a sentence for each figure with a limit."),
            new Row("inputs[].input", "string", "", "Something that is not known exactly; inputs of one name are told"
                    + " as one."),
            new Row("inputs[].unit", "string", "", "Unit of best and spread."),
            new Row("inputs[].source", "string", "", "Where the spread is from."),
            new Row("inputs[].best", "number", "as said", "Its best value; 1 for a factor, 0 for an error."),
            new Row("inputs[].spread", "number", "as said", "One standard deviation; left out for a factor whose range"
                    + " hangs on depth."),
            new Row("figures[].id", "string", "", "Name of the figure, for files."),
            new Row("figures[].figure", "string", "", "Name of the figure, for people."),
            new Row("figures[].unit", "string", "", "Unit of best, percentiles and limit."),
            new Row("figures[].best", "number", "as said", "Its value with every input at its best."),
            new Row("figures[].percentiles.5", "number", "as said", "5 in 100 samples lie below it."),
            new Row("figures[].percentiles.16", "number", "as said", "16 in 100 samples lie below it."),
            new Row("figures[].percentiles.50", "number", "as said", "Half of the samples lie below it."),
            new Row("figures[].percentiles.84", "number", "as said", "84 in 100 samples lie below it."),
            new Row("figures[].percentiles.95", "number", "as said", "95 in 100 samples lie below it."),
            new Row("figures[].limit", "number", "as said", "Its limit; left out where it has none."),
            new Row("figures[].limit_is", "string", "", "least where the figure must not fall below it, most where it"
                    + " must not rise above."),
            new Row("figures[].kept_chance", "number", SHARE, "Chance that the limit is kept."),
            new Row("figures[].left_out_error", "number", SHARE, "What the surrogate behind the shares leaves out, as a"
                    + " share of the variance."),
            new Row("figures[].shares[].input", "string", "", "Inputs of one name."),
            new Row("figures[].shares[].first_order", "number", SHARE, "Their share of the variance by themselves."),
            new Row("figures[].shares[].total_order", "number", SHARE, "Their share together with others too."),
            new Row("figures[].shares[].error", "number", SHARE, "What both shares may be off by."),
            new Row("figures[].finding_out[].what", "string", "", "What is found out."),
            new Row("figures[].finding_out[].right_now", "number", SHARE, "Chance that the likelier verdict on the"
                    + " limit is right now."),
            new Row("figures[].finding_out[].right_then", "number", SHARE, "The same once it was found out, in the"
                    + " mean."),
            new Row("finding_chances[].id", "string", "", "A finding, by rule, subject and parts concerned."),
            new Row("finding_chances[].refuses", "number", SHARE, "Chance that it refuses the plan."),
            new Row("finding_chances[].warns", "number", SHARE, "Chance that it warns."),
            new Row("finding_chances[].notes", "number", SHARE, "Chance that it is a note."),
            new Row("finding_chances[].level_with_best_inputs", "string", "", "Its level with every input at its best;"
                    + " left out where it is not found then."),
            new Row("samples_in_full", "integer", SHARE, "Samples that were assessed in full."),
            new Row("confirmed[].figure", "string", "", "Id of a figure that was worked out in full."),
            new Row("confirmed[].middle_difference_share", "number", SHARE, "Half of those samples differ from the"
                    + " quick ones by no more, as a share of the figure."),
            new Row("confirmed[].greatest_difference_share", "number", SHARE, "Greatest difference, as a share of the"
                    + " figure."),
            new Row("finding_chances_in_full[].id", "string", "", "A finding that only samples in full work out, where"
                    + " it is not certain."),
            new Row("finding_chances_in_full[].refuses", "number", SHARE, "Chance that it refuses, among those."),
            new Row("finding_chances_in_full[].warns", "number", SHARE, "Chance that it warns, among those."),
            new Row("finding_chances_in_full[].notes", "number", SHARE, "Chance that it is a note, among those."));

    private static final List<Row> ARRANGE = List.of(
            new Row("seed", "integer", "", "Seed of all chance."),
            new Row("steps", "integer", SHARE, "Steps done."),
            new Row("planned.refusals", "integer", SHARE, "Findings that refuse the plan as it was given."),
            new Row("arrangements[].plan_file", "string", "", "The arrangement as a plan file."),
            new Row("arrangements[].step", "integer", SHARE, "Step that found it; 0 for the plan as it was given."),
            new Row("arrangements[].share_of_planned_hours", "number", SHARE, "Machine hours over those of the plan."),
            new Row("arrangements[].gives_up", "string", "", "What it gives up against the best of the others."),
            new Row("refused_on_the_way", "object", "", "Rules that turned arrangements down, and how often."));

    private static final List<Row> WEIGHED = List.of(
            new Row("machine_hours", "number", "h", "Machine hours of all hauls; left out where there is no machine."),
            new Row("placed_m3", "number", "m3", "Soil placed."),
            new Row("warnings", "integer", SHARE, "Warnings of the full assessment."),
            new Row("tunnels_m", "number", "m", "Length of all tunnels between hulls."),
            new Row("cut_m3", "number", "m3", "Soil cut for benches and other preparations."),
            new Row("worst_station_high_mSv", "number", "mSv", "Dose at the worst station, 84th percentile."));

    private CommandSchemas() {
    }

    /** Puts them under {@code $defs}, by the name of their command. */
    static void into(ObjectNode schema) {
        ObjectNode commands = schema.putObject("$defs");
        ObjectNode doubts = commands.putObject("doubts").put("title", "What doubts answers").put("type", "object");
        DOUBTS.forEach(row -> put(doubts, row));
        ObjectNode arrange = commands.putObject("arrange").put("title", "What arrange answers").put("type", "object");
        ARRANGE.forEach(row -> put(arrange, row));
        for (Row row : WEIGHED) {
            put(arrange, new Row("planned." + row.path, row.type, row.unit, row.meaning));
            put(arrange, new Row("arrangements[]." + row.path, row.type, row.unit, row.meaning));
        }
        Answers.byCommand().forEach((name, table) -> AnswerSchema.put(commands.putObject(name).put("title",
                table.meaning()).put("type", "object"), table, table.model()));
    }

    private static void put(ObjectNode schema, Row row) {
        int end = row.path.lastIndexOf('.');
        String name = row.path.substring(end + 1);
        ObjectNode holder = end < 0 ? schema : AnswerSchema.at(schema, row.path.substring(0, end));
        ObjectNode one = holder.withObjectProperty("properties").putObject(name.replace("[]", ""));
        if (name.endsWith("[]")) {
            one.put("type", "array").put("description", row.meaning).putObject("items").put("type", row.type);
            return;
        }
        one.put("type", row.type).put("description", row.meaning);
        if (!row.unit.isEmpty()) {
            one.put("unit", row.unit);
        }
    }
}
