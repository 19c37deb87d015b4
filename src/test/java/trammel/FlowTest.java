package trammel;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The design's one direction: files → catalog, sheet → build → facts → findings → report. */
class FlowTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("trammel");

  @Test
  void packagesFollowTheFlow() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("derive")
        .definedBy("trammel.derive..")
        .layer("vocabulary")
        .definedBy("trammel.vocabulary..")
        .layer("book")
        .definedBy("trammel.book..")
        .layer("compare")
        .definedBy("trammel.compare..")
        .layer("judge")
        .definedBy("trammel.judge..")
        .layer("remedy")
        .definedBy("trammel.remedy..")
        .layer("report")
        .definedBy("trammel.report..")
        .layer("cli")
        .definedBy("trammel.cli..")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("report")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("remedy")
        .mayOnlyBeAccessedByLayers("report", "cli")
        .whereLayer("vocabulary")
        .mayOnlyBeAccessedByLayers("book", "judge", "remedy", "report", "cli")
        .whereLayer("book")
        .mayOnlyBeAccessedByLayers("judge", "remedy", "report", "cli")
        .whereLayer("judge")
        .mayOnlyBeAccessedByLayers("remedy", "report", "cli")
        .whereLayer("compare")
        .mayOnlyBeAccessedByLayers("report", "cli")
        .whereLayer("derive")
        .mayOnlyBeAccessedByLayers("compare", "remedy", "report", "cli")
        .check(PROGRAM);
  }

  @Test
  void noTwoPackagesNeedEachOther() {
    slices().matching("trammel.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void onlyTheJudgeKnowsTheRulesEngine() {
    noClasses()
        .that()
        .resideOutsideOfPackage("trammel.judge..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.drools..", "org.kie..")
        .check(PROGRAM);
  }

  @Test
  void theJudgeKnowsNoFilesAndDerivationNoRules() {
    noClasses()
        .that()
        .resideInAnyPackage("trammel.judge..", "trammel.derive..", "trammel.physics..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.nio.file..")
        .check(PROGRAM);
  }

  @Test
  void physicsKnowsNoCatalog() {
    noClasses()
        .that()
        .resideInAnyPackage("trammel.physics..", "trammel.designation..", "trammel.quantity..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "trammel.catalog..", "trammel.build..", "trammel.fact..", "trammel.read..")
        .check(PROGRAM);
  }

  @Test
  void geometryKnowsNothingElseOfTheProgram() {
    noClasses()
        .that()
        .resideInAPackage("trammel.geometry..")
        .should()
        .dependOnClassesThat(
            resideInAPackage("trammel..").and(resideOutsideOfPackage("trammel.geometry..")))
        .check(PROGRAM);
  }
}
