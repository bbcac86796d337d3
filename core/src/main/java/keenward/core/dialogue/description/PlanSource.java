package keenward.core.dialogue.description;

import java.util.Map;

/**
 * Where in the site plan a field's value comes from.
 *
 * @param path one of the published paths, such as {@code zone.response}
 * @param words the plan's words and the panel's word for each; a word that is missing here and is no
 *     word of the field cannot be expressed
 * @param shorten whether text that is too long may be shortened by the stated rule
 */
public record PlanSource(String path, Map<String, String> words, boolean shorten) {
  public PlanSource {
    words = Ordered.copyOf(words);
  }
}
