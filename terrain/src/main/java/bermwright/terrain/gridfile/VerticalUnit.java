// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.Locale;
import java.util.Optional;

/**
 * The unit of a file's heights.
 *
 * @param words  the unit in words
 * @param metres metres in one such unit (1), positive
 */
record VerticalUnit(String words, double metres) {
    private static final String ACCEPTED = "metre, kilometre, centimetre, foot or US survey foot";
    private static final double FOOT = 0.3048;
    private static final double US_SURVEY_FOOT = 1200.0 / 3937;

    static VerticalUnit of(Optional<String> written, Optional<Integer> code, FileTrouble trouble) {
        if (written.isPresent() && !written.get().isBlank()) {
            return named(written.get(), trouble);
        }
        if (code.isPresent()) {
            return switch (code.get()) {
                case 9001 -> new VerticalUnit("metre", 1);
                case 9036 -> new VerticalUnit("kilometre", 1000);
                case 9002 -> new VerticalUnit("foot", FOOT);
                case 9003 -> new VerticalUnit("US survey foot", US_SURVEY_FOOT);
                default -> throw trouble.badValue("VerticalUnits (GeoKey 4099)", "EPSG unit " + code.get(), ACCEPTED);
            };
        }
        return new VerticalUnit("metre (not stated)", 1);
    }

    private static VerticalUnit named(String written, FileTrouble trouble) {
        return switch (written.strip().toLowerCase(Locale.ROOT)) {
            case "m", "metre", "metres", "meter", "meters" -> new VerticalUnit("metre", 1);
            case "km", "kilometre", "kilometres", "kilometer", "kilometers" -> new VerticalUnit("kilometre", 1000);
            case "cm", "centimetre", "centimeter" -> new VerticalUnit("centimetre", 0.01);
            case "ft", "foot", "feet" -> new VerticalUnit("foot", FOOT);
            case "us-ft", "ftus", "us survey foot", "us_survey_foot" ->
                    new VerticalUnit("US survey foot", US_SURVEY_FOOT);
            default -> throw trouble.badValue("unit of the heights", "\"" + written + "\"", ACCEPTED);
        };
    }
}
