package keenward.web;

import java.util.Optional;
import keenward.usecases.loops.LoopReading;
import keenward.usecases.site.BadInput;
import keenward.usecases.site.SiteFile;
import org.jspecify.annotations.Nullable;

/**
 * What somebody asks about a loop that they measured.
 *
 * @param zone number of the zone; 0 when nothing is asked
 * @param measured what they measured, as they wrote it
 * @param reading what it means
 * @param problem why it cannot be told
 */
public record LoopQuestion(
    int zone, String measured, Optional<LoopReading> reading, Optional<String> problem) {

  private static final LoopQuestion NONE =
      new LoopQuestion(0, "", Optional.empty(), Optional.empty());

  /** The question of a request; a bare number means ohms. */
  static LoopQuestion of(SiteFile site, int zone, @Nullable String measured) {
    if (zone == 0 || measured == null || measured.isBlank()) {
      return NONE;
    }
    String text = measured.strip();
    String withUnit = text.matches("[0-9.]+") ? text + " ohm" : text;
    try {
      return new LoopQuestion(
          zone, text, Optional.of(LoopReading.of(site, zone, withUnit)), Optional.empty());
    } catch (BadInput bad) {
      return new LoopQuestion(
          zone, text, Optional.empty(), Optional.of(String.join(" ", bad.messages())));
    }
  }

  /** Whether it is about this zone. */
  public boolean isOf(int number) {
    return number == zone;
  }
}
