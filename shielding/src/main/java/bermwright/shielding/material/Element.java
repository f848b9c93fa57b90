// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.material;

import bermwright.foundation.Require;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A chemical element as matter that particles cross.
 *
 * @param symbol            chemical symbol
 * @param charge            nuclear charge Z (1), 1 to 30
 * @param atomicWeight      standard atomic weight (g/mol), positive
 * @param excitationEV      mean excitation energy of the element (eV), positive
 * @param boundExcitationEV mean excitation energy of the element in a condensed compound (eV), positive
 * @see "ICRU Report 37 (1984), Stopping powers for electrons and positrons, tables 4.3 and 5.1"
 */
public record Element(String symbol, int charge, double atomicWeight, double excitationEV, double boundExcitationEV) {
    private static final Map<String, Element> ALL = read();

    /** Refuses what is not an element's figure. */
    public Element {
        Require.that(charge >= 1, "charge of %s is %s; accepted: at least 1", symbol, charge);
        Require.positive("atomic weight", atomicWeight, "g/mol");
        Require.positive("mean excitation energy", excitationEV, "eV");
        Require.positive("mean excitation energy in a compound", boundExcitationEV, "eV");
    }

    /**
     * The element with a symbol.
     *
     * @param symbol chemical symbol, such as {@code Fe}
     * @return the element
     * @throws IllegalArgumentException if the element is not in the table
     */
    public static Element of(String symbol) {
        Element found = ALL.get(symbol);
        Require.that(found != null, "element %s is unknown; accepted: %s", symbol, String.join(", ", ALL.keySet()));
        return found;
    }

    private static Map<String, Element> read() {
        Map<String, Element> all = new LinkedHashMap<>();
        for (String[] row : Table.rows(Element.class, "elements.csv", ",")) {
            Element element = new Element(row[0], Integer.parseInt(row[1]), Double.parseDouble(row[2]),
                    Double.parseDouble(row[3]), Double.parseDouble(row[4]));
            all.put(element.symbol(), element);
        }
        return all;
    }
}
