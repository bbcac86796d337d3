package keenward.core.rules.wireless;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import keenward.core.plan.Device;
import keenward.core.plan.Regime;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.Standard;
import keenward.core.plan.Wiring;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A radio detector may be silent too long before anybody is told. */
public final class RadioSilenceTooLong implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 2, "radio-silence-too-long", Severity.ERROR)
          .source(Source.memory("EN 50131-5-3", "", "table of supervision by grade"))
          .source(
              Source.read(
                  "UL 1023", "", "1.6: a lost transmitter has to be shown", "scope of UL 1023"))
          .purpose(
              "Where there are radio detectors, looks whether a missing one is noticed at all, and in the time that"
                  + " the grade allows.")
          .consequence(
              "A detector that was taken away, or whose cell is dead, goes unnoticed: the room is open and the keypad"
                  + " says armed.")
          .limits(
              "One period holds for all radio devices of a plan; fobs and pendants, which leave the site, are not"
                  + " told apart. Without EN 50131 and a grade only a period of 0 is a fault.")
          .parameter("en50131 grade 1", "240", "min")
          .parameter("en50131 grade 2", "120", "min")
          .parameter("en50131 grade 3", "100", "s")
          .parameter("en50131 grade 4", "10", "s")
          .remedy("Shorten `radio supervision:`.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 2
              panel: { radio supervision: 24 h }
              devices:
                Office motion: { kind: motion, wiring: radio, serial: "61 2208 16" }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 2
              panel: { radio supervision: 2 h }
              devices:
                Office motion: { kind: motion, wiring: radio, serial: "61 2208 16" }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: cp-01 2010
              panel: { radio supervision: 24 h }
              devices:
                Office motion: { kind: motion, wiring: radio, serial: "61 2208 16" }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<String> detectors =
        input.plan().devices().stream()
            .filter(RadioSilenceTooLong::isRadioDetector)
            .map(Device::name)
            .toList();
    if (detectors.isEmpty()) {
      return;
    }
    Settings.Resolved period = input.settings().get(Setting.RADIO_SUPERVISION);
    if (period.origin() == Settings.Origin.PROGRAM) {
      report.notAssessed(
          period.path(),
          "how long "
              + Words.count(detectors.size(), "radio detector")
              + " may be silent, since the plan does not say",
          "radio supervision: 2 h");
      return;
    }
    report.judged();
    String silence = Words.count(detectors.size(), "radio detector") + " may be silent for ";
    if (period.value() == 0) {
      report.found(
          period.path(),
          silence + "ever: supervision is off.",
          "Set `radio supervision:` to a time.",
          Involved.devices(detectors));
      return;
    }
    Optional<Regime> broken =
        input.plan().regimes().stream()
            .filter(regime -> mostMilliseconds(regime).orElse(Long.MAX_VALUE) < period.value())
            .findFirst();
    broken.ifPresent(regime -> {
      String most = Setting.RADIO_SUPERVISION.words(mostMilliseconds(regime).orElse(0));
      report.found(
          period.path(),
          silence + period.words() + "; " + regime.words() + " allows at most " + most + ".",
          "Set `radio supervision:` to " + most + " or less.",
          Involved.devices(detectors));
    });
  }

  private static boolean isRadioDetector(Device device) {
    return Kinds.isDetector(device.kind()) && device.traits().wiring().orNull() == Wiring.RADIO;
  }

  private static OptionalLong mostMilliseconds(Regime regime) {
    if (regime.standard() != Standard.EN50131) {
      return OptionalLong.empty();
    }
    return switch (regime.grade().orElse(0)) {
      case 1 -> OptionalLong.of(240 * 60_000L);
      case 2 -> OptionalLong.of(120 * 60_000L);
      case 3 -> OptionalLong.of(100_000L);
      case 4 -> OptionalLong.of(10_000L);
      default -> OptionalLong.empty();
    };
  }
}
