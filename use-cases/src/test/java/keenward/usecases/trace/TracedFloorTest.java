package keenward.usecases.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import keenward.usecases.site.SiteFiles;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TracedFloorTest {

  @TempDir Path folder;

  private SiteFile site(String floors) throws IOException, BadInput {
    return SiteFiles.load(
        Files.writeString(
            folder.resolve("shed.site.yaml"),
            "keenward: 1\nsite: Shed\nzones: { 1: { name: Door, response: entry-exit } }\n"
                + floors));
  }

  private void picture(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    ImageIO.write(new BufferedImage(80, 50, BufferedImage.TYPE_BYTE_GRAY), "png", file.toFile());
  }

  private static void isRefused(SiteFile site, @Nullable String floor, String... words) {
    assertThatThrownBy(() -> TracedFloor.of(site, floor))
        .isInstanceOfSatisfying(
            BadInput.class, bad -> assertThat(String.join("\n", bad.messages())).contains(words));
  }

  @Test
  void showsAPictureBesideThePlanOrInAFolderBelowIt() throws IOException, BadInput {
    picture("plans/ground.png");
    SiteFile site = site("floors: { Ground: { backdrop: { picture: plans/ground.png } } }");

    TracedFloor traced = TracedFloor.of(site, null);

    assertThat(traced.isMeasured()).isFalse();
    assertThat(traced.svg()).contains("data:image/png", "data-unit=\"px\"");
  }

  @Test
  void asksWhichOfSeveralFloors() throws IOException, BadInput {
    picture("g.png");
    SiteFile site =
        site(
            "floors: { Ground: { backdrop: { picture: g.png } }, Upper: { backdrop: { picture: g.png } } }");

    isRefused(site, null, "--floor", "Ground, Upper");
    isRefused(site, "Uper", "'Uper'", "'Upper'");
    assertThat(TracedFloor.of(site, "Upper").floor().name()).isEqualTo("Upper");
    isRefused(site("floors: { Ground: {} }"), null, "backdrop: { picture: ground-floor.png }");
  }

  @Test
  void saysWhatIsWrongWithThePictureAtItsPlaceInThePlan() throws IOException, BadInput {
    isRefused(
        site("floors: { Ground: { backdrop: { picture: g.png } } }"),
        null,
        ":4:33: ",
        "no file 'g.png'");
    picture("g.png");
    isRefused(
        site("floors: { Ground: { backdrop: { picture: g.png, points: [[1, 1], [90, 1]] } } }"),
        null,
        ":4:49: ",
        "80 wide and 50 high");
    Files.writeString(folder.resolve("g.png"), "no picture");
    isRefused(
        site("floors: { Ground: { backdrop: { picture: g.png } } }"),
        null,
        "g.png:1:1: ",
        "no picture");
  }

  @Test
  void refusesALinkOutOfThePlansFolder(@TempDir Path elsewhere) throws IOException, BadInput {
    Path secret = elsewhere.resolve("secret.png");
    ImageIO.write(new BufferedImage(8, 5, BufferedImage.TYPE_BYTE_GRAY), "png", secret.toFile());
    Files.createSymbolicLink(folder.resolve("g.png"), secret);

    isRefused(
        site("floors: { Ground: { backdrop: { picture: g.png } } }"),
        null,
        "leads out of the folder");
  }

  @Test
  void refusesAFileThatIsTooLarge() throws IOException, BadInput {
    try (var file = new java.io.RandomAccessFile(folder.resolve("g.png").toFile(), "rw")) {
      file.setLength(41L * 1024 * 1024);
    }
    isRefused(
        site("floors: { Ground: { backdrop: { picture: g.png } } }"), null, "larger than 40 MiB");
  }
}
