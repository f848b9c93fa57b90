// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.site.judgement.Judgement;
import bermwright.site.judgement.Judgements;
import bermwright.site.planfile.Key.Standard;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Keys of the file of judgements beside a plan. */
final class JudgementKeys {
    private static final LocalDate FIRST_DAY = LocalDate.of(1970, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2200, 12, 31);

    /** The keys of each object of the file. */
    static final Map<Class<? extends Record>, List<Key>> TABLE = Map.of(
            Judgements.class, List.of(standard("judgements", "judgements", Types.many(Judgement.class),
                    Standard.none(), "The judgements, the oldest first.")),
            Judgement.class, List.of(
                    required("of", "of", Types.WORDS, "Id of the finding, or of the station as hull/station."),
                    required("decision", "decision", Types.choice(Judgement.Decision.values(),
                            Judgement.Decision::word), "What was decided."),
                    required("name", "name", Types.WORDS, "Who decided."),
                    required("date", "date", new ValueType.Day(FIRST_DAY, LAST_DAY), "When."),
                    optional("revision", "revision", Types.WORDS, "none was stated",
                            "Revision of the plan it was decided on."),
                    optional("remark", "remark", Types.WORDS, "no remark", "In the person's words."),
                    required("judged_on", "judgedOn", Types.WORDS,
                            "What the finding or station said at that time.")));

    private JudgementKeys() {
    }
}
