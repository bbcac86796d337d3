package keenward.usecases.panel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.lint.Linter;
import keenward.files.Problem;
import keenward.files.panel.PanelDescriptionReader;
import keenward.files.panel.PanelFileName;
import keenward.files.panel.PanelReading;
import keenward.files.yaml.YamlDocument;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * Finds the panel description of a site: by its path, or by its name among the descriptions beside
 * the plan and those that ship. A description is read and proved sound once for as long as its
 * bytes stay the same.
 */
public final class PanelFinder {

  private final Path shipped;
  private final Map<String, PanelDescription> sound = new ConcurrentHashMap<>();

  /**
   * A finder.
   *
   * @param shipped folder of the descriptions that ship
   */
  public PanelFinder(Path shipped) {
    this.shipped = shipped;
  }

  /**
   * The panel of a site.
   *
   * @param override name or path that stands in for the plan's own; null for none
   * @throws BadInput when a description is there but cannot be used
   */
  public PanelInUse find(SiteFile site, @Nullable String override) throws BadInput {
    String wanted = override != null ? override : site.plan().panel().description().orNull();
    if (wanted == null) {
      return new PanelInUse.Undescribed(
          "the plan names no panel description", "panel: { description: ... }");
    }
    Path folder =
        Optional.ofNullable(site.path().toAbsolutePath().getParent()).orElse(Path.of("."));
    if (wanted.endsWith(PanelFileName.ENDING)) {
      Path beside = folder.resolve(wanted);
      return load(override != null && !Files.exists(beside) ? Path.of(wanted) : beside);
    }
    List<Path> files = new ArrayList<>(descriptionsIn(folder));
    files.addAll(descriptionsIn(shipped));
    List<String> names = new ArrayList<>();
    for (Path file : files) {
      PanelReading reading = read(file, InputBytes.read(file, "a panel description"));
      Optional<PanelDescription> description = reading.description();
      if (description.isPresent()) {
        if (description.get().panel().equals(wanted)) {
          return load(file);
        }
        names.add(description.get().panel());
      } else if (file.endsWith(PanelFileName.of(wanted))) {
        // It is the one that is meant, so what is wrong in it is the answer.
        throw new BadInput(reading.problems());
      }
    }
    if (override != null) {
      throw new BadInput(
          "--panel",
          "no panel description has the name '" + wanted + "'",
          names.isEmpty() ? "a path to a *.panel.yaml" : String.join(", ", names),
          "name one of those, or a path that ends in .panel.yaml");
    }
    return new PanelInUse.Undescribed(
        "no description of '" + wanted + "' was found beside the plan or in " + shipped,
        "write one from the panel's manual; see docs/reference/panel-description.md");
  }

  private PanelInUse load(Path file) throws BadInput {
    byte[] bytes = InputBytes.read(file, "a panel description (*.panel.yaml)");
    String hash = InputBytes.sha256(bytes);
    PanelDescription known = sound.get(hash);
    if (known != null) {
      return new PanelInUse.Described(known, file, hash);
    }
    PanelReading reading = read(file, bytes);
    PanelDescription description =
        reading.description().orElseThrow(() -> new BadInput(reading.problems()));
    YamlDocument document = reading.document().orElseThrow();
    var report = Linter.lint(description);
    if (!report.fit()) {
      List<Problem> problems = PanelDescriptionReader.problems(document, report);
      throw new BadInput(problems);
    }
    sound.put(hash, description);
    return new PanelInUse.Described(description, file, hash);
  }

  private static PanelReading read(Path file, byte[] bytes) {
    return PanelDescriptionReader.read(file.toString(), bytes);
  }

  private static List<Path> descriptionsIn(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(PanelFileName.ENDING)).sorted().toList();
    } catch (IOException failure) {
      throw new UncheckedIOException("the folder " + folder + " cannot be listed", failure);
    }
  }
}
