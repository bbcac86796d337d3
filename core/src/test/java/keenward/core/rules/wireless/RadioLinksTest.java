package keenward.core.rules.wireless;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.RECEIVER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.Material;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.PremisesKind;
import keenward.core.plan.RoomUse;
import keenward.core.quantities.Frequency;
import org.junit.jupiter.api.Test;

/** The rules that judge what radio is reckoned to do: severities, limits and what is missing. */
class RadioLinksTest {

  private static final Frequency BAND = new Frequency(868.3, "868.3 MHz");

  /** 10 m and a brick wall: 54.5 dB. */
  private static PlanBuilder site(Consumer<DeviceBuilder> sender) {
    return PlanBuilder.site()
        .premises(PremisesKind.DWELLING)
        .panel(panel -> panel.radioSupervision("2 h"))
        .floor(
            "Ground",
            floor ->
                floor
                    .walls(Material.BRICK)
                    .room("Hall", RoomUse.HALL, 0, 0, 6, 4)
                    .room("Living", RoomUse.LIVING, 6, 0, 12, 4))
        .device(
            "Window",
            CONTACT,
            sender.andThen(device -> device.radio("1").on(BAND).room("Living").at(11, 2)))
        .device(
            "Receiver",
            RECEIVER,
            device -> device.bus().on(BAND).hears("-100 dBm").room("Hall").at(1, 2));
  }

  private static Consumer<DeviceBuilder> sends(String level, String checkIn) {
    return device -> device.sends(level).checksIn(checkIn);
  }

  @Test
  void tooLittleInHandIsAWarningAndNothingHeardAnError() {
    MarginBelowReserve rule = new MarginBelowReserve();
    assertThat(findings(rule, site(sends("-26 dBm", "15 min")))).isEmpty();
    assertThat(findings(rule, site(sends("-28 dBm", "15 min"))))
        .containsExactly(
            "warning at devices / Window: 'Receiver' hears 'Window' at about -82 dBm, only 18 dB over its"
                + " sensitivity; 18.7 dB hold in 99 % of places.");
    assertThat(findings(rule, site(sends("-50 dBm", "15 min"))))
        .singleElement()
        .asString()
        .startsWith(
            "error at devices / Window: 'Receiver' hears 'Window' at about -104 dBm, 4 dB under");
  }

  @Test
  void saysWhatIsMissingOncePerRule() {
    assertThat(notAssessed(new MarginBelowReserve(), site(device -> device.checksIn("15 min"))))
        .containsExactly(
            "devices / Window: the plan does not say how strong 'Window' sends; add: radio power: 10 dBm");
    assertThat(notAssessed(new TooFewCheckIns(), site(device -> device.sends("10 dBm"))))
        .containsExactly(
            "devices / Window: the plan does not say how often 'Window' reports that it is there; add:"
                + " check-in: 15 min");
    assertThat(notAssessed(new MarginBelowReserve(), site(device -> device.sends("10 dBm"))))
        .isEmpty();
    assertThat(run(new MarginBelowReserve(), PlanBuilder.site()).notAssessed()).isEmpty();
  }

  @Test
  void fewCheckInsAreAWarningAndNoneAnError() {
    TooFewCheckIns rule = new TooFewCheckIns();
    assertThat(findings(rule, site(sends("10 dBm", "40 min")))).isEmpty();
    assertThat(findings(rule, site(sends("10 dBm", "41 min"))))
        .containsExactly(
            "warning at devices / Window: Radio device 'Window' checks in only twice within the supervision"
                + " time of 2 h.");
    assertThat(findings(rule, site(sends("10 dBm", "120 min"))))
        .singleElement()
        .asString()
        .startsWith("warning")
        .contains("only once");
    assertThat(findings(rule, site(sends("10 dBm", "121 min"))))
        .containsExactly(
            "error at devices / Window: Radio device 'Window' checks in not once within the supervision time of"
                + " 2 h.");
    assertThat(findings(new FalseMissingReports(), site(sends("10 dBm", "121 min")))).isEmpty();
  }
}
