// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.wording.Glossary;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CatalogueWordingTest {
    @Test
    void theCatalogueSpeaksTheWordsOfTheTrade() {
        assertEquals(List.of(), Catalogue.all().stream().map(Rule::entry)
                .flatMap(e -> Stream.of(e.measures(), e.source(), e.todo())).map(Glossary::slips)
                .flatMap(List::stream).toList());
    }

    @Test
    void aPlantedWordOfOurOwnIsFound() {
        assertEquals(1, Glossary.slips("The soil bears 1156 kPa.").size());
    }
}
