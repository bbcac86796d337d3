package keenward.usecases.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import keenward.core.building.Building;
import keenward.core.plan.Settings;
import keenward.core.radio.RadioAssessment;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.junit.jupiter.api.Test;

class SiteRadioTest {

  private static final Path CLINIC = Path.of("../demo/clinic/heron-lane-vets.site.yaml");

  @Test
  void drawsTheMarginsOverAFloor() throws BadInput {
    SiteFile site = SiteFiles.load(CLINIC);
    Building building = Building.of(site.plan());
    SiteRadio radio =
        SiteRadio.of(
            site,
            building,
            RadioAssessment.of(site.plan(), building, Settings.of(site.plan(), Map.of())));

    assertThat(radio.maps()).hasSize(2);
    assertThat(radio.bestReceiver()).isPresent();
    String floor = site.plan().floors().getFirst().name();
    assertThat(radio.svg(floor)).startsWith("<svg").doesNotContain("NaN", "Infinity");
    assertThatThrownBy(() -> radio.svg("Cellar")).isInstanceOf(BadInput.class);
  }
}
