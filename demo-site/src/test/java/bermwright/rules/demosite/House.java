// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.demosite;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rules of the house: which room may lean on what. */
final class House {
    static final ArchRule SCREENS_IN_THE_EDITOR_ONLY = noClasses().that().resideOutsideOfPackage("bermwright.editor..")
            .should().dependOnClassesThat().resideInAnyPackage("javafx..", "javax.swing..", "org.testfx..")
            .because("the command line runs on a server without a screen");

    static final ArchRule POLYGONS_IN_TWO_ROOMS_ONLY = noClasses()
            .that().resideOutsideOfPackages("bermwright.site.footprint..", "bermwright.site.clearance..")
            .should().dependOnClassesThat().resideInAnyPackage("org.locationtech.jts..")
            .because("their geometries are mutable and stay in two rooms");

    static final ArchRule REFERENCE_SYSTEMS_IN_ONE_ROOM_ONLY = noClasses()
            .that().resideOutsideOfPackage("bermwright.terrain.gridfile..")
            .should().dependOnClassesThat().resideInAnyPackage("org.apache.sis..", "org.opengis..")
            .because("file libraries stop where height files are read");

    static final ArchRule PDF_LAYOUT_IN_ONE_ROOM_ONLY = noClasses()
            .that().resideOutsideOfPackage("bermwright.report.pdf..")
            .should().dependOnClassesThat().resideInAnyPackage("com.openhtmltopdf..")
            .because("a page knows nothing of the program that sets it");

    static final ArchRule NO_FILES_IN_LOWERING = noClasses().that().resideInAPackage("bermwright.lowering..")
            .should().dependOnClassesThat().resideInAnyPackage("java.nio.file..", "java.nio.channels..",
                    "com.fasterxml..")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.io\\.(File|RandomAccessFile).*")
            .because("mechanics are numbers in, numbers out");

    static final ArchRule NO_NETWORK = noClasses()
            .should().dependOnClassesThat().resideInAnyPackage("java.net.http..", "java.rmi..", "javax.net..")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.net\\.(.*Socket.*|.*URLConnection|Inet.*|"
                    + "Proxy.*|Authenticator)|java\\.nio\\.channels\\.(.*Socket.*|Datagram.*)")
            .orShould().callMethod(java.net.URL.class, "openStream").orShould().callMethod(java.net.URL.class,
                    "openConnection")
            .because("what somebody plans stays on that machine; only the Spark module reaches the master named");

    static final ArchRule NOTHING_MADE_FROM_A_STREAM = noClasses()
            .should().dependOnClassesThat().haveNameMatching("java\\.io\\.ObjectInputStream|java\\.beans\\.XMLDecoder")
            .orShould().callMethodWhere(DescribedPredicate.describe("types named in JSON are made", call ->
                    call.getName().matches("(activate|enable)DefaultTyping.*|setPolymorphicTypeValidator")))
            .orShould().callMethod(java.io.File.class, "createTempFile", String.class, String.class)
            .because("a file may say what is in it, never which class is made; temporary files are private");

    static final ArchRule FRONT_ENDS_ASK_AND_DO_NOT_COMPUTE = noClasses()
            .that().resideInAnyPackage("bermwright.cli..", "bermwright.editor..")
            .should().callCodeUnitWhere(made(resideInAnyPackage(
                    "bermwright.shielding..", "bermwright.lowering..", "bermwright.terrain.earthworks..",
                    "bermwright.terrain.gridfile..", "bermwright.site.footprint..", "bermwright.site.clearance..",
                    "bermwright.site.stages..", "bermwright.site.burial..", "bermwright.site.exposure..",
                    "bermwright.site.haulage..", "bermwright.site.laydown..", "bermwright.site.sizing..")
                    .and(not(assignableTo(Enum.class)))))
            .because("both front ends show the same assessment; values of other rooms may be read, not made");

    static final ArchRule ARROWS = layeredArchitecture().consideringOnlyDependenciesInAnyPackage("bermwright..")
            .layer("terrain").definedBy("bermwright.foundation..", "bermwright.filestore..", "bermwright.finding..",
                    "bermwright.numeric..", "bermwright.regolith..", "bermwright.terrain..")
            .layer("shielding").definedBy("bermwright.shielding..")
            .layer("lowering").definedBy("bermwright.lowering..")
            .layer("site").definedBy("bermwright.site..")
            .layer("report").definedBy("bermwright.report..")
            .layer("cli").definedBy("bermwright.cli..")
            .layer("editor").definedBy("bermwright.editor..")
            .layer("demo").definedBy("bermwright.demosite..")
            .whereLayer("shielding").mayOnlyAccessLayers("terrain")
            .whereLayer("terrain").mayNotAccessAnyLayer()
            .whereLayer("lowering").mayOnlyAccessLayers("terrain")
            .whereLayer("site").mayOnlyAccessLayers("terrain", "shielding", "lowering")
            .whereLayer("report").mayOnlyAccessLayers("terrain", "shielding", "lowering", "site")
            .whereLayer("cli").mayOnlyAccessLayers("terrain", "shielding", "lowering", "site", "report")
            .whereLayer("editor").mayOnlyAccessLayers("terrain", "shielding", "lowering", "site", "report")
            .ensureAllClassesAreContainedInArchitecture()
            .because("terrain <- shielding <- layout <- demo-site, and nobody reaches upwards");

    static final ArchRule NO_RINGS_OF_PACKAGES = slices().matching("bermwright.(**)").should().beFreeOfCycles();

    private House() {
    }

    /** Calls of a constructor or a static method: what is needed to set a room to work; its values may be asked. */
    /** Members that only tests call, each with the reason; the list may get shorter, and a test holds that it does. */
    static final Map<String, String> CALLED_BY_TESTS = listed();

    static final ArchRule WHAT_ONLY_TESTS_CALL_IS_NOT_MAIN_CODE = methods().that().arePublic()
            .should(new ArchCondition<>("be called by main code") {
                @Override
                public void check(JavaMethod method, ConditionEvents events) {
                    if (isUncalled(method) && !CALLED_BY_TESTS.containsKey(name(method))) {
                        events.add(SimpleConditionEvent.violated(method, name(method)));
                    }
                }
            }).because("code that only tests call proves nothing about what runs");

    static boolean isUncalled(JavaMethod method) {
        return method.getModifiers().contains(JavaModifier.PUBLIC) && method.getAccessesToSelf().isEmpty()
                && method.getReferencesToSelf().isEmpty() && !isGiven(method);
    }

    private static Map<String, String> listed() {
        try (InputStream list = House.class.getResourceAsStream("/rules/called-by-tests.csv")) {
            return new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().filter(l -> !l.startsWith("#"))
                    .collect(Collectors.toMap(l -> l.substring(0, l.indexOf(',')), l ->
                            l.substring(l.indexOf(',') + 1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String name(JavaMethod method) {
        return method.getOwner().getName() + "." + method.getName();
    }

    /** Whether a method is there because of its class: of an enum, a component of a record, or of a wider type. */
    private static boolean isGiven(JavaMethod method) {
        JavaClass owner = method.getOwner();
        boolean ofEnum = owner.isEnum() && (method.getName().equals("values") || method.getName().equals("valueOf"));
        boolean component = owner.isRecord() && method.getRawParameterTypes().isEmpty()
                && owner.getFields().stream().anyMatch(f -> f.getName().equals(method.getName()));
        Stream<JavaClass> wider = Stream.concat(owner.getAllRawSuperclasses().stream(),
                owner.getAllRawInterfaces().stream());
        return ofEnum || component || method.getModifiers().contains(JavaModifier.SYNTHETIC)
                || method.getModifiers().contains(JavaModifier.BRIDGE) || wider.anyMatch(w -> w.getMethods().stream()
                .anyMatch(m -> m.getName().equals(method.getName())
                        && m.getRawParameterTypes().size() == method.getRawParameterTypes().size()));
    }

    private static DescribedPredicate<JavaCall<?>> made(DescribedPredicate<? super JavaClass> owner) {
        return DescribedPredicate.describe("it sets to work classes that " + owner.getDescription(),
                call -> owner.test(call.getTarget().getOwner()) && call.getTarget().resolveMember()
                        .map(m -> m instanceof JavaConstructor || m.getModifiers().contains(JavaModifier.STATIC))
                        .orElse(true));
    }
}
