package keenward.core.dialogue.planned;

/** How names are written with the letters and in the length that a panel has. */
final class Lettering {
  private static final String MARKED = "ÀÁÂÃÄÅÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝàáâãäåçèéêëìíîïñòóôõöøùúûüýÿ";
  private static final String PLAIN = "AAAAAACEEEEIIIINOOOOOOUUUUYaaaaaaceeeeiiiinoooooouuuuyy";
  private static final String VOWELS = "AEIOUaeiou";

  private Lettering() {}

  /**
   * The text with the panel's letters: letter by letter the same, else without its mark, else in
   * the other case, else a space where there is one, else left out.
   */
  static String withLetters(String text, String letters) {
    StringBuilder written = new StringBuilder();
    for (int place = 0; place < text.length(); place++) {
      written.append(letter(text.charAt(place), letters));
    }
    return trimmed(written.toString());
  }

  private static String letter(char character, String letters) {
    int marked = MARKED.indexOf(character);
    char plain = marked < 0 ? character : PLAIN.charAt(marked);
    for (char candidate :
        new char[] {
          character, plain, Character.toUpperCase(plain), Character.toLowerCase(plain), ' '
        }) {
      if (letters.indexOf(candidate) >= 0) {
        return String.valueOf(candidate);
      }
    }
    return "";
  }

  /**
   * The text in at most {@code length} characters: vowels inside words go first, the last ones
   * before, then spaces, the last before, then the end is cut off.
   */
  static String shortened(String text, int length) {
    StringBuilder shorter = new StringBuilder(text);
    for (int place = shorter.length() - 1; place > 0 && shorter.length() > length; place--) {
      if (VOWELS.indexOf(shorter.charAt(place)) >= 0 && shorter.charAt(place - 1) != ' ') {
        shorter.deleteCharAt(place);
      }
    }
    for (int place = shorter.length() - 1; place > 0 && shorter.length() > length; place--) {
      if (shorter.charAt(place) == ' ') {
        shorter.deleteCharAt(place);
      }
    }
    if (shorter.length() > length) {
      shorter.setLength(length);
    }
    return trimmed(shorter.toString());
  }

  private static String trimmed(String text) {
    StringBuilder trimmed = new StringBuilder();
    for (int place = 0; place < text.length(); place++) {
      boolean space = text.charAt(place) == ' ';
      if (!space || (!trimmed.isEmpty() && trimmed.charAt(trimmed.length() - 1) != ' ')) {
        trimmed.append(text.charAt(place));
      }
    }
    while (!trimmed.isEmpty() && trimmed.charAt(trimmed.length() - 1) == ' ') {
      trimmed.setLength(trimmed.length() - 1);
    }
    return trimmed.toString();
  }
}
