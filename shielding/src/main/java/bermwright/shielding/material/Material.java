// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A material: elements by mass, density and mean excitation energy, with the source of the figures.
 *
 * @param name       trade name
 * @param density    density (kg/m3), positive
 * @param kind       how its elements are bound
 * @param parts      elements and their shares by mass, which sum to one
 * @param excitation published mean excitation energy (eV), where there is one
 * @param source     source of the figures
 */
public record Material(String name, double density, Kind kind, List<Part> parts, OptionalDouble excitation,
        String source) {
    private static final double SHARES_SUM_WITHIN = 1e-6;

    /** How the elements of a material are bound; it sets their mean excitation energies. */
    public enum Kind {
        /** Pure element or alloy. */
        ELEMENT,
        /** Condensed compound or mineral mixture. */
        COMPOUND,
        /** Gas. */
        GAS
    }

    /**
     * One element in a material.
     *
     * @param element the element
     * @param share   share by mass (1), above 0 and at most 1
     */
    public record Part(Element element, double share) {
        /** Refuses a share outside its range. */
        public Part {
            Objects.requireNonNull(element, "element");
            Require.positive("share of " + element.symbol(), share, "1");
        }

        /**
         * Amount of the element in a unit of mass of the material.
         *
         * @return share over atomic weight (mol/g), positive
         */
        public double moles() {
            return share / element.atomicWeight();
        }
    }

    /** Refuses shares that do not sum to one and copies the list. */
    public Material {
        Require.positive("density of " + name, density, "kg/m3");
        parts = List.copyOf(parts);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(excitation, "excitation");
        double sum = parts.stream().mapToDouble(Part::share).sum();
        Require.that(Math.abs(sum - 1) < SHARES_SUM_WITHIN, "shares of %s sum to %s; accepted: 1", name, sum);
    }

    /**
     * A material from element shares by mass, brought to the sum one.
     *
     * @param name    trade name
     * @param density density (kg/m3), positive
     * @param kind    how its elements are bound
     * @param shares  shares by mass by symbol, positive, in any common unit
     * @param source  source of the figures
     * @return the material, its mean excitation energy by Bragg's rule
     * @throws IllegalArgumentException if an element is unknown or a share is not positive
     */
    public static Material of(String name, double density, Kind kind, Map<String, Double> shares, String source) {
        Require.that(!shares.isEmpty(), "composition of %s is empty; accepted: at least one element", name);
        double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        List<Part> parts = new ArrayList<>();
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            Require.positive("share of " + share.getKey(), share.getValue(), "1");
            parts.add(new Part(Element.of(share.getKey()), share.getValue() / sum));
        }
        return new Material(name, density, kind, parts, OptionalDouble.empty(), source);
    }

    /**
     * A mixture of materials by mass.
     *
     * @param name   trade name of the mixture
     * @param first  one material
     * @param second the other material
     * @param share  share of the second by mass (1), 0 to 1
     * @return the mixture, with volumes added and its elements bound as in the first
     * @throws IllegalArgumentException if the share is outside its range
     */
    static Material mixture(String name, Material first, Material second, double share) {
        Require.within("share of " + second.name(), share, 0, 1, "1");
        Map<String, Double> shares = new LinkedHashMap<>();
        first.parts.forEach(p -> shares.merge(p.element().symbol(), p.share() * (1 - share), Double::sum));
        second.parts.forEach(p -> shares.merge(p.element().symbol(), p.share() * share, Double::sum));
        shares.values().removeIf(value -> value <= 0);
        double density = 1 / ((1 - share) / first.density + share / second.density);
        return of(name, density, first.kind, shares, "mixture of " + first.name + " and " + second.name);
    }

    /**
     * Electrons per unit of mass.
     *
     * @return mean Z/A (mol/g), positive
     */
    public double electrons() {
        return parts.stream().mapToDouble(p -> p.moles() * p.element().charge()).sum();
    }

    /**
     * Mean excitation energy: the published one, else by Bragg's rule over the elements as they are bound.
     *
     * @return mean excitation energy (eV), positive
     * @see "ICRU Report 37 (1984), section 5"
     */
    public double excitationEV() {
        if (excitation.isPresent()) {
            return excitation.getAsDouble();
        }
        double sum = 0;
        for (Part part : parts) {
            Element e = part.element();
            sum += part.moles() * e.charge()
                    * Math.log(kind == Kind.COMPOUND ? e.boundExcitationEV() : e.excitationEV());
        }
        return Math.exp(sum / electrons());
    }

    /**
     * Mean atomic weight by number of atoms.
     *
     * @return mean atomic weight (g/mol), positive
     */
    public double meanAtomicWeight() {
        return 1 / parts.stream().mapToDouble(Part::moles).sum();
    }
}
