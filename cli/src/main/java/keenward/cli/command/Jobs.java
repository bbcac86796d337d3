package keenward.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.cli.json.Json;
import keenward.cli.text.CheckText;
import keenward.cli.text.JobText;
import keenward.cli.text.OrderText;
import keenward.cli.text.RehearsalText;
import keenward.cli.text.TestPlanText;
import keenward.usecases.job.JobOptions;
import keenward.usecases.job.Keenward;
import keenward.usecases.job.SiteJob;
import keenward.usecases.pack.ResultFolder;
import keenward.usecases.pack.Sheet;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;

/** Runs the whole job for several sites and writes a folder for each. */
final class Jobs {

  private final Surroundings surroundings;
  private final List<String> problems = new ArrayList<>();
  private final List<SiteJob> done = new ArrayList<>();

  Jobs(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** The jobs that were done. */
  List<SiteJob> done() {
    return done;
  }

  /**
   * Does every site that can be done, says what is wrong with the others, and prints the summary.
   *
   * @return exit code
   */
  int run(List<Path> sites, JobOptions options, Path out, Sheet size, boolean json)
      throws IOException {
    Keenward keenward = surroundings.keenward();
    List<Map<String, Object>> summaries = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    try (ProgressLine progress = new ProgressLine(surroundings)) {
      for (Path site : sites) {
        try {
          SiteFile file = SiteFiles.load(site);
          if (!names.add(file.shortName())) {
            throw new BadInput(
                site.toString(),
                "another site of this run has the short name '" + file.shortName() + "'",
                "file names that differ",
                "rename one, or run them into different folders");
          }
          SiteJob job = keenward.job(file, options, progress);
          Path folder = ResultFolder.write(job, out, size, texts(job), progress);
          done.add(job);
          summaries.add(JobText.summary(job, folder));
        } catch (BadInput bad) {
          problems.addAll(bad.messages());
        }
      }
    }
    surroundings.out().print(json ? Json.text(summaries) : JobText.of(summaries));
    surroundings.out().flush();
    problems.forEach(surroundings.err()::println);
    return problems.isEmpty() ? verdict() : Exit.BAD_INPUT;
  }

  private int verdict() {
    return done.stream().anyMatch(job -> job.check().hasErrors()) ? Exit.FINDINGS : Exit.FINE;
  }

  private static Map<String, String> texts(SiteJob job) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("result.json", Json.job(job));
    texts.put("findings.txt", CheckText.of(job.site(), job.check()));
    texts.put("key-in.txt", OrderText.of(job.site(), job.keyIn()));
    texts.put("rehearsal.txt", RehearsalText.of(job.site(), job.rehearsal()));
    texts.put("test-plan.txt", TestPlanText.of(job.site(), job.testPlan()));
    return texts;
  }
}
