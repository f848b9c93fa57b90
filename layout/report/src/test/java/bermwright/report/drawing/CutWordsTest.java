// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names of any length stay on the paper. */
class CutWordsTest {
    private static final double SIZE = 12;
    private static final double ROOM = 100;
    private static final String LONG = "a name that nobody would give ".repeat(14);

    @Test
    void wordsThatFitStayAsTheyAre() {
        assertEquals("short", Svg.cut("short", SIZE, ROOM));
    }

    @Test
    void wordsThatDoNotFitEndInDotsWithinTheirRoom() {
        String cut = Svg.cut(LONG, SIZE, ROOM);
        assertTrue(cut.endsWith("…") && Svg.width(cut, SIZE) <= ROOM, cut);
        assertTrue(Svg.width(cut + "nn", SIZE) > ROOM, "as long as there is room for: " + cut);
    }

    @Test
    void aCharacterOfTwoPartsIsNeverHalved() {
        String cut = Svg.cut("\uD83C\uDF11".repeat(50), SIZE, ROOM);
        assertEquals(cut.length() - 1, 2 * cut.codePoints().filter(c -> c == 0x1F311).count());
    }

    @Test
    void stepsOfAnyNameStayOnThePaperAndWholeWhereTwoLinesHoldThem() {
        String two = "birch, low lifts: cover birch, stage 1, up to 3.5 m over its bed";
        Drawing drawing = new TimeBars("order", "Order of work: " + LONG, "days", List.of(
                new TimeBars.Step("1", LONG, new TimeBars.Span(0, 1), true, List.of()),
                new TimeBars.Step("2", two, new TimeBars.Span(1, 3), false, List.of("1")))).drawing();
        assertEquals(List.of(), DrawingXml.troubles(drawing));
        String words = String.join(" ", DrawingXml.texts(DrawingXml.read(drawing.svg())));
        assertTrue(words.contains(two), words);
    }
}
