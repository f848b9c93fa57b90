// SPDX-License-Identifier: Apache-2.0
package bermwright.rules.demosite;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;

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
                    "bermwright.regolith..", "bermwright.terrain..")
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
    private static DescribedPredicate<JavaCall<?>> made(DescribedPredicate<? super JavaClass> owner) {
        return DescribedPredicate.describe("it sets to work classes that " + owner.getDescription(),
                call -> owner.test(call.getTarget().getOwner()) && call.getTarget().resolveMember()
                        .map(m -> m instanceof JavaConstructor || m.getModifiers().contains(JavaModifier.STATIC))
                        .orElse(true));
    }
}
