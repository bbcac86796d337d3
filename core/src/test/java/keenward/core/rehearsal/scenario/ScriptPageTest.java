package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import keenward.core.Golden;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.EntryDelays;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.RehearsalOptions;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Timings;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;
import org.junit.jupiter.api.Test;

/** The example of the reference page runs, and what it prints is what the page says. */
class ScriptPageTest {

  private static final Path PAGE = Path.of("../docs/reference/scenario-script.md");

  private static final SystemModel SHOP =
      new SystemModel(
          List.of(PartitionModel.of(1, "Shop")),
          List.of(
              ZoneModel.of(1, "Shop door", ZoneResponse.ENTRY_EXIT, 134)
                  .delayed(EntryDelays.always(300)),
              ZoneModel.of(2, "Shop motion", ZoneResponse.FOLLOWER, 132)),
          List.of(UserModel.of(1, "Anna", 0)),
          List.of(new KeypadModel("Shop keypad", KeypadModel.Kind.KEYPAD, Set.of(0))),
          List.of(),
          Timings.standard(),
          RehearsalOptions.standard());

  @Test
  void showsWhatComesOfItsExample() {
    String page = PageParts.read(PAGE);
    String mark = "```scenario\n";
    int from = page.indexOf(mark) + mark.length();
    String script = page.substring(from, page.indexOf("```", from));
    ParsedScript parsed = ScriptParser.parse(script, SHOP);
    assertThat(parsed.problems()).isEmpty();
    Rehearsal.Result result = Rehearsal.run(SHOP, parsed.script().orElseThrow());
    assertThat(result.unmet()).isEmpty();
    page = PageParts.filled(page, "timeline", "```\n" + result.timeline().text(true) + "```\n");
    page = PageParts.filled(page, "mistakes", mistakes());
    Golden.assertSame(PAGE, page);
  }

  private static String mistakes() {
    String script =
        """
        07:58:00 open "Shop dor"
        07:57:00 code Anna at "Shop keypad"
        arm of by Anna
        """;
    StringBuilder text = new StringBuilder("```\n").append(script).append("```\n\n```\n");
    for (ScriptProblem problem : ScriptParser.parse(script, SHOP).problems()) {
      text.append("morning.script:").append(problem.text()).append('\n');
    }
    return text.append("```\n").toString();
  }
}
