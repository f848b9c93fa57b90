// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stranger's machine, language or plan may bring. */
class StrangerTest {
    private static final int MANY_FILES = 20;

    @TempDir
    Path folder;

    /** Turkish has a second i, German a comma, Persian and Arabic other numerals; the clock may stand anywhere. */
    @Test
    void everyLanguageAndTimeZoneGivesTheSameCharacters() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        String json = Run.of("lower", plan.toString(), "--json").out();
        String text = Run.of("cover", plan.toString()).out();
        try {
            for (String[] machine : List.of(new String[] {"tr-TR", "Europe/Istanbul"},
                    new String[] {"de-DE", "Pacific/Chatham"}, new String[] {"fa-IR-u-nu-arabext", "Asia/Tehran"},
                    new String[] {"ar-EG-u-nu-arab", "America/St_Johns"})) {
                Locale.setDefault(Locale.forLanguageTag(machine[0]));
                TimeZone.setDefault(TimeZone.getTimeZone(machine[1]));
                assertEquals(json, Run.of("lower", plan.toString(), "--json").out(), machine[0]);
                assertEquals(text, Run.of("cover", plan.toString()).out(), machine[0]);
            }
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    /**
     * Pages, drawings, tables, exchange files and documents: every file of a report, byte for byte, on a machine with
     * the letters of Turkish and the numerals of Arabic.
     */
    @Test
    void aWholeReportIsTheSameInAnotherLanguage() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        Locale language = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Map<String, String> here = report(plan, "here");
        assertTrue(here.size() > MANY_FILES, here.keySet().toString());
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertEquals(here, report(plan, "elsewhere"));
        } finally {
            Locale.setDefault(language);
            TimeZone.setDefault(zone);
        }
    }

    /** The checksum of each file of a report, and what was said, by name. */
    private Map<String, String> report(Path plan, String name) throws IOException {
        Path out = folder.resolve(name).resolve("report");
        Files.createDirectories(out.getParent());
        Run run = Run.of("report", plan.toString(), "--out", out.toString(), "--date", "2031-02-14", "--json");
        assertTrue(run.code() <= ExitCode.REFUSED.number(), run.err());
        Map<String, String> sums = new TreeMap<>();
        sums.put("what was said", run.out().replace(out.toString(), "report"));
        try (Stream<Path> all = Files.walk(out)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                CRC32C sum = new CRC32C();
                sum.update(Files.readAllBytes(file));
                sums.put(out.relativize(file).toString(), Long.toHexString(sum.getValue()));
            }
        }
        return sums;
    }

    /**
     * No part of the program asks for a connection while it works on a plan: the system's own trace says so. (Java
     * opens sockets that it never connects, to learn whether there are addresses of six groups.)
     */
    @Test
    void nothingReachesForTheNetwork() throws IOException, InterruptedException {
        Path strace = Path.of("/usr/bin/strace");
        Assumptions.assumeTrue(Files.isExecutable(strace), "strace is not there");
        Path plan = Run.site(folder, Run.plan());
        Path trace = folder.resolve("trace.txt");
        Process process = new ProcessBuilder(strace.toString(), "-f", "--seccomp-bpf", "-qq", "-e",
                "trace=connect,sendto,sendmsg",
                "-o", trace.toString(), Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true", "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Main.class.getName(), "cover", plan.toString(), "--json")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(folder.resolve("answer.json").toFile()).start();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES));
        Assumptions.assumeTrue(Files.exists(trace), "this machine lets nobody trace");
        assertTrue(process.exitValue() <= ExitCode.REFUSED.number(), "it ran: " + process.exitValue());
        List<String> asked = Files.readAllLines(trace).stream().filter(l -> l.contains("AF_INET")).toList();
        assertEquals(List.of(), asked);
    }

    /** An id that looks like a way to another folder names no file outside the report's. */
    @Test
    void namesInAPlanLeadToNoFileOutside() throws IOException {
        String strange = Run.plan().replace("\"A\"", "\"../../strange\"");
        Path inner = Files.createDirectories(folder.resolve("a/b/c"));
        Path plan = Run.site(inner, strange);
        Run run = Run.of("drawings", plan.toString(), "--out", inner.resolve("out").toString());
        assertTrue(run.code() <= 2, run.err());
        try (Stream<Path> all = Files.walk(folder)) {
            assertEquals(List.of(), all.filter(Files::isRegularFile).filter(f -> !f.startsWith(inner))
                    .toList());
        }
    }
}
