package keenward.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program from outside. */
class KeenwardTest {

  @TempDir private Path folder;

  @Test
  void saysItsVersion() throws Exception {
    Finished finished = Keenward.run(folder, "--version");

    assertThat(finished.exitCode()).isZero();
    assertThat(finished.output().strip()).matches("keenward \\d+\\.\\d+\\.\\d+");
  }

  /** The target is 0.35 s on two idle cores; the bound leaves room for a busy machine. */
  @Test
  void startsFast() throws Exception {
    Keenward.run(folder, "--version");
    List<Long> milliseconds = new ArrayList<>();
    for (int start = 0; start < 7; start++) {
      long began = System.nanoTime();
      Keenward.run(folder, "--version");
      milliseconds.add((System.nanoTime() - began) / 1_000_000);
    }

    assertThat(milliseconds).anyMatch(taken -> taken < 1_000);
  }
}
