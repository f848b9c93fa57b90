// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.InputException;
import bermwright.foundation.InputException.Place;
import bermwright.foundation.ModelNote;
import bermwright.shielding.material.UserTable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a response that a reviewer hands over as CSV in place of the built-in one. */
final class ReviewersTable {
    private static final String QUANTITY = "quantity";
    private static final double GREATEST_DEPTH_GCM2 = 100_000;
    private static final double LEAST_DOSE_MSV = 1e-12;
    private static final double GREATEST_DOSE_MSV = 1e6;
    private static final double KG_M2 = 10;
    private static final double SV = 1e-3;

    private ReviewersTable() {
    }

    static HandedOver read(Path file) {
        UserTable table = UserTable.read(file, List.of(
                new UserTable.Column("areal_density_g_cm2", 0, GREATEST_DEPTH_GCM2),
                new UserTable.Column("isotropic_dose_mSv", LEAST_DOSE_MSV, GREATEST_DOSE_MSV),
                new UserTable.Column("low_mSv", LEAST_DOSE_MSV, GREATEST_DOSE_MSV),
                new UserTable.Column("high_mSv", LEAST_DOSE_MSV, GREATEST_DOSE_MSV)));
        double[] depths = scaled(table.column(0), KG_M2);
        double[] doses = scaled(table.column(1), SV);
        double[] low = scaled(table.column(2), SV);
        double[] high = scaled(table.column(3), SV);
        if (depths[0] != 0) {
            throw InputException.badValue(new Place(file.toString(), table.line(0), "areal_density_g_cm2"),
                    Double.toString(depths[0] / KG_M2), "0 in the first row");
        }
        for (int i = 0; i < doses.length; i++) {
            double millisieverts = doses[i] / SV;
            Place place = new Place(file.toString(), table.line(i), "low_mSv");
            check(low[i] <= doses[i], place, low[i], "at most the dose " + millisieverts);
            place = new Place(file.toString(), table.line(i), "high_mSv");
            check(high[i] >= doses[i], place, high[i], "at least the dose " + millisieverts);
        }
        double groundReturn = number(table, "open_ground_return_mSv", 0, GREATEST_DOSE_MSV) * SV;
        double equivalence = number(table, "skin_equivalence", 0.1, 10);
        MonotoneCurve lowFactor = new MonotoneCurve(depths, ratio(low, doses));
        MonotoneCurve highFactor = new MonotoneCurve(depths, ratio(high, doses));
        String quantity = quantity(table);
        Response.Per per = per(table);
        return new HandedOver(quantity, new TabulatedResponse(depths, doses,
                x -> new Band(Math.min(1, lowFactor.at(x)), Math.max(1, highFactor.at(x))),
                new TabulatedResponse.Terms(per, groundReturn, equivalence, description(table, file, quantity, per))),
                table.place(QUANTITY));
    }

    private static Stream<String> quantities() {
        return Stream.concat(Stream.of(HandedOver.EFFECTIVE_DOSE),
                Arrays.stream(OrganDose.Organ.values()).map(OrganDose.Organ::quantity));
    }

    private static String quantity(UserTable table) {
        String quantity = table.note(QUANTITY).orElse(HandedOver.EFFECTIVE_DOSE);
        if (quantities().noneMatch(quantity::equals)) {
            throw InputException.badValue(table.place(QUANTITY), quantity,
                    quantities().collect(Collectors.joining("; ")));
        }
        return quantity;
    }

    private static ModelNote description(UserTable table, Path file, String quantity, Response.Per per) {
        double[] depths = table.column(0);
        String source = table.note("source").orElseThrow(() -> missing(table, "source",
                "a line '# source: who made the table, how and when'"));
        String of = quantity.equals(HandedOver.EFFECTIVE_DOSE) ? per == Response.Per.DAY ? "" : "-event"
                : "-" + per.name().toLowerCase(Locale.ROOT) + "-"
                        + quantity.replaceAll("^[^,]*, ", "").replace(' ', '-');
        return new ModelNote(Response.HANDED_OVER + of, quantity + " handed over as " + file.getFileName(),
                "0 to " + depths[depths.length - 1] + " g/cm2", "low and high of the table",
                ModelNote.Status.COMPUTED, source);
    }

    private static Response.Per per(UserTable table) {
        String accepted = "a line '# per: day' or '# per: event'";
        String word = table.note("per").orElseThrow(() -> missing(table, "per", accepted));
        switch (word) {
            case "day":
                return Response.Per.DAY;
            case "event":
                return Response.Per.EVENT;
            default:
                throw InputException.badValue(table.place("per"), word, accepted);
        }
    }

    private static double number(UserTable table, String key, double least, double greatest) {
        String accepted = "a line '# " + key + ": number' from " + least + " to " + greatest;
        String word = table.note(key).orElseThrow(() -> missing(table, key, accepted));
        double value;
        try {
            value = Double.parseDouble(word);
        } catch (NumberFormatException e) {
            value = Double.NaN;
        }
        if (!(value >= least && value <= greatest)) {
            throw InputException.badValue(table.place(key), word, accepted);
        }
        return value;
    }

    private static InputException missing(UserTable table, String key, String accepted) {
        return InputException.badValue(table.place(key), "missing", accepted);
    }

    private static void check(boolean holds, Place place, double value, String accepted) {
        if (!holds) {
            throw InputException.badValue(place, Double.toString(value / SV), accepted);
        }
    }

    private static double[] scaled(double[] values, double factor) {
        return java.util.Arrays.stream(values).map(v -> v * factor).toArray();
    }

    private static double[] ratio(double[] values, double[] of) {
        double[] ratio = new double[of.length];
        for (int i = 0; i < of.length; i++) {
            ratio[i] = values[i] / of[i];
        }
        return ratio;
    }
}
