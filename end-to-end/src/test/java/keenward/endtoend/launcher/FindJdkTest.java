package keenward.endtoend.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import keenward.endtoend.Finished;
import keenward.endtoend.Repository;
import keenward.endtoend.Running;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindJdkTest {

  @TempDir private Path folder;

  @Test
  void takesJavaHomeWhenItIsNewEnough() throws Exception {
    Path home = jdk("home", "JAVA_VERSION=\"901.0.1\"");
    Path path = jdk("path", "JAVA_VERSION=\"902\"");

    assertThat(found(900, home, path)).isEqualTo(home.toString());
  }

  @Test
  void passesOverAJavaHomeThatIsTooOld() throws Exception {
    Path home = jdk("home", "JAVA_VERSION=\"899.0.15\"");
    Path path = jdk("path", "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"900-ea\"");

    assertThat(found(900, home, path)).isEqualTo(path.toString());
  }

  @Test
  void followsTheLinkThatIsOnThePath() throws Exception {
    Path real = jdk("real", "JAVA_VERSION=\"900\"");
    Path linked = Files.createDirectories(folder.resolve("linked/bin"));
    Files.createSymbolicLink(linked.resolve("javac"), real.resolve("bin/javac"));

    assertThat(found(900, folder.resolve("none"), folder.resolve("linked")))
        .isEqualTo(real.toString());
  }

  @Test
  void passesOverWhatHasNoCompilerOrCannotBeRead() throws Exception {
    Path runtime = jdk("runtime", "JAVA_VERSION=\"900\"");
    Files.delete(runtime.resolve("bin/javac"));
    Path garbled = jdk("garbled", "JAVA_VERSION=\"newest\"");

    assertThat(found(900, runtime, garbled)).isEqualTo("none");
  }

  private String found(int least, Path javaHome, Path onPath)
      throws IOException, InterruptedException {
    Path script = Repository.root().resolve(".mvn/find-jdk.sh");
    ProcessBuilder builder =
        new ProcessBuilder(
            "/bin/bash",
            "-uc",
            ". \"$0\"; find_jdk \"$1\" && echo \"$jdk\" || echo none",
            script.toString(),
            Integer.toString(least));
    builder.environment().put("JAVA_HOME", javaHome.toString());
    builder.environment().put("PATH", onPath.resolve("bin") + ":/usr/bin:/bin");
    try (Running running = Running.start(builder)) {
      Finished finished = running.finish();
      assertThat(finished.errors()).isEmpty();
      return finished.output().strip();
    }
  }

  private Path jdk(String name, String release) throws IOException {
    Path javac = folder.resolve(name).resolve("bin/javac");
    Files.createDirectories(Objects.requireNonNull(javac.getParent()));
    Files.writeString(javac, "#!/bin/sh\n");
    assertThat(javac.toFile().setExecutable(true)).isTrue();
    Files.writeString(folder.resolve(name).resolve("release"), release + "\n");
    return folder.resolve(name);
  }
}
