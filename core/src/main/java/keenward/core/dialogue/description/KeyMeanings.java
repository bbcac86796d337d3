package keenward.core.dialogue.description;

import java.util.Map;

/**
 * What keys type.
 *
 * @param direct the character that a key types where characters are typed
 * @param shifted for a shift key: the characters that the next key types
 * @param letters the letters that repeated taps of a key go through
 * @param tapPauseTenths pause after which a letter being tapped is finished; 0 if only a key
 *     finishes it
 */
public record KeyMeanings(
    Map<String, String> direct,
    Map<String, Map<String, String>> shifted,
    Map<String, String> letters,
    int tapPauseTenths) {
  public KeyMeanings {
    direct = Ordered.copyOf(direct);
    shifted = Ordered.copyOf(shifted);
    letters = Ordered.copyOf(letters);
  }
}
