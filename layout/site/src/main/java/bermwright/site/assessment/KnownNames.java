// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.material.Materials;
import bermwright.shielding.spectrum.EventSpectra;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a plan can name without saying more of it, for front ends that offer the names. */
public final class KnownNames {
    private KnownNames() {
    }

    /**
     * Materials that a skin or a floor can be of.
     *
     * @return the source of each, by its name
     */
    public static Map<String, String> materials() {
        Map<String, String> all = new LinkedHashMap<>();
        Materials.names().forEach(name -> all.put(name, Materials.named(name).source()));
        return all;
    }

    /**
     * Particle events that an exposure can count.
     *
     * @return kind and source of each, by its name
     */
    public static Map<String, String> events() {
        Map<String, String> all = new LinkedHashMap<>();
        EventSpectra.names().forEach(name -> all.put(name, EventSpectra.kind(name).map(kind -> kind + "; ")
                .orElse("") + EventSpectra.named(name).source()));
        return all;
    }

    /**
     * Published dose limits.
     *
     * @return the limits
     */
    public static List<DoseLimit> limits() {
        return DoseLimit.all();
    }
}
