package keenward.files.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFolderTest {

  @TempDir Path parent;

  @Test
  void replacesTheFormerContentAsAWhole() throws IOException {
    WholeFolder.replace(parent, "site", folder -> Files.writeString(folder.resolve("a"), "1"));
    WholeFolder.replace(parent, "site", folder -> Files.writeString(folder.resolve("b"), "2"));
    assertThat(parent.resolve("site/b")).hasContent("2");
    assertThat(parent.resolve("site/a")).doesNotExist();
    assertThat(parent.resolve(".site.new")).doesNotExist();
    assertThat(parent.resolve(".site.old")).doesNotExist();
  }

  @Test
  void keepsTheFormerContentWhenFillingFails() throws IOException {
    WholeFolder.replace(parent, "site", folder -> Files.writeString(folder.resolve("a"), "1"));
    assertThatThrownBy(() ->
            WholeFolder.replace(
                parent,
                "site",
                folder -> {
                  Files.writeString(folder.resolve("b"), "half");
                  throw new IOException("disk full");
                }))
        .hasMessage("disk full");
    assertThat(parent.resolve("site/a")).hasContent("1");
    assertThat(parent.resolve("site/b")).doesNotExist();
    assertThat(parent.resolve(".site.new")).doesNotExist();
  }

  @Test
  void putsRightWhatAProgramLeftThatDiedBetweenTheTwoMoves() throws IOException {
    WholeFolder.replace(parent, "site", folder -> Files.writeString(folder.resolve("a"), "1"));
    Files.move(parent.resolve("site"), parent.resolve(".site.old"));
    Files.createDirectory(parent.resolve(".site.new"));
    assertThatThrownBy(() ->
            WholeFolder.replace(
                parent,
                "site",
                folder -> {
                  throw new IOException("stopped");
                }))
        .hasMessage("stopped");
    assertThat(parent.resolve("site/a")).hasContent("1");
  }

  @Test
  void neverRemovesWhatItDidNotWrite() throws IOException {
    Files.createDirectory(parent.resolve("site"));
    Files.writeString(parent.resolve("site/holiday.jpg"), "x");
    assertThatThrownBy(() -> WholeFolder.replace(parent, "site", folder -> {}))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("did not write");
    assertThat(parent.resolve("site/holiday.jpg")).exists();
    Files.writeString(parent.resolve("plain"), "x");
    assertThatThrownBy(() -> WholeFolder.replace(parent, "plain", folder -> {}))
        .hasMessageContaining("is a file");
  }
}
