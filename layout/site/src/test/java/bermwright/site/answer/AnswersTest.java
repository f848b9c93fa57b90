// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.haulage.EarthworksResult;
import bermwright.wording.Glossary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AnswersTest {
    @Test
    void everyFigureSaysWhatItIsInTheWordsOfTheTradeUnderAKeyOfItsOwn() {
        List<AnswerTable<?>> tables = new ArrayList<>(Answers.all());
        Answers.byCommand().values().forEach(table -> {
            tables.add(table);
            table.parts().forEach(part -> tables.add(part.table()));
        });
        tables.addAll(List.of(PlaceAnswers.GROUND, PlaceAnswers.HULLS, PlaceAnswers.CLEARANCES));
        for (AnswerTable<?> table : tables) {
            Set<String> keys = new HashSet<>();
            for (Figure<?> figure : table.figures()) {
                assertTrue(keys.add(figure.key()), table.path() + " " + figure.key());
                assertFalse(figure.heading().isBlank());
                assertTrue(figure.meaning().endsWith("."), figure.key());
                assertEquals(List.of(), Stream.of(figure.heading(), figure.meaning()).map(Glossary::slips)
                        .flatMap(List::stream).toList());
            }
        }
    }

    @Test
    void aShareIsReadAsPerCentAndANothingHasNoSign() {
        Figure<?> share = Answers.COVER.figures().stream().filter(f -> f.key().equals("share_below_wanted"))
                .findFirst().orElseThrow();
        assertEquals("12.5", share.shown(0.125));
        assertEquals("0.0", share.shown(-0.0001));
        assertEquals("", share.shown(Double.NaN));
        assertEquals("share_below_wanted_percent", share.column());
        assertEquals("skin below required depth (%)", share.head());
    }

    @Test
    void aFigureLeavesSiInOnePlace() {
        EarthworksResult.MachineDays days = new EarthworksResult.MachineDays("hauler", 12.34, 1.5);
        assertEquals(List.of("hauler", "12.3", "1.50"), Answers.MACHINES.figures().stream().map(f -> f.text(days))
                .toList());
        assertEquals(1.5, Unit.KN.of(1500));
        assertEquals(90, Unit.DEG.of(Math.PI / 2));
    }
}
