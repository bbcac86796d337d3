package keenward.endtoend.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import org.junit.jupiter.api.Test;

/** Core is pure, and what the browser runs of it can run there. */
class CoreTest {

  private static final House HOUSE = new House("keenward");
  private static final JavaClasses PROGRAM = HOUSE.program();

  @Test
  void coreIsPure() {
    Purity.coreIsPure(HOUSE).check(PROGRAM);
  }

  @Test
  void whatRunsInABrowserUsesOnlyWhatBrowsersHave() {
    assertThat(BrowserReadiness.reachedInCore(HOUSE, PROGRAM)).isNotEmpty();
    BrowserReadiness.compilesForTheBrowser(HOUSE, PROGRAM).check(PROGRAM);
  }
}
