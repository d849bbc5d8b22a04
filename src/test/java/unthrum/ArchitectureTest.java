package unthrum;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The packages keep to the table in the contributor guide")
class ArchitectureTest {

    /** Our classes without the tests and without the classes that the rule compiler makes. */
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("/unthrum/rules/"))
            .importPackages("unthrum");

    @Test
    @DisplayName("each package uses only what stands before it")
    void layers() {
        layeredArchitecture().consideringOnlyDependenciesInLayers()
                .layer("reading").definedBy("unthrum.reading..")
                .layer("physics").definedBy("unthrum.physics..")
                .layer("survey").definedBy("unthrum.survey..")
                .layer("material").definedBy("unthrum.material..")
                .layer("facts").definedBy("unthrum.facts..")
                .layer("knowledge").definedBy("unthrum.knowledge..")
                .layer("derive").definedBy("unthrum.derive..")
                .layer("effect").definedBy("unthrum.effect..")
                .layer("reasoning").definedBy("unthrum.reasoning..")
                .layer("plan").definedBy("unthrum.plan..")
                .layer("drill").definedBy("unthrum.drill..")
                .layer("cutting").definedBy("unthrum.cutting..")
                .layer("pieces").definedBy("unthrum.pieces..")
                .layer("job").definedBy("unthrum.job..")
                .layer("built").definedBy("unthrum.built..")
                .layer("audit").definedBy("unthrum.audit..")
                .layer("compare").definedBy("unthrum.compare..")
                .whereLayer("reading").mayNotAccessAnyLayer()
                .whereLayer("physics").mayNotAccessAnyLayer()
                .whereLayer("survey").mayOnlyAccessLayers("reading")
                .whereLayer("material").mayOnlyAccessLayers("reading", "survey")
                .whereLayer("facts").mayOnlyAccessLayers("reading", "survey", "material")
                .whereLayer("knowledge").mayOnlyAccessLayers("reading", "survey", "material", "facts")
                .whereLayer("derive")
                .mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge", "physics")
                .whereLayer("effect")
                .mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge", "physics", "derive")
                .whereLayer("reasoning").mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge",
                        "physics", "derive", "effect")
                .whereLayer("cutting").mayNotAccessAnyLayer()
                .whereLayer("pieces").mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge",
                        "derive", "effect", "reasoning", "plan", "cutting")
                .whereLayer("drill")
                .mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge", "derive", "effect",
                        "reasoning")
                .whereLayer("job").mayNotBeAccessedByAnyLayer()
                .whereLayer("job").mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge",
                        "derive", "effect", "reasoning", "plan")
                .whereLayer("built").mayOnlyAccessLayers("reading", "survey", "material", "facts", "knowledge",
                        "derive", "effect", "reasoning")
                .whereLayer("audit").mayOnlyBeAccessedByLayers("compare")
                .whereLayer("compare").mayNotBeAccessedByAnyLayer()
                .because("data goes one way, from the survey to the page")
                .check(OURS);
    }

    @Test
    @DisplayName("no two packages use each other")
    void noCycles() {
        slices().matching("unthrum.(**)").should().beFreeOfCycles()
                .because("a circle of packages is one package that nobody can read")
                .check(OURS);
    }

    @Test
    @DisplayName("outlines are known where pieces are made, and nowhere else")
    void outlinesInOnePlace() {
        noClasses().that().resideOutsideOfPackage("unthrum.pieces").should()
                .dependOnClassesThat().resideInAPackage("org.locationtech..")
                .because("drawings and JSON take plain points")
                .check(OURS);
    }

    @Test
    @DisplayName("the rule engine's inner classes are known in one place")
    void engineInOnePlace() {
        noClasses().that().resideOutsideOfPackages("unthrum.reasoning.engine", "unthrum.knowledge")
                .should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..")
                .because("an inner class may change with any release of the engine")
                .check(OURS);
    }
}
