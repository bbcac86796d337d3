package keenward.endtoend.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import keenward.endtoend.Repository;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A reader who types what the pages say gets what the pages show. */
class CommandLinesTest {

  private static final Path README = Repository.root().resolve("README.md");
  private static final Path FIRST_PLAN = Repository.root().resolve("docs/guide/first-plan.md");
  private static final Path OWN_LIST = Repository.root().resolve("docs/guide/own-list.md");
  private static final Path TRACE = Repository.root().resolve("docs/guide/trace.md");
  private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z-]+");
  private static final Pattern COMMAND_ROW =
      Pattern.compile("^\\| `([a-z-]+(?: show)?)[^`]*` \\|", Pattern.MULTILINE);

  @TempDir private Path folder;

  /** `./verify` runs this very test; `./keenward demo` serves until it is stopped. */
  @Test
  void theReadmesCommandLinesPrintWhatItShows() throws Exception {
    try (Transcript transcript = new Transcript(folder, Set.of("./keenward demo", "./verify"))) {
      transcript.follow(README);

      assertThat(transcript.commandsRun()).isGreaterThan(10);
    }
    assertThat(folder.resolve("out/kiosk/pack.pdf")).isNotEmptyFile();
  }

  @Test
  void theGuidesPlanGrowsAsTheGuideSays() throws Exception {
    try (Transcript transcript = new Transcript(folder, Set.of())) {
      transcript.follow(FIRST_PLAN);

      assertThat(transcript.commandsRun()).isGreaterThan(10);
    }
    assertThat(folder.resolve("out/kiosk/floor-1.svg")).isNotEmptyFile();
  }

  @Test
  void aListBecomesAPlanAndComesBackAsTheGuideSays() throws Exception {
    try (Transcript transcript = new Transcript(folder, Set.of())) {
      transcript.follow(OWN_LIST);

      assertThat(transcript.commandsRun()).isEqualTo(3);
    }
    assertThat(folder.resolve("nursery.xlsx")).isNotEmptyFile();
  }

  @Test
  void aPictureIsTracedAsTheGuideSays() throws Exception {
    try (Transcript transcript = new Transcript(folder, Set.of())) {
      transcript.follow(TRACE);

      assertThat(transcript.commandsRun()).isEqualTo(1);
    }
    assertThat(folder.resolve("boathouse.svg")).content().contains("data:image/png");
  }

  @Test
  void theFirstPlanHasFiveLinesInReadmeAndGuide() throws IOException {
    String plan =
        Block.in(Files.readString(README)).stream()
            .filter(block -> block.language().equals("yaml"))
            .findFirst()
            .orElseThrow()
            .text();

    assertThat(plan.lines()).hasSize(5);
    assertThat(Files.readString(FIRST_PLAN)).contains(plan);
  }

  @Test
  void theReadmeLeadsWithTheTwoCommandsWithinItsFirstScreen() throws IOException {
    List<String> lines = Files.readAllLines(README);

    assertThat(lines.subList(0, 24))
        .anyMatch(line -> line.startsWith("./keenward demo"))
        .anyMatch(line -> line.startsWith("./verify"));
  }

  @Test
  void theReadmeHasARowForEachCommandAndNoOther() throws IOException {
    Set<String> rows = new TreeSet<>();
    COMMAND_ROW.matcher(section("## Commands")).results().forEach(row -> rows.add(row.group(1)));
    Set<String> commands = new TreeSet<>(Program.commandLine().getSubcommands().keySet());
    assertThat(commands.remove("papers")).as("the second name of job").isTrue();
    assertThat(commands.remove("plan")).isTrue();
    commands.add("plan show");

    assertThat(rows).isEqualTo(commands);
  }

  @Test
  void eachOptionThatTheReadmeNamesExists() throws IOException {
    Set<String> options = new TreeSet<>();
    collect(Program.commandLine(), options);
    Set<String> named = new TreeSet<>();
    OPTION.matcher(Files.readString(README)).results().map(MatchResult::group).forEach(named::add);

    assertThat(named).hasSizeGreaterThan(8).isSubsetOf(options);
  }

  @Test
  void theReadmeNamesEachOption() throws IOException {
    Set<String> options = new TreeSet<>();
    collect(Program.commandLine(), options);
    options.remove("--version");

    assertThat(section("## Commands")).contains(options);
  }

  private static void collect(CommandLine command, Set<String> options) {
    command
        .getCommandSpec()
        .options()
        .forEach(option ->
            Set.of(option.names()).stream()
                .filter(name -> name.startsWith("--"))
                .forEach(options::add));
    for (Map.Entry<String, CommandLine> each : command.getSubcommands().entrySet()) {
      collect(each.getValue(), options);
    }
  }

  private static String section(String heading) throws IOException {
    String page = Files.readString(README);
    int begin = page.indexOf(heading + "\n");
    assertThat(begin).as(heading).isNotNegative();
    int end = page.indexOf("\n## ", begin + heading.length());
    return page.substring(begin, end < 0 ? page.length() : end);
  }
}
