package keenward.usecases.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.PowerAssessment;
import keenward.core.plan.SitePlan;
import keenward.drawing.voltage.VoltageProfile;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFiles;
import org.junit.jupiter.api.Test;

class VoltageProfilesTest {

  private static final Path CLINIC = Path.of("../demo/clinic/heron-lane-vets.site.yaml");

  @Test
  void everyCableOfASupplyIsAStretch() throws BadInput {
    SitePlan plan = SiteFiles.load(CLINIC).plan();
    List<VoltageProfile> profiles = VoltageProfiles.of(plan, PowerAssessment.of(plan));

    assertThat(profiles).extracting(VoltageProfile::supply).containsExactly("Main", "Prep supply");
    assertThat(profiles.stream().mapToInt(profile -> profile.stretches().size()).sum())
        .isEqualTo(plan.cables().size());
    VoltageProfile.Device sounder =
        profiles.getFirst().devices().stream()
            .filter(device -> device.name().equals("Landing sounder"))
            .findFirst()
            .orElseThrow();
    assertThat(sounder.place().metres()).isEqualTo(96);
    assertThat(sounder.leastVolts()).contains(9.0);
    assertThat(sounder.place().volts()).hasSize(3).allMatch(Optional::isPresent);
    // At the supply itself: six cells of 2.1 V when full, of 1.75 V at the end of discharge.
    assertThat(profiles.getFirst().stretches().getFirst().near().volts())
        .extracting(volts -> Math.round(volts.orElseThrow() * 1e9) / 1e9)
        .containsExactly(12.6, 12.6, 10.5);
  }
}
