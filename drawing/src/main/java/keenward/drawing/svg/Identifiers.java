package keenward.drawing.svg;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Hands out element ids made from names, each once in a drawing. */
public final class Identifiers {

  private final String prefix;
  private final Set<String> used = new HashSet<>();

  /** Ids that all start with a prefix, for pages that hold several drawings. */
  public Identifiers(String prefix) {
    this.prefix = prefix;
  }

  /** An id such as {@code device-shop-door-contact}. */
  public String of(String kind, String name) {
    String base = prefix + kind + "-" + slug(name);
    String id = base;
    for (int i = 2; !used.add(id); i++) {
      id = base + "-" + i;
    }
    return id;
  }

  private static String slug(String name) {
    StringBuilder slug = new StringBuilder();
    for (char letter : name.toLowerCase(Locale.ROOT).toCharArray()) {
      boolean plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
      if (plain) {
        slug.append(letter);
      } else if (!slug.isEmpty() && slug.charAt(slug.length() - 1) != '-') {
        slug.append('-');
      }
    }
    while (!slug.isEmpty() && slug.charAt(slug.length() - 1) == '-') {
      slug.setLength(slug.length() - 1);
    }
    return slug.isEmpty() ? "unnamed" : slug.toString();
  }
}
