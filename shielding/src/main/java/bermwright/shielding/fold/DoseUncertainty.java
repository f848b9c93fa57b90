// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.dose.Band;
import java.util.Objects;

/**
 * What makes a dose uncertain, each by itself, as factors of the 16th and 84th percentile.
 *
 * @param model     distance of the response from published figures
 * @param sun       range of solar activity about the one planned with
 * @param density   density of the soil
 * @param thickness thickness of the cover
 */
public record DoseUncertainty(Band model, Band sun, Band density, Band thickness) {
    /** Nothing is off. */
    public static final DoseUncertainty NONE = new DoseUncertainty(Band.NONE, Band.NONE, Band.NONE, Band.NONE);

    /** What a dose may be off by. */
    public enum Term {
        /** The response. */
        MODEL("model"),
        /** The sun. */
        SUN("solar activity"),
        /** The soil's density. */
        DENSITY("soil density"),
        /** The cover's thickness. */
        THICKNESS("cover thickness");

        private final String word;

        Term(String word) {
            this.word = word;
        }

        /**
         * Its name for people.
         *
         * @return the words
         */
        public String word() {
            return word;
        }
    }

    /** Refuses missing parts. */
    public DoseUncertainty {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(sun, "sun");
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(thickness, "thickness");
    }

    /**
     * One of them.
     *
     * @param term which
     * @return its factors
     */
    public Band of(Term term) {
        switch (term) {
            case MODEL:
                return model;
            case SUN:
                return sun;
            case DENSITY:
                return density;
            default:
                return thickness;
        }
    }

    /**
     * The one that spreads the dose most, from low to high.
     *
     * @return the term; the model where nothing is off
     */
    public Term greatest() {
        Term greatest = Term.MODEL;
        for (Term term : Term.values()) {
            greatest = width(of(term)) > width(of(greatest)) ? term : greatest;
        }
        return greatest;
    }

    private static double width(Band band) {
        return Math.log(band.high() / band.low());
    }

    /**
     * All of them together, as independent: the root of the sum of the squares of the logarithms.
     *
     * @return the factors
     */
    public Band together() {
        double down = 0;
        double up = 0;
        for (Term term : Term.values()) {
            down = Math.hypot(down, Math.log(of(term).low()));
            up = Math.hypot(up, Math.log(of(term).high()));
        }
        return new Band(Math.exp(-down), Math.exp(up));
    }
}
