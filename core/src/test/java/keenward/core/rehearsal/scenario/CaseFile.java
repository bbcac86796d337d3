package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Systems;
import keenward.core.rehearsal.TimingSetting;

/**
 * An executable scenario: a script about the test system, preceded by lines that say which
 * behaviours it shows ({@code rows}) and how the system differs from the usual one ({@code given}).
 */
record CaseFile(String name, List<String> rows, SystemModel model, String script) {

  private static final Path FOLDER = Path.of("src/test/resources/rehearsal/cases");

  static List<CaseFile> all() {
    try (Stream<Path> paths = Files.list(FOLDER)) {
      return paths.sorted().map(CaseFile::read).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static CaseFile read(Path path) {
    List<String> rows = new ArrayList<>();
    SystemModel model = Systems.ofTheCases();
    StringBuilder script = new StringBuilder();
    try {
      for (String line : Files.readAllLines(path)) {
        boolean ours = line.startsWith("rows ") || line.startsWith("given ");
        if (line.startsWith("rows ")) {
          rows.addAll(List.of(line.substring(5).split(" ")));
        } else if (ours) {
          model = given(model, line.substring(6));
        }
        // An empty line keeps the numbers of the others.
        script.append(ours ? "" : line).append('\n');
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return new CaseFile(path.getFileName().toString(), rows, model, script.toString());
  }

  private static SystemModel given(SystemModel model, String words) {
    String name = words.substring(words.indexOf('"') + 1, words.lastIndexOf('"'));
    String value = words.substring(words.lastIndexOf('"') + 1).strip();
    if (words.startsWith("system ")) {
      assertThat(name).isEqualTo("arming by itself");
      return Systems.armingByItself().with(model.options()).with(model.timings());
    }
    if (words.startsWith("option ")) {
      for (Option option : Option.values()) {
        if (option.word().equals(name)) {
          return model.with(model.options().with(option, value.equals("yes")));
        }
      }
    }
    for (TimingSetting setting : TimingSetting.values()) {
      if (words.startsWith("timing ") && setting.word().equals(name)) {
        int seconds = Integer.parseInt(value.substring(0, value.indexOf(' ')));
        return model.with(model.timings().with(setting, seconds * TimeText.SECOND));
      }
    }
    throw new IllegalArgumentException("given " + words);
  }

  @Override
  public String toString() {
    return name;
  }
}
