package limbway.reports;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Holds the modules apart, and the packages of each free of cycles. */
@AnalyzeClasses(packages = "limbway", importOptions = ArchitectureTest.MainCode.class)
class ArchitectureTest {

    /** Leaves out tests, also where they come in a jar of their own. */
    static final class MainCode implements ImportOption {

        private final ImportOption noTests = new ImportOption.DoNotIncludeTests();

        @Override
        public boolean includes(Location location) {
            return noTests.includes(location) && !location.contains("-tests.jar");
        }
    }

    @ArchTest
    static final ArchRule LAYERS = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("model")
            .definedBy("limbway.model..")
            .layer("scenarios")
            .definedBy("limbway.scenarios..")
            .layer("sim")
            .definedBy("limbway.sim..")
            .layer("reports")
            .definedBy("limbway.reports..")
            .whereLayer("scenarios")
            .mayOnlyBeAccessedByLayers("reports")
            .whereLayer("sim")
            .mayOnlyBeAccessedByLayers("reports")
            .whereLayer("reports")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule MODEL_IS_PURE = noClasses()
            .that()
            .resideInAPackage("limbway.model..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("sim..", "ec..", "org.jfree..", "java.io..", "java.nio.file..", "picocli..")
            .because("formulas run without a simulator, a chart or a file");

    @ArchTest
    static final ArchRule NO_WINDOWS = noClasses()
            .that()
            .resideInAPackage("limbway..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("sim.display..", "sim.portrayal..", "sim.util.media..")
            .because("these classes of MASON need libraries that are not here");

    @ArchTest
    static final ArchRule CHARTS_READ_NO_FILES = noClasses()
            .that()
            .resideInAnyPackage("limbway.reports.measure..", "limbway.reports.words..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jfree..", "java.awt..", "java.nio.file..")
            .because("measures and words are made before anything is drawn or written");

    @ArchTest
    static final ArchRule MODEL_ONE_WAY =
            slices().matching("limbway.model.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule SCENARIOS_ONE_WAY =
            slices().matching("limbway.scenarios.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule SIM_ONE_WAY =
            slices().matching("limbway.sim.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule REPORTS_ONE_WAY =
            slices().matching("limbway.reports.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_STATIC_STATE =
            fields().that().areStatic().should().beFinal().because("two runs in one process must not meet");

    /** One name for one thing; what stays within its package may be called what it likes. */
    @ArchTest
    static void publicTypesHaveNamesOfTheirOwn(JavaClasses classes) {
        Map<String, List<String>> named = classes.stream()
                .filter(type -> type.isTopLevelClass() && type.getModifiers().contains(JavaModifier.PUBLIC))
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(
                        JavaClass::getSimpleName,
                        TreeMap::new,
                        Collectors.mapping(JavaClass::getName, Collectors.toList())));
        assertTrue(named.size() >= 250, "public types seen = " + named.size());
        named.values().removeIf(types -> types.size() == 1);
        assertEquals(Map.of(), named);
    }

    /** A rule that sees no classes holds; there were more than 250 when this was written. */
    @ArchTest
    static void everyModuleIsSeen(JavaClasses classes) {
        for (String module : new String[] {"model", "scenarios", "sim", "reports"}) {
            long seen = classes.stream()
                    .map(JavaClass::getPackageName)
                    .filter(name -> name.startsWith("limbway." + module))
                    .count();
            assertTrue(seen >= 25, module + ": classes seen = " + seen);
        }
    }
}
