package keenward.files.zonelist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Phrases and what they stand for. The longest phrase wins where several begin at one word.
 *
 * @param <T> what a phrase stands for
 */
final class Vocabulary<T> {

  private final Map<String, T> meanings = new HashMap<>();
  private int longest = 1;

  /** A phrase found in a text. */
  record Found<T>(T meaning, String phrase) {}

  /** What a text holds: the meanings in order, and the words that say nothing. */
  record Reading<T>(List<Found<T>> found, List<String> rest) {

    /** Its only meaning, or none of them when there are several or none. */
    List<T> meanings() {
      return found.stream().map(Found::meaning).distinct().toList();
    }
  }

  /** Adds phrases, parted by commas. */
  Vocabulary<T> add(T meaning, String... phrases) {
    for (String some : phrases) {
      for (String phrase : some.split(",", -1)) {
        List<String> words = Plain.words(phrase);
        longest = Math.max(longest, words.size());
        T before = meanings.put(String.join(" ", words), meaning);
        if (before != null && !before.equals(meaning)) {
          throw new IllegalStateException(phrase + " means " + before + " and " + meaning);
        }
      }
    }
    return this;
  }

  /** The same with further phrases, which win over those here. */
  Vocabulary<T> with(Map<String, T> more) {
    Vocabulary<T> both = new Vocabulary<>();
    both.meanings.putAll(meanings);
    both.longest = longest;
    new LinkedHashMap<>(more)
        .forEach((phrase, meaning) -> {
          List<String> words = Plain.words(phrase);
          both.longest = Math.max(both.longest, words.size());
          both.meanings.put(String.join(" ", words), meaning);
        });
    return both;
  }

  /** Reads a text from its first word to its last. */
  Reading<T> read(String text) {
    List<String> words = Plain.words(text);
    List<Found<T>> found = new ArrayList<>();
    List<String> rest = new ArrayList<>();
    int at = 0;
    while (at < words.size()) {
      int length = Math.min(longest, words.size() - at);
      while (length > 0 && !meanings.containsKey(phrase(words, at, length))) {
        length--;
      }
      if (length == 0) {
        rest.add(words.get(at));
        at++;
      } else {
        String phrase = phrase(words, at, length);
        T meaning = meanings.get(phrase);
        if (meaning != null) {
          found.add(new Found<>(meaning, phrase));
        }
        at += length;
      }
    }
    return new Reading<>(found, rest);
  }

  private static String phrase(List<String> words, int at, int length) {
    return String.join(" ", words.subList(at, at + length));
  }
}
