package keenward.endtoend.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every rule is seen to fail on a house that breaks it, and to say where and why. */
class CrookedHouseTest {

  private static final String NAME = "keenward.endtoend.architecture.crooked";
  private static final House HOUSE = new House(NAME);
  private static final JavaClasses CROOKED = new ClassFileImporter().importPackages(NAME);

  @Test
  void aRoomThatLeansOnOneBelowIsFound() {
    assertThat(found(HOUSE.roomsUseOnlyRoomsAboveThem()))
        .anyMatch(told -> told.contains("ReadsFromFiles") && told.contains("core may use []"))
        .noneMatch(told -> told.contains("Tidy"));
  }

  @Test
  void aRoomThatTheHouseDoesNotHaveIsFound() {
    assertThat(found(HOUSE.roomsUseOnlyRoomsAboveThem()))
        .anyMatch(told -> told.contains("Trunk is in no known room"));
  }

  @Test
  void aCorePackageThatLeansOnALaterOneIsFound() {
    assertThat(found(HOUSE.corePackagesUseOnlyThoseBeforeThem()))
        .anyMatch(told -> told.contains("UsesThePlan"))
        .noneMatch(told -> told.startsWith("Field <" + NAME + ".core.plan.UsesAQuantity"));
  }

  @Test
  void aCorePackageThatTheHouseDoesNotHaveIsFound() {
    assertThat(found(HOUSE.corePackagesUseOnlyThoseBeforeThem()))
        .anyMatch(told -> told.contains("Sum is in no known package of core"));
  }

  @Test
  void aCycleIsFound() {
    assertThat(found(HOUSE.packagesHaveNoCycles()))
        .anyMatch(told -> told.contains("core.plan") && told.contains("core.quantities"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          OpensAFile          | it does no input or output
          OpensASocket        | it does no input or output
          AsksADatabase       | it does no input or output
          AsksTheClock        | core has no clock
          AsksTheMillisecond  | nor asks the machine
          ReadsTheEnvironment | nor asks the machine
          Prints              | neither prints
          PrintsByReference   | neither prints
          PrintsAFailure      | reads and writes nothing
          StartsAThread       | core starts and knows no threads
          WorksInParallel     | core starts and knows no threads
          Locks               | java.util.concurrent.locks
          RollsDice           | core rolls no dice
          RollsADouble        | core rolls no dice
          InventsAnIdentity   | core rolls no dice
          WritesByTheLocale   | the same result on every machine
          """)
  void impureCoreIsFound(String className, String reason) {
    assertThat(found(Purity.coreIsPure(HOUSE)))
        .anyMatch(told -> told.contains(".core.plan." + className) && told.contains(reason))
        .noneMatch(told -> told.contains(".core.plan.Tidy"));
  }

  @Test
  void whatTheBrowserLacksIsFoundAlsoInAClassThatIsOnlyLeantOn() {
    assertThat(found(BrowserReadiness.compilesForTheBrowser(HOUSE, CROOKED)))
        .anyMatch(told -> told.contains("SplitsLines") && told.contains("use split"))
        .anyMatch(told -> told.contains("plan.Hasher") && told.contains("Character.forDigit"))
        .noneMatch(told -> told.contains("Tidy"));
  }

  @Test
  void aPackageThatIsNotNullMarkedIsFound() {
    assertThat(found(Conventions.everyPackageIsNullMarked()))
        .singleElement()
        .asString()
        .contains("Unmarked", "no package-info.java");
  }

  @Test
  void testsThatTheBuildWouldNotRunAreFound() {
    assertThat(found(Conventions.testsAreInClassesNamedTest()))
        .singleElement()
        .asString()
        .contains("ReaderCheck holds tests");
  }

  private static List<String> found(ArchRule rule) {
    EvaluationResult result = rule.evaluate(CROOKED);
    return result.getFailureReport().getDetails();
  }
}
