package keenward.core.rules.cables;

import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import keenward.core.plan.Cable;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.Fact;
import keenward.core.plan.LoadKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.quantities.Current;
import org.junit.jupiter.api.Test;

class CableRulesTest {

  private static PlanBuilder site(Consumer<DeviceBuilder> details) {
    return PlanBuilder.site()
        .supply("Main", main -> main.voltage("13.7 V"))
        .device(
            "Siren",
            SIREN,
            device ->
                details.accept(
                    device.wired().supply("Main").draws("10 mA", "350 mA").worksFrom("9 V")));
  }

  private static Cable fused(String milliamps) {
    Cable cable =
        site(siren -> {}).cable("C1", "Main", "Siren", "5 m", "1 mm2").build().cables().getFirst();
    return new Cable(
        cable.name(),
        cable.from(),
        cable.to(),
        cable.length(),
        cable.conductor(),
        cable.doubled(),
        Fact.missing(),
        Fact.of(Current.parse(milliamps).find().orElseThrow()));
  }

  /** 4.2 W over 60 m of 0.22 mm2 (10.1 ohm): at 10.5 V at most 2.7 W, at 12.6 V at most 3.9 W. */
  @Test
  void findsCablesThatCannotCarryConstantPower() {
    assertThat(
            findings(
                new CablesCollapse(),
                site(siren -> siren.load(LoadKind.POWER))
                    .cable("C1", "Main", "Siren", "60 m", "0.22 mm2")))
        .containsExactly(
            "error at cables / C1: The cables from 'Main' to 'Siren' cannot carry what is drawn"
                + " (battery full, in alarm; end of discharge, in alarm): no voltage holds there.");
    assertThat(
            findings(
                new CablesCollapse(),
                site(siren -> siren.load(LoadKind.POWER))
                    .cable("C1", "Main", "Siren", "30 m", "0.22 mm2")))
        .isEmpty();
  }

  @Test
  void findsPlacesOfTwoSupplies() {
    assertThat(
            findings(
                new FedByTwoSupplies(),
                site(siren -> {})
                    .supply("Second", second -> second.voltage("13.7 V"))
                    .cable("C1", "Main", "Siren", "5 m", "1 mm2")
                    .cable("C2", "Second", "Siren", "5 m", "1 mm2")))
        .containsExactly("warning at cables / C1: 'Siren' is fed by 'Main' and 'Second'.");
  }

  @Test
  void findsAFuseThatTrips() {
    assertThat(findings(new FuseTooSmall(), site(siren -> {}).cable(fused("349 mA"))))
        .containsExactly(
            "error at cables / C1 / fuse: Through 'C1' flow 350 mA (battery full, in alarm), and its"
                + " fuse is for 349 mA.");
    assertThat(findings(new FuseTooSmall(), site(siren -> {}).cable(fused("350 mA")))).isEmpty();
    assertThat(run(new FuseTooSmall(), site(siren -> {}).cable(fused("350 mA"))).judgedCount())
        .isEqualTo(1);
  }

  @Test
  void aFuseBeforeAnUnknownCurrentIsNotAssessed() {
    PlanBuilder plan =
        PlanBuilder.site()
            .supply("Main", main -> main.voltage("13.7 V"))
            .device("Siren", SIREN, device -> device.wired().supply("Main").drawsAtRest("10 mA"))
            .cable(fused("349 mA"));

    assertThat(findings(new FuseTooSmall(), plan)).isEmpty();
    assertThat(run(new FuseTooSmall(), plan).judgedCount()).isZero();
  }

  @Test
  void findsARingThatDoesNotSurviveABreak() {
    assertThat(findings(new RingBreakStarves(), ring("30 m")))
        .containsExactly(
            "warning at cables / C1: With 'C1' broken, the ring of 'Main' leaves too little at"
                + " 'Siren' at the end of discharge.");
    assertThat(findings(new RingBreakStarves(), ring("24 m"))).isEmpty();
  }

  private static PlanBuilder ring(String length) {
    return site(siren -> {})
        .device(
            "Motion",
            MOTION,
            device -> device.wired().supply("Main").draws("10 mA", "12 mA").worksFrom("9 V"))
        .cable("C1", "Main", "Siren", length, "0.5 mm2")
        .cable("C2", "Main", "Motion", length, "0.5 mm2")
        .cable("C3", "Motion", "Siren", length, "0.5 mm2");
  }
}
