package keenward.endtoend.architecture.crooked.files;

import org.junit.jupiter.api.Test;

/** Its name hides it from the build, which would never run it. */
class ReaderCheck {

  @Test
  void isNeverRun() {}
}
