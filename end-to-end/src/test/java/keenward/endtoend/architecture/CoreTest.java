package keenward.endtoend.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Core is pure, and what the browser runs of it can run there. */
class CoreTest {

  @Test
  void coreIsPure() {
    Purity.coreIsPure(Program.HOUSE).check(Program.CLASSES);
  }

  @Test
  void whatRunsInABrowserUsesOnlyWhatBrowsersHave() {
    assertThat(BrowserReadiness.reachedInCore(Program.HOUSE, Program.CLASSES)).isNotEmpty();
    BrowserReadiness.compilesForTheBrowser(Program.HOUSE, Program.CLASSES).check(Program.CLASSES);
  }
}
