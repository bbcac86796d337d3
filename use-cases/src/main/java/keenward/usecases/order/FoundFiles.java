package keenward.usecases.order;

import java.nio.file.Path;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.machine.Memory;
import keenward.files.panel.FoundMemoryReader;
import keenward.files.panel.FoundReading;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.InputBytes;

/** Reads files of what a panel was found to hold. */
final class FoundFiles {

  private FoundFiles() {}

  static Memory load(Path path, PanelDescription description) throws BadInput {
    FoundReading reading =
        FoundMemoryReader.read(
            path.toString(), InputBytes.read(path, "a file of what the panel holds"), description);
    return reading.memory().orElseThrow(() -> new BadInput(reading.problems()));
  }
}
