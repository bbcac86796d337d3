package keenward.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import keenward.core.quantities.Span;
import org.junit.jupiter.api.Test;

/**
 * Figures of CP-01, EN 50131-1 and UL 1023 as listed with their sources in {@link RegimeFigure}.
 */
class SettingsTest {

  @Test
  void takesThePlansValueFirst() {
    Settings.Resolved exit =
        Settings.of(
                plan(exitTime(40), regime(Standard.CP_01, "2010")),
                Map.of(Setting.EXIT_TIME, 50_000L))
            .get(Setting.EXIT_TIME);
    assertThat(exit.words()).isEqualTo("40 s");
    assertThat(exit.origin()).isEqualTo(Settings.Origin.PLAN);
    assertThat(exit.broken()).extracting(RegimeFigure::rangeWords).containsExactly("45 s to 255 s");
    assertThat(exit.path().pointer()).isEqualTo("/panel/exit time");
  }

  @Test
  void takesTheRegimesDefaultThenThePanelsThenTheProgrammes() {
    Map<Setting, Long> panel = Map.of(Setting.EXIT_TIME, 50_000L);
    assertThat(
            Settings.of(plan(PanelSettings.none(), regime(Standard.CP_01, "2010")), panel)
                .get(Setting.EXIT_TIME))
        .matches(exit -> exit.value() == 60_000 && exit.origin() == Settings.Origin.REGIME);
    assertThat(Settings.of(plan(PanelSettings.none()), panel).get(Setting.EXIT_TIME))
        .matches(exit -> exit.value() == 50_000 && exit.origin() == Settings.Origin.PANEL);
    assertThat(Settings.of(plan(PanelSettings.none()), Map.of()).get(Setting.EXIT_TIME))
        .matches(exit -> exit.value() == 60_000 && exit.origin() == Settings.Origin.PROGRAM);
  }

  @Test
  void decidesByEditionWhereAFigureChanged() {
    assertThat(swinger("2000").value()).isEqualTo(1);
    assertThat(swinger("2010").value()).isEqualTo(2);
    Settings.Resolved unsaid =
        Settings.of(plan(PanelSettings.none(), regime(Standard.CP_01, null)), Map.of())
            .get(Setting.SWINGER_LIMIT);
    assertThat(unsaid.value()).as("the strictest of the editions").isEqualTo(1);
  }

  @Test
  void letsTheStrictestOfSeveralRegimesRule() {
    PanelSettings delay =
        new PanelSettings(
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Map.of(1, Span.ofSeconds(60)),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            List.of(),
            Map.of());
    Settings.Resolved entry =
        Settings.of(
                plan(delay, regime(Standard.CP_01, "2010"), regime(Standard.EN50131, null)),
                Map.of())
            .get(Setting.ENTRY_DELAY);
    assertThat(entry.broken()).extracting(RegimeFigure::standard).containsExactly(Standard.EN50131);
  }

  private static Settings.Resolved swinger(String edition) {
    return Settings.of(plan(PanelSettings.none(), regime(Standard.CP_01, edition)), Map.of())
        .get(Setting.SWINGER_LIMIT);
  }

  private static Regime regime(
      Standard standard, @org.jspecify.annotations.Nullable String edition) {
    return new Regime(
        standard,
        edition == null ? Fact.missing() : Fact.of(edition),
        Fact.missing(),
        standard.word());
  }

  private static PanelSettings exitTime(int seconds) {
    return new PanelSettings(
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Map.of(),
        Fact.of(Span.ofSeconds(seconds)),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        Fact.missing(),
        List.of(),
        Map.of());
  }

  private static SitePlan plan(PanelSettings panel, Regime... regimes) {
    return new SitePlan(
        new Site(
            "Test site",
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()),
        List.of(regimes),
        Fact.missing(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        panel,
        List.of(Partition.ONLY),
        false,
        List.of(),
        List.of(),
        Fact.missing(),
        List.of());
  }
}
