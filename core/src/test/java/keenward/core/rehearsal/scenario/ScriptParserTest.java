package keenward.core.rehearsal.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import keenward.core.plan.ArmingMode;
import keenward.core.rehearsal.Input;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.Systems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScriptParserTest {

  private static final SystemModel MODEL = Systems.ofTheCases();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "opne D1 | 1:1: opne; expected what happens, perhaps open",
        "open \"hall dor\" | 1:6: there is no zone \"hall dor\"; expected the name of a zone, perhaps \"hall door\"",
        "open Q | 1:6: there is no zone \"Q\"; expected the name of a zone",
        "open \"nothing like any of them\" | 1:6: there is no zone \"nothing like any of them\"; expected the name of a zone",
        "open zone 77 | 1:11: there is no zone 77; expected the number of a zone",
        "open | 1:5: the line ends here; expected the name of a zone",
        "open \"D1 | 1:6: a quote is not closed; expected \" at the end of the name",
        "open D1 now | 1:9: now; expected the end of the line",
        "open D1 for | 1:12: the line ends here; expected a length of time such as 3 s, 2 min or 1 h",
        "open D1 for 3 parsecs | 1:13: 3; expected a length of time such as 3 s, 2 min or 1 h",
        "open D1 for 0.05 s | 1:13: 0.05; expected a time to a tenth of a second",
        "wait 40 d | 1:6: 40; expected at most 31 days",
        "code Anna at KA | 1:6: there is no user \"Anna\"; expected the name of a user, perhaps \"Ann\"",
        "code Ann at KX | 1:13: there is no keypad \"KX\"; expected the name of a keypad, perhaps \"KA\"",
        "arm off by Ann | 1:5: off; expected away, stay or night",
        "arm away Ann | 1:10: there is no partition \"Ann\"; expected the name of a partition",
        "arm away A | 1:11: the line ends here; expected the word \"by\"",
        "wrong code at KA 200 times | 1:18: 200; expected how many times, 1 to 100",
        "power water off | 1:7: water; expected mains or battery",
        "cell D1 empty | 1:9: empty; expected low or good",
        "clock forward 30 h | 1:15: 30 h; expected less than a day",
        "programming close | 1:13: close; expected open or leave",
        "25:00:00 open D1 | 1:1: 25:00:00; expected a time such as 07:58:00, day 2 00:10:00 or t+20",
        "07:60 open D1 | 1:1: 07:60; expected a time such as 07:58:00, day 2 00:10:00 or t+20",
        "day 0 07:00 open D1 | 1:5: 0; expected the number of a day, 1 to 31",
        "t+x open D1 | 1:1: t+x; expected t+ and seconds, such as t+20",
        "expect signal 134 | 1:15: 134; expected qualifier and event code, four digits such as 1134",
        "expect signal 1134 at | 1:20: at; expected zone, user or partition",
        "expect sounder loud | 1:16: loud; expected silent, medical, burglary, \"carbon monoxide\" or fire",
        "expect A asleep | 1:10: asleep; expected the word \"armed\"",
        "expect | 1:7: the line ends here; expected what is expected, such as signal 1134, sounder burglary, strobe on, shows \"text\", or a partition and armed away",
        "07:58:00 | 1:9: the line ends here; expected what happens, such as open, close, code or arm",
      })
  void saysWhatIsWrongAndWhatWouldBeRight(String line, String problem) {
    assertThat(problems(line)).containsExactly(problem);
  }

  @Test
  void findsEveryMistakeInOneGo() {
    assertThat(problems("open X1\n\nclose D1\nwiat 3 s # and so on\ncode Zed\n"))
        .containsExactly(
            "1:6: there is no zone \"X1\"; expected the name of a zone, perhaps \"D1\"",
            "4:1: wiat; expected what happens, perhaps wait",
            "5:6: there is no user \"Zed\"; expected the name of a user, perhaps \"Ben\"");
  }

  @Test
  void countsColumnsInCharacters() {
    assertThat(problems("  open \"\ud83d\udd14\" x"))
        .containsExactly("1:8: there is no zone \"\ud83d\udd14\"; expected the name of a zone");
  }

  @Test
  void refusesTimesThatRunBackwards() {
    assertThat(problems("07:58:00 open D1\n07:57:59 close D1\nday 2 00:10 close D1"))
        .containsExactly(
            "2:1: 07:57:59 is before the start at 07:58:00; expected a time after the start; the next day is day 2");
    assertThat(problems("07:58:00 open D1\n08:10 close D1\n08:00 open D1"))
        .containsExactly(
            "3:1: 08:00:00 is earlier than 08:10:00; expected a time that is not earlier than the line before; the next day is day 2");
    assertThat(problems("open D1\nstart 07:00"))
        .containsExactly(
            "2:7: the script has started already; expected the start before everything else");
  }

  @Test
  void refusesControlCharacters() {
    assertThat(problems("open \"D\u00071\""))
        .containsExactly("1:8: a control character; expected letters that can be seen");
  }

  @Test
  void refusesWhatIsTooLong() {
    assertThat(problems("#".repeat(2_000_000)))
        .containsExactly("1:1: a script of 2000000 characters; expected at most 1048576");
    assertThat(problems("\n".repeat(30_000)))
        .containsExactly("1:1: a script of 30001 lines; expected at most 20000");
  }

  @Test
  void readsEveryStatement() {
    List<Input> inputs =
        inputs(
            """
            # a comment
            start 07:00
            07:58:00 open D1 for 3 s
            violate zone 3
            restore "motion"   # by name
            press counter
            tamper "HALL DOOR" for 1 min
            mend window
            lose "radio window"
            hear "radio window"
            cell window low
            code Ann at KA
            wrong code at KB 2 times
            arm away by Ann at KA forced
            arm night A by Ann
            disarm B by Ben at KB
            bypass window by Ann
            end bypass window by Ann at KA
            isolate window by Tec
            end isolation window by Tec
            reset by Ann at KA
            postpone arming 30min by Ann
            clock back 1 h
            power mains off
            power battery good
            programming open
            programming leave
            wait 2 min
            restart
            """);
    assertThat(inputs)
        .containsExactly(
            new Input.ZoneOpened(0),
            new Input.ZoneOpened(2),
            new Input.ZoneClosed(2),
            new Input.ZoneOpened(8),
            new Input.LidOpened(27),
            new Input.LidShut(4),
            new Input.RadioLost(25),
            new Input.RadioHeard(25),
            new Input.Cell(4, true),
            new Input.Code(0, 0),
            new Input.WrongCode(1),
            new Input.WrongCode(1),
            new Input.Arm(0, 0, SystemModel.NONE, ArmingMode.AWAY, true),
            new Input.Arm(0, SystemModel.NONE, 0, ArmingMode.NIGHT, false),
            new Input.Disarm(1, 1, 1),
            new Input.Bypass(0, SystemModel.NONE, 4),
            new Input.EndBypass(0, 0, 4),
            new Input.Isolate(5, 4, true),
            new Input.Isolate(5, 4, false),
            new Input.Reset(0, 0),
            new Input.PostponeArming(0, SystemModel.NONE, 18_000),
            new Input.ClockSet(-36_000),
            new Input.Mains(false),
            new Input.Battery(false),
            new Input.Programming(true),
            new Input.Programming(false),
            new Input.ZoneClosed(8), // the button is held 2 s
            new Input.ZoneClosed(0),
            new Input.LidShut(27),
            new Input.Restart());
  }

  @Test
  void startsWithItsFirstTime() {
    Script script =
        ScriptParser.parse("07:58:00.5 open D1\nday 2 07:58 close D1\n", MODEL)
            .script()
            .orElseThrow();
    assertThat(script.startTenths()).isEqualTo(286_805);
    assertThat(script.events()).extracting(Script.Event::atTenths).containsExactly(0, 863_995);
  }

  @Test
  void asksForANumberWhereANameIsNotEnough() {
    List<keenward.core.rehearsal.ZoneModel> zones =
        List.of(
            MODEL.zones().get(0),
            keenward.core.rehearsal.ZoneModel.of(
                40, "D1", keenward.core.plan.ZoneResponse.PERIMETER, 131));
    SystemModel doubled =
        new SystemModel(
            MODEL.partitions(),
            zones,
            MODEL.users(),
            MODEL.keypads(),
            List.of(),
            MODEL.timings(),
            MODEL.options());
    assertThat(ScriptParser.parse("open D1", doubled).problems())
        .extracting(ScriptProblem::text)
        .containsExactly("1:6: 2 zones are named \"D1\"; expected its number, such as zone 1");
    assertThat(ScriptParser.parse("open zone 40", doubled).problems()).isEmpty();
  }

  @Test
  void neverThrowsWhateverItReads() {
    List<CaseFile> files = CaseFile.all();
    for (int seed = 0; seed < 3000; seed++) {
      Random random = new Random(seed);
      CaseFile file = files.get(random.nextInt(files.size()));
      StringBuilder text = new StringBuilder(file.script());
      int changes = 1 + random.nextInt(8);
      for (int change = 0; change < changes; change++) {
        mutate(text, random);
      }
      ParsedScript parsed;
      try {
        parsed = ScriptParser.parse(text.toString(), file.model());
      } catch (RuntimeException thrown) {
        throw new AssertionError("seed " + seed + ": " + text, thrown);
      }
      assertThat(parsed.script().isPresent())
          .as("seed %d", seed)
          .isEqualTo(parsed.problems().isEmpty());
    }
  }

  private static void mutate(StringBuilder text, Random random) {
    int at = random.nextInt(text.length() + 1);
    int length = Math.min(random.nextInt(12), text.length() - at);
    switch (random.nextInt(3)) {
      case 0 -> text.delete(at, at + length);
      case 1 -> text.insert(at, (char) random.nextInt(0x3000));
      default -> text.insert(at, text.substring(at, at + length));
    }
  }

  private static List<String> problems(String text) {
    return ScriptParser.parse(text, MODEL).problems().stream().map(ScriptProblem::text).toList();
  }

  private static List<Input> inputs(String text) {
    ParsedScript parsed = ScriptParser.parse(text, MODEL);
    assertThat(parsed.problems()).isEmpty();
    return parsed.script().orElseThrow().events().stream().map(Script.Event::input).toList();
  }
}
