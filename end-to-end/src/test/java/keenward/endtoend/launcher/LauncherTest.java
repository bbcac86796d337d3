package keenward.endtoend.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import keenward.endtoend.Finished;
import keenward.endtoend.Running;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LauncherTest {

  private static final int COULD_NOT_START = 3;

  @TempDir private Path around;
  private Workshop workshop;

  @BeforeEach
  void setUp() throws IOException {
    workshop = new Workshop(around, "Keen ward é");
  }

  @Test
  void buildsOnlyWhenNothingIsBuilt() throws Exception {
    Finished first = workshop.run("check");
    Finished second = workshop.run("check");

    assertThat(first.exitCode()).isZero();
    assertThat(first.errors()).contains("Building Keenward", "Built Keenward");
    assertThat(first.output()).contains("<check>", "edition 1");
    assertThat(second.output()).isEqualTo(first.output());
    assertThat(second.errors()).isEmpty();
    assertThat(workshop.mavenRuns()).isEqualTo(1);
  }

  @Test
  void handsOverEveryArgumentAsItIsWhateverTheLocale() throws Exception {
    Finished finished =
        workshop.run("two words", "", "*", "$HOME", "café ключ 鍵", "-x=\"y\"", "a\nb");

    assertThat(finished.output())
        .startsWith("<two words>\n<>\n<*>\n<$HOME>\n<café ключ 鍵>\n<-x=\"y\">\n<a\nb>\n");
  }

  @Test
  void handsBackTheExitCode() throws Exception {
    assertThat(workshop.run("exit", "0").exitCode()).isZero();
    assertThat(workshop.run("exit", "1").exitCode()).isEqualTo(1);
    assertThat(workshop.run("exit", "2").exitCode()).isEqualTo(2);
  }

  @Test
  void becomesTheProgramSoThatSignalsReachIt() throws Exception {
    try (Running running = workshop.start("sleep")) {
      running.awaitOutput(Pattern.compile("sleeping"));

      assertThat(running.handle().info().command())
          .hasValueSatisfying(command -> assertThat(command).endsWith("/bin/java"));
      running.handle().destroy();
      assertThat(running.finish().exitCode()).isEqualTo(128 + 15);
    }
  }

  @Test
  void worksThroughSymbolicLinksAndTellsTheProgramItsHome() throws Exception {
    Path bin = Files.createDirectories(around.resolve("bin"));
    Files.createSymbolicLink(bin.resolve("absolute"), workshop.launcher());
    Files.createSymbolicLink(bin.resolve("relative"), Path.of("absolute"));

    try (Running running = workshop.start(bin.resolve("relative"))) {
      assertThat(running.finish().output()).contains("home " + workshop.root());
    }
  }

  @Test
  void rebuildsForADemoWhenSourcesAreNewer() throws Exception {
    workshop.run("demo");
    workshop.deliverEdition("2");
    workshop.run("demo");
    assertThat(workshop.mavenRuns()).isEqualTo(1);

    workshop.changeASource();
    Finished check = workshop.run("check");
    Finished demo = workshop.run("demo");

    assertThat(check.output()).contains("edition 1");
    assertThat(demo.output()).contains("edition 2");
    assertThat(workshop.mavenRuns()).isEqualTo(2);
  }

  @Test
  void keepsTheProgramBeforeTheNewestOneBecauseItMayBeRunning() throws Exception {
    for (String edition : new String[] {"1", "2", "3"}) {
      workshop.deliverEdition(edition);
      workshop.changeASource();
      assertThat(workshop.run("demo").output()).contains("edition " + edition);
    }

    assertThat(programs()).hasSize(2);
  }

  @Test
  void twoAtOnceBuildOnce() throws Exception {
    workshop.buildsSlowly();

    assertThatTwoAtOnceBuildOnce();
  }

  @Test
  void twoAtOnceBuildOnceWithoutFlock() throws Exception {
    workshop.buildsSlowly();
    workshop.hideFlock();

    assertThatTwoAtOnceBuildOnce();
    assertThat(workshop.root().resolve(".build/lock.folder")).doesNotExist();
  }

  @Test
  void takesOverTheLockOfADeadBuildWithoutFlock() throws Exception {
    workshop.hideFlock();
    Path lock = Files.createDirectories(workshop.root().resolve(".build/lock.folder"));
    Process dead = new ProcessBuilder("true").start();
    dead.waitFor();
    Files.writeString(lock.resolve("holders"), dead.pid() + "\n");

    Finished finished = workshop.run("check");

    assertThat(finished.exitCode()).isZero();
    assertThat(finished.output()).contains("edition 1");
  }

  @Test
  void buildsAnewAfterABuildWasKilled() throws Exception {
    workshop.buildsSlowly();
    Path leftover = workshop.root().resolve("cli/target/launcher/classes/CutOff.class");
    try (Running running = workshop.start("check")) {
      awaitMaven();
      running.handle().descendants().forEach(ProcessHandle::destroyForcibly);
      running.handle().destroyForcibly();
      running.finish();
    }
    Files.createDirectories(leftover.getParent());
    Files.writeString(leftover, "half");

    Finished finished = workshop.run("check");

    assertThat(finished.output()).contains("edition 1");
    assertThat(workshop.mavenRuns()).isEqualTo(2);
    assertThat(leftover).doesNotExist();
  }

  @Test
  void waitsForAMavenThatOutlivedTheStartThatBeganIt() throws Exception {
    workshop.buildsSlowly();
    try (Running running = workshop.start("check")) {
      awaitMaven();
      running.handle().destroyForcibly();
      running.finish();
    }

    Finished finished = workshop.run("check");

    assertThat(finished.errors()).contains("waiting for it");
    assertThat(finished.output()).contains("edition 1");
  }

  @Test
  void stopsTheBuildWhenItIsAskedTo() throws Exception {
    workshop.buildsSlowly();
    try (Running running = workshop.start("check")) {
      awaitMaven();
      ProcessHandle maven = running.handle().children().findFirst().orElseThrow();
      running.handle().destroy();

      Finished finished = running.finish();
      assertThat(finished.exitCode()).isEqualTo(130);
      assertThat(finished.errors()).contains("the build was stopped");
      assertThat(maven.isAlive()).isFalse();
    }
    assertThat(workshop.run("check").exitCode()).isZero();
  }

  @Test
  void showsTheEndOfTheLogWhenTheBuildFailsAndKeepsTheFormerProgram() throws Exception {
    workshop.run("demo");
    workshop.buildsBadly(true);
    workshop.changeASource();

    Finished demo = workshop.run("demo");
    Finished check = workshop.run("check");

    assertThat(demo.exitCode()).isEqualTo(COULD_NOT_START);
    assertThat(demo.errors()).contains("a made-up failure", "could not be built", "build.log");
    assertThat(demo.output()).isEmpty();
    assertThat(check.output()).contains("edition 1");

    workshop.buildsBadly(false);
    assertThat(workshop.run("demo").exitCode()).isZero();
  }

  @Test
  void saysSoWhenItMayNotWrite() throws Exception {
    Files.writeString(workshop.root().resolve(".build"), "in the way");

    Finished finished = workshop.run("check");

    assertThat(finished.exitCode()).isEqualTo(COULD_NOT_START);
    assertThat(finished.errors()).contains("may not write in", ".build", "copy the folder");
    assertThat(workshop.mavenRuns()).isZero();
  }

  @Test
  void saysWhatToInstallWithoutAJdkThatIsNewEnough() throws Exception {
    String script = Files.readString(workshop.launcher());
    Files.writeString(workshop.launcher(), script.replace("least_jdk=25", "least_jdk=99"));

    Finished finished = workshop.run("check");

    assertThat(finished.exitCode()).isEqualTo(COULD_NOT_START);
    assertThat(finished.errors()).contains("needs a JDK of release 99 or newer", "JAVA_HOME");
  }

  private void assertThatTwoAtOnceBuildOnce() throws IOException, InterruptedException {
    try (Running one = workshop.start("check");
        Running other = workshop.start("check")) {
      Finished first = one.finish();
      Finished second = other.finish();

      assertThat(first.output()).contains("edition 1");
      assertThat(second.output()).contains("edition 1");
      assertThat(first.errors() + second.errors()).containsOnlyOnce("waiting for it");
    }
    assertThat(workshop.mavenRuns()).isEqualTo(1);
  }

  private void awaitMaven() throws IOException, InterruptedException {
    Path part = workshop.root().resolve("cli/target/launcher/keenward-cli-0.1.0.jar.part");
    for (int turn = 0; turn < 600 && !Files.exists(part); turn++) {
      Thread.sleep(20);
    }
    assertThat(part).exists();
  }

  private List<Path> programs() throws IOException {
    try (Stream<Path> entries = Files.list(workshop.root().resolve(".build/program"))) {
      return entries.filter(Files::isDirectory).toList();
    }
  }
}
