package keenward.core.rehearsal.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import keenward.core.Golden;
import keenward.core.rehearsal.Behaviour;
import keenward.core.rehearsal.Option;
import keenward.core.rehearsal.TimingSetting;
import org.junit.jupiter.api.Test;

/** The tables of the method page are those of the program. */
class SemanticsPageTest {

  private static final Path PAGE = Path.of("../docs/methods/rehearsal.md");

  @Test
  void saysWhatTheProgramDoes() {
    String page = PageParts.read(PAGE);
    page = PageParts.filled(page, "settings", settings());
    page = PageParts.filled(page, "choices", choices());
    page = PageParts.filled(page, "semantics", semantics());
    page = PageParts.filled(page, "cases", cases());
    Golden.assertSame(PAGE, page);
  }

  private static String settings() {
    StringBuilder table =
        new StringBuilder(
            "| setting | what it is | default | source |\n| --- | --- | --- | --- |\n");
    for (TimingSetting setting : TimingSetting.values()) {
      boolean count = setting == TimingSetting.WRONG_CODE_LIMIT;
      String value =
          count ? Integer.toString(setting.standard()) : TimeText.length(setting.standard());
      row(table, setting.word(), setting.meaning(), value, setting.source());
    }
    return table.toString();
  }

  private static String choices() {
    StringBuilder table =
        new StringBuilder("| choice | what it means | default |\n| --- | --- | --- |\n");
    for (Option option : Option.values()) {
      row(table, option.word(), option.meaning(), option.standard() ? "yes" : "no");
    }
    return table.toString();
  }

  private static String semantics() {
    StringBuilder table =
        new StringBuilder(
            "| id | event | condition | effect | source |\n| --- | --- | --- | --- | --- |\n");
    for (Behaviour each : Behaviour.values()) {
      row(table, each.id(), each.event(), each.condition(), each.effect(), each.source());
    }
    return table.toString();
  }

  private static String cases() {
    StringBuilder table =
        new StringBuilder("| scenario | what it shows | rows |\n| --- | --- | --- |\n");
    for (CaseFile file : CaseFile.all()) {
      String title = file.script().substring(2, file.script().indexOf('\n'));
      List<String> rows = new ArrayList<>(file.rows());
      row(table, file.name().replace(".scenario", ""), title, String.join(" ", rows));
    }
    return table.toString();
  }

  private static void row(StringBuilder table, String... cells) {
    table.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }
}
