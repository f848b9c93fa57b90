// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All rules that findings come from. */
public final class Catalogue {
    private static final List<Rule> ALL = Stream.<Rule[]>of(SiteRule.values(), PairingRule.values(),
            LoweringRule.values(), CoverRule.values(), DoseRule.values(), WorkRule.values(), StayRule.values(),
            SizingRule.values()).flatMap(Stream::of).toList();

    private Catalogue() {
    }

    /**
     * The rules.
     *
     * @return every rule, discipline by discipline
     */
    public static List<Rule> all() {
        return ALL;
    }

    /**
     * A rule by its fixed name.
     *
     * @param id the name, such as {@code hull-spacing}
     * @return the rule; empty where there is none
     */
    static Optional<Rule> rule(String id) {
        return ALL.stream().filter(r -> r.id().equals(id)).findFirst();
    }
}
