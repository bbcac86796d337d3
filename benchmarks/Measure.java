import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Measures whole processes side by side and prints Markdown: {@code java benchmarks/Measure.java}, from the repository's
 * folder, on Linux, with the program built and JDK 25 first in PATH. Runs of what is compared take turns, so that a busy moment hits all of them.
 */
public final class Measure {

  private static final int TURNS = 5;

  /** A command, with what it took. */
  private static final class Run {
    final String name;
    final List<String> command;
    final List<Double> seconds = new ArrayList<>();
    long mostKibibytes;

    Run(String name, String... command) {
      this.name = name;
      this.command = List.of(command);
    }

    double median() {
      return seconds.stream().sorted().skip(seconds.size() / 2).findFirst().orElseThrow();
    }
  }

  public static void main(String[] arguments) throws Exception {
    Path work = Files.createTempDirectory("keenward-measure");
    String keenward = Path.of("keenward").toAbsolutePath().toString();
    String java = ProcessHandle.current().info().command().orElse("java");
    Files.writeString(
        work.resolve("Hello.java"),
        "public class Hello { public static void main(String[] a) { System.out.println(\"hello\"); } }\n");
    once(new Run("", java + "c", "-d", work.toString(), work.resolve("Hello.java").toString()));

    List<Run> starts =
        List.of(
            new Run("a JVM that says hello", java, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", work.toString(), "Hello"),
            new Run("`keenward --version`", keenward, "--version"),
            new Run("`keenward rules`", keenward, "rules"));
    compare("Start-up", starts, 0, "times the first");

    List<Run> checks = new ArrayList<>();
    List<Integer> sizes = List.of(64, 256, 1024, 4096);
    for (int zones : sizes) {
      String site = work.resolve("sample-" + zones + ".site.yaml").toString();
      once(new Run("", keenward, "sample", "--zones", String.valueOf(zones), "--out", site));
      checks.add(new Run("`check`, " + zones + " zones", keenward, "check", site));
    }
    compare("Checking", checks, 0, "times the first");
    double growth =
        (checks.get(3).median() - checks.get(2).median()) / (checks.get(2).median() - checks.get(1).median());
    System.out.printf(
        Locale.ROOT,
        "From 1,024 to 4,096 zones `check` takes %.1f times what it takes from 256 to 1,024; in a straight line it would be 4.0.%n%n",
        growth);

    List<Run> jobs = new ArrayList<>();
    List<String> all = new ArrayList<>(List.of(keenward, "job", "--out", work.toString()));
    for (String site : List.of("bakery/quayside-bakery", "boathouse/weir-lane-boathouse", "clinic/heron-lane-vets")) {
      String file = "demo/" + site + ".site.yaml";
      all.add(file);
      jobs.add(new Run("`job` of " + site, keenward, "job", "--out", work.toString(), file));
    }
    jobs.addFirst(new Run("`job` of all three", all.toArray(new String[0])));
    compare("The whole job", jobs, 0, "of all three");
  }

  private static void compare(String title, List<Run> runs, int base, String ratio) throws Exception {
    for (int turn = 0; turn <= TURNS; turn++) {
      for (Run run : runs) {
        once(run);
      }
      if (turn == 0) {
        // The first turn fills the machine's caches.
        runs.forEach(run -> run.seconds.clear());
      }
    }
    System.out.printf("### %s%n%n| what | median of %d | %s | most memory |%n| --- | --- | --- | --- |%n", title, TURNS, ratio);
    for (Run run : runs) {
      System.out.printf(
          Locale.ROOT,
          "| %s | %.2f s | %.2f | %d MB |%n",
          run.name, run.median(), run.median() / runs.get(base).median(), run.mostKibibytes / 1024);
    }
    System.out.println();
  }

  private static void once(Run run) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(run.command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
    while (!process.waitFor(20, TimeUnit.MILLISECONDS)) {
      run.mostKibibytes = Math.max(run.mostKibibytes, peak(status));
    }
    run.seconds.add((System.nanoTime() - start) / 1e9);
    if (process.exitValue() > 1) {
      throw new IllegalStateException(String.join(" ", run.command) + " ended with " + process.exitValue());
    }
  }

  /** The peak of resident memory so far, as Linux keeps it. */
  private static long peak(Path status) {
    try {
      return Files.readAllLines(status).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .map(line -> Long.valueOf(line.replaceAll("[^0-9]", "")))
          .findFirst()
          .orElse(0L);
    } catch (IOException gone) {
      return 0;
    }
  }
}
