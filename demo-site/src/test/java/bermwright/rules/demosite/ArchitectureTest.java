// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The house's rules hold, and each of them catches a class planted to break it. */
class ArchitectureTest {
    private static final ImportOption MAIN_CODE_ONLY = new ImportOption() {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/test-classes/") && !location.contains("-tests.jar");
        }
    };
    private static final JavaClasses HOUSE = new ClassFileImporter().withImportOption(MAIN_CODE_ONLY)
            .importPackages("bermwright");

    static Stream<Arguments> rules() {
        return Stream.of(
                Arguments.of(House.SCREENS_IN_THE_EDITOR_ONLY, List.of("bermwright.report.planted")),
                Arguments.of(House.PDF_LAYOUT_IN_ONE_ROOM_ONLY, List.of("bermwright.report.planted")),
                Arguments.of(House.POLYGONS_IN_TWO_ROOMS_ONLY, List.of("bermwright.site.planted")),
                Arguments.of(House.REFERENCE_SYSTEMS_IN_ONE_ROOM_ONLY, List.of("bermwright.site.planted")),
                Arguments.of(House.NO_FILES_IN_LOWERING, List.of("bermwright.lowering.planted")),
                Arguments.of(House.FRONT_ENDS_ASK_AND_DO_NOT_COMPUTE, List.of("bermwright.cli.planted")),
                Arguments.of(House.ARROWS, List.of("bermwright.terrain.planted")),
                Arguments.of(House.ARROWS, List.of("bermwright.shielding.planted")),
                Arguments.of(House.WHAT_ONLY_TESTS_CALL_IS_NOT_MAIN_CODE, List.of("bermwright.report.planted")),
                Arguments.of(House.NO_NETWORK, List.of("bermwright.report.planted")),
                Arguments.of(House.NOTHING_MADE_FROM_A_STREAM, List.of("bermwright.report.planted")),
                Arguments.of(House.NO_RINGS_OF_PACKAGES, List.of("bermwright.site.planted.ring")));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theHouseKeepsTheRule(ArchRule rule, List<String> planted) {
        rule.allowEmptyShould(true).check(HOUSE);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleCatchesWhatWasPlanted(ArchRule rule, List<String> planted) {
        JavaClasses all = new ClassFileImporter().importPackages(planted.toArray(String[]::new));
        assertFalse(all.isEmpty());
        assertTrue(rule.evaluate(all).hasViolation(), "nothing caught in " + planted);
    }

    /** What main code calls meanwhile, or what is gone, leaves the list. */
    @Test
    void whatTestsAloneCallIsListedAndNothingElse() {
        Set<String> uncalled = HOUSE.stream().flatMap(c -> c.getMethods().stream()).filter(House::isUncalled)
                .map(House::name).collect(Collectors.toSet());
        assertEquals(List.of(), House.CALLED_BY_TESTS.keySet().stream().filter(m -> !uncalled.contains(m)).sorted()
                .toList());
    }

    @Test
    void everyRoomWasLookedAt() {
        for (String room : List.of("foundation", "terrain.grid", "shielding.dose", "lowering.sequence", "site.planfile",
                "cli")) {
            assertTrue(HOUSE.stream().anyMatch(c -> c.getPackageName().equals("bermwright." + room)), room);
        }
    }

    /** Rules are values: what compares them with a text is always false and proves nothing. */
    @Test
    void nobodyComparesARuleWithAText() throws IOException {
        Pattern slip = Pattern.compile("\\brule\\(\\)\\.(equals|startsWith|contains)\\(\"|\\(Finding::rule\\)");
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("bermwright.root")))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Files.readString(file).lines().filter(l -> slip.matcher(l).find() && !l.contains("Pattern.compile"))
                        .forEach(l -> found.add(file.getFileName() + ": " + l.strip()));
            }
        }
        assertEquals(List.of(), found);
    }

    /** A number in words is written alike in every language setting: "%d" and "%.1f" name one. */
    @Test
    void numbersInWordsNameTheirLanguage() throws IOException {
        assertEquals(1, unnamed("String a = \"%.1f m\".formatted(x);").size());
        assertEquals(1, unnamed("out.printf(\"%d hulls\", n);").size());
        assertEquals(0, unnamed("String a = \"%s m\".formatted(x); out.printf(Locale.ROOT, \"%d\", n);").size());
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("bermwright.root")))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")
                    && f.toString().replace('\\', '/').contains("/src/main/")).toList()) {
                unnamed(Files.readString(file)).forEach(text -> found.add(file.getFileName() + ": " + text));
            }
        }
        assertEquals(List.of(), found);
    }

    private static List<String> unnamed(String source) {
        Pattern call = Pattern.compile("\\.formatted\\(|(String\\.format|printf)\\((?!\\s*(java\\.util\\.)?Locale)");
        Pattern number = Pattern.compile("%[-#+ 0,(]*\\d*(\\.\\d+)?[dfeEgGxX]");
        Pattern words = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");
        return call.matcher(source).results().map(m -> m.group().startsWith(".")
                ? source.substring(Math.max(source.lastIndexOf(';', m.start()), source.lastIndexOf("String.format(",
                        m.start()) + 1), m.start())
                : source.substring(m.end(), Math.max(m.end(), source.indexOf(';', m.end()))))
                .map(part -> words.matcher(part).results().map(MatchResult::group).collect(Collectors.joining()))
                .filter(text -> number.matcher(text).find()).toList();
    }
}
