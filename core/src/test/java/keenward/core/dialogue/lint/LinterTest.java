package keenward.core.dialogue.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Manners;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Template;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.SmallPanel;
import org.junit.jupiter.api.Test;

class LinterTest {
  private static final PanelDescription SOUND = sound();

  /**
   * The small panel as its linter wants it: a way out of every screen, and no key with two
   * meanings.
   */
  private static PanelDescription sound() {
    PanelDescription panel = SmallPanel.description();
    panel = field(panel, "code", LinterTest::writeOnly);
    panel = keys(panel, "code", Map.of());
    panel =
        screen(
            panel,
            "new code",
            screen ->
                new Screen(
                    "new code",
                    true,
                    List.of(new Template(List.of(new Template.Literal("New code")))),
                    Map.of(),
                    Optional.of(
                        new Entry.Coded(
                            new keenward.core.dialogue.description.Target.ToField(
                                new FieldReference.Named("code")),
                            "ok",
                            Action.to("top"),
                            Optional.of(Action.to("top")),
                            Optional.empty())),
                    Map.of(),
                    Optional.empty(),
                    Optional.empty()));
    panel = key(panel, "top", "#", Action.to("new code"));
    panel =
        screen(
            panel,
            "listen",
            screen ->
                lines(
                    screen,
                    new Template.FieldText(new FieldReference.Named("zone.unit"), 0),
                    new Template.FieldText(new FieldReference.Named("zone.part"), 0)));
    return panel;
  }

  private static Field writeOnly(Field field) {
    return new Field(
        field.name(),
        field.record(),
        field.type(),
        field.initial(),
        field.onChange(),
        field.onlyWhen(),
        true,
        field.from());
  }

  private static PanelDescription rebuilt(
      PanelDescription panel,
      List<KeypadKind> keypads,
      List<Field> fields,
      Map<String, Screen> screens,
      Map<String, Leaving> leaving,
      Manners manners) {
    return new PanelDescription(
        panel.panel(),
        panel.family(),
        keypads,
        panel.keyMeanings(),
        panel.capacity(),
        panel.records(),
        fields,
        screens,
        panel.locations(),
        panel.start(),
        leaving,
        manners,
        panel.recovery());
  }

  private static PanelDescription screen(
      PanelDescription panel, String name, UnaryOperator<Screen> change) {
    Map<String, Screen> screens = new LinkedHashMap<>(panel.screens());
    Screen blank =
        new Screen(
            name,
            true,
            List.of(new Template(List.of(new Template.Literal(name)))),
            Map.of(),
            Optional.empty(),
            Map.of(),
            Optional.empty(),
            Optional.empty());
    screens.put(name, change.apply(screens.getOrDefault(name, blank)));
    return rebuilt(
        panel, panel.keypads(), panel.fields(), screens, panel.leaving(), panel.manners());
  }

  private static PanelDescription field(
      PanelDescription panel, String name, UnaryOperator<Field> change) {
    List<Field> fields = new ArrayList<>();
    panel
        .fields()
        .forEach(field -> fields.add(field.name().equals(name) ? change.apply(field) : field));
    return rebuilt(
        panel, panel.keypads(), fields, panel.screens(), panel.leaving(), panel.manners());
  }

  private static Screen lines(Screen screen, Template.Part... parts) {
    return new Screen(
        screen.name(),
        screen.programming(),
        List.of(new Template(List.of(parts))),
        screen.elsewhere(),
        screen.entry(),
        screen.keys(),
        screen.after(),
        screen.decide());
  }

  private static Screen withKeys(Screen screen, Map<String, Action> keys) {
    return new Screen(
        screen.name(),
        screen.programming(),
        screen.lines(),
        screen.elsewhere(),
        screen.entry(),
        keys,
        screen.after(),
        screen.decide());
  }

  private static PanelDescription keys(
      PanelDescription panel, String name, Map<String, Action> keys) {
    return screen(panel, name, screen -> withKeys(screen, keys));
  }

  private static PanelDescription key(
      PanelDescription panel, String name, String key, Action action) {
    return screen(
        panel,
        name,
        screen -> {
          Map<String, Action> keys = new LinkedHashMap<>(screen.keys());
          keys.put(key, action);
          return withKeys(screen, keys);
        });
  }

  private static List<String> errors(PanelDescription panel) {
    return Linter.lint(panel).findings().stream()
        .filter(finding -> finding.severity() == LintSeverity.ERROR)
        .map(finding -> finding.place() + ": " + finding.what())
        .toList();
  }

  @Test
  void aSoundDescriptionHasNoErrors() {
    assertThat(errors(SOUND)).isEmpty();
    LintReport report = Linter.lint(SOUND);
    assertThat(report.fit()).isTrue();
    assertThat(report.complete()).isTrue();
    assertThat(report.waysTo().get("kind"))
        .containsExactly("hold ok", "code:some other", "ok", "1");
    assertThat(report.findings())
        .extracting(LintFinding::what)
        .contains("a way of leaving locks programming, and no recovery is described");
  }

  @Test
  void aScreenThatNothingLeadsToIsFound() {
    assertThat(
            errors(key(screen(SOUND, "attic", screen -> screen), "attic", "ok", Action.to("top"))))
        .containsExactly("/screens/attic: nothing leads to this screen");
  }

  @Test
  void aScreenWithoutASafeWayOutIsFoundWithTheKeysThatLeadThere() {
    PanelDescription trap =
        key(
            key(screen(SOUND, "trap", screen -> screen), "top", "*", Action.to("trap")),
            "trap",
            "ok",
            Action.to("trap"));
    assertThat(errors(trap))
        .containsExactly(
            "/screens/trap: no safe way out from here, after: hold ok, code:some other, *");
  }

  @Test
  void aWayOutThatDependsOnWhatTheMemoryHoldsIsNone() {
    Action onlyWhenWired =
        new Action(
            List.of(
                new Action.Branch(
                    new Condition.FieldIs(
                        new FieldReference.Named("zone.kind"), List.of(new Value.Word("wired"))),
                    List.of(),
                    new Destination.ToScreen("top"))));
    PanelDescription trap =
        key(
            key(screen(SOUND, "trap", screen -> screen), "top", "*", Action.to("trap")),
            "trap",
            "ok",
            onlyWhenWired);
    assertThat(errors(trap))
        .hasSize(1)
        .first()
        .asString()
        .contains("/screens/trap: no safe way out");
  }

  @Test
  void aKeyWithTwoMeaningsIsFound() {
    assertThat(errors(key(SOUND, "kind", "ok", Action.to("top"))))
        .contains("/screens/kind: the key 'ok' means two things: its own and confirm");
    assertThat(errors(key(SOUND, "delay", "7", Action.to("top"))))
        .contains("/screens/delay: the key '7' means two things: its own and a digit");
  }

  @Test
  void aKeyThatNoKeypadHasIsFound() {
    assertThat(errors(key(SOUND, "top", "panic", Action.to("top"))))
        .contains("/screens/top: no keypad has the key 'panic'");
  }

  @Test
  void aFieldThatNoScreenShowsOrWritesIsFound() {
    assertThat(
            errors(
                screen(SOUND, "groups", screen -> lines(screen, new Template.Literal("Groups")))))
        .containsExactly("/memory/zone/groups: no screen shows this field");
    PanelDescription readOnly =
        screen(
            SOUND,
            "groups",
            screen ->
                new Screen(
                    screen.name(),
                    true,
                    screen.lines(),
                    screen.elsewhere(),
                    Optional.empty(),
                    Map.of("ok", Action.to("name"), "back", Action.to("kind")),
                    Optional.empty(),
                    Optional.empty()));
    assertThat(errors(readOnly))
        .containsExactly("/memory/zone/groups: no screen writes this field");
  }

  @Test
  void textThatMayBeTooWideIsFoundAtItsLine() {
    assertThat(
            errors(
                screen(
                    SOUND,
                    "kind",
                    screen ->
                        lines(
                            screen,
                            new Template.Literal("The kind it is: "),
                            new Template.FieldText(new FieldReference.Named("zone.kind"), 0)))))
        .containsExactly(
            "/screens/kind/shows/0: may be 22 characters wide on the 18 of keypad text");
  }

  @Test
  void lampsShowNothingButThemselves() {
    PanelDescription talkative =
        screen(
            SOUND,
            "top",
            screen ->
                new Screen(
                    screen.name(),
                    true,
                    screen.lines(),
                    Map.of(
                        SmallPanel.LAMPS,
                        List.of(new Template(List.of(new Template.Literal("open door 3"))))),
                    screen.entry(),
                    screen.keys(),
                    Optional.empty(),
                    Optional.empty()));
    assertThat(errors(talkative))
        .containsExactly(
            "/screens/top/on/lamps/0: keypad lamps cannot show 'open door 3'",
            "/screens/top/on/lamps/0: needs up to 1 digits; keypad lamps has 0");
  }

  @Test
  void decidingScreensThatLeadInACircleAreFound() {
    PanelDescription circle = decides(decides(SOUND, "one", "two"), "two", "one");
    assertThat(errors(key(circle, "top", "*", Action.to("one"))))
        .contains("/screens/one: leads round to itself without ever showing anything");
  }

  private static PanelDescription decides(PanelDescription panel, String name, String to) {
    return screen(
        panel,
        name,
        screen ->
            new Screen(
                name,
                true,
                List.of(),
                Map.of(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Optional.of(Action.to(to))));
  }

  @Test
  void aBranchThatCanNeverBeTakenIsFound() {
    Action always = Action.to("top");
    Action dead =
        new Action(
            List.of(
                always.branches().get(0),
                new Action.Branch(
                    new Condition.Locked(), List.of(), new Destination.ToScreen("delay"))));
    assertThat(errors(key(SOUND, "twice", "ok", dead)))
        .contains(
            "/screens/twice: a branch can never be taken, because an earlier one always is when it would be");
  }

  @Test
  void leadingOutOfProgrammingWithoutAWayOfLeavingIsFound() {
    assertThat(errors(key(SOUND, "top", "*", Action.to("ready"))))
        .contains("/screens/top: leads out of programming to 'ready' without a way of leaving");
  }

  @Test
  void aWayOfLeavingThatNoKeyLeadsToIsFound() {
    assertThat(errors(key(SOUND, "top", "back", Action.to("top"))))
        .containsExactly("/leaving/slamming: no key leads to this way of leaving");
  }

  @Test
  void twoItemsThatLookTheSameAreFound() {
    Entry.Menu menu =
        new Entry.Menu(
            List.of(
                new Entry.Item("Zones", Action.to("zone number")),
                new Entry.Item("Zones", Action.to("delay"))),
            "down",
            "up",
            true,
            "ok");
    assertThat(
            errors(
                screen(
                    SOUND,
                    "top",
                    screen ->
                        new Screen(
                            screen.name(),
                            true,
                            screen.lines(),
                            screen.elsewhere(),
                            Optional.of(menu),
                            screen.keys(),
                            Optional.empty(),
                            Optional.empty()))))
        .contains("/screens/top: two choices of the menu look the same: 'Zones'");
  }

  @Test
  void aLagAsLongAsTheIdleTimeIsFound() {
    KeypadKind slow =
        new KeypadKind(
            "slow", KeypadKind.Shows.TEXT, 2, 20, List.of(), 0, Map.of("ok", 0), 600, true, 0);
    List<KeypadKind> keypads = new ArrayList<>(SOUND.keypads());
    keypads.add(slow);
    assertThat(
            errors(
                rebuilt(
                    SOUND,
                    keypads,
                    SOUND.fields(),
                    SOUND.screens(),
                    SOUND.leaving(),
                    SOUND.manners())))
        .contains("/keypads/slow/lag: programming drops out before the next key is heard");
  }

  @Test
  void wordsOfThePlanThatAFieldLacksAreNoted() {
    PanelDescription planned =
        field(
            SOUND,
            "zone.kind",
            field ->
                new Field(
                    field.name(),
                    field.record(),
                    field.type(),
                    field.initial(),
                    field.onChange(),
                    field.onlyWhen(),
                    false,
                    Optional.of(
                        new PlanSource.OneFact("zone.wiring", Map.of("bus", "cable"), false))));
    assertThat(Linter.lint(planned).findings())
        .extracting(finding -> finding.severity() + " " + finding.place() + ": " + finding.what())
        .contains(
            "NOTE /memory/zone/kind: has no word for bus of zone.wiring",
            "ERROR /memory/zone/kind/words: 'cable' is none of the field's own words");
  }

  @Test
  void aScreenBehindTheLastOfManyRecordsIsReached() {
    Action onwards =
        new Action(
            List.of(
                new Action.Branch(
                    new Condition.RecordIs("zone", 3),
                    List.of(),
                    new Destination.ToScreen("the end")),
                new Action.Branch(
                    Condition.ALWAYS,
                    List.of(new Effect.MoveRecord("zone", Effect.Move.NEXT, false)),
                    new Destination.Stay())));
    PanelDescription panel =
        key(
            key(screen(SOUND, "the end", screen -> screen), "kind", "#", onwards),
            "the end",
            "ok",
            Action.to("top"));
    assertThat(errors(panel)).isEmpty();
  }
}
