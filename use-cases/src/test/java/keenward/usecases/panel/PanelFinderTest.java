package keenward.usecases.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PanelFinderTest {
  private static final Path SHIPPED = Path.of("../panels");

  @TempDir Path folder;
  private SiteFile site;

  @BeforeEach
  void aPlanThatNamesItsPanel() throws Exception {
    site =
        SiteFiles.load(
            Files.writeString(
                folder.resolve("kiosk.site.yaml"),
                """
                keenward: 1
                site: Hilltop Kiosk
                panel: { description: Dunlin 4 }
                zones:
                  1: { name: Door, response: entry-exit }
                """));
  }

  @Test
  void aDescriptionThatCannotBeReadIsNotTakenForOneThatIsNotThere() throws Exception {
    Files.writeString(
        folder.resolve("dunlin-4.panel.yaml"),
        "keenward-panel: 1\npanel: Dunlin 4\nfamily: tree\n");
    assertThatThrownBy(() -> new PanelFinder(SHIPPED).find(site, null))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(bad.messages())
                    .anyMatch(message -> message.contains("dunlin-4.panel.yaml:3:9")));
  }

  @Test
  void withoutOneThereIsNone() throws Exception {
    assertThat(new PanelFinder(SHIPPED).find(site, null))
        .isInstanceOf(PanelInUse.Undescribed.class);
  }

  @Test
  void oneByThePlansNameIsFoundAmongThoseThatShip() throws Exception {
    assertThat(new PanelFinder(SHIPPED).find(site, "Tormentil 20"))
        .isInstanceOf(PanelInUse.Described.class);
  }
}
