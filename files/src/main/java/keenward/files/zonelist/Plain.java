package keenward.files.zonelist;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Text as it is compared: small letters without accents, words of letters and digits. */
final class Plain {

  private Plain() {}

  /** The words of a text; signs between them are left out, a number sign is a word. */
  static List<String> words(String text) {
    String bare =
        Normalizer.normalize(text.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .replace("#", " # ");
    return Arrays.stream(bare.split("[^\\p{L}\\p{N}#]+", -1))
        .filter(word -> !word.isEmpty())
        .toList();
  }

  /** The words of a text with one blank between them. */
  static String text(String text) {
    return String.join(" ", words(text));
  }
}
