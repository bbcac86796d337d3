package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;

/** Which keys type which characters on a keypad. */
final class Typist {
  private final KeyMeanings meanings;
  private final KeypadKind keypad;

  Typist(KeyMeanings meanings, KeypadKind keypad) {
    this.meanings = meanings;
    this.keypad = keypad;
  }

  /**
   * The fewest keys that type {@code text}, if any do.
   *
   * @param hexadecimal whether shift keys work
   * @param free whether a key has no other meaning on the screen
   */
  Optional<List<String>> digits(String text, boolean hexadecimal, Predicate<String> free) {
    List<String> keys = new ArrayList<>();
    for (int place = 0; place < text.length(); place++) {
      String character = text.substring(place, place + 1);
      Optional<String> direct =
          quickest(
              meanings.direct(),
              character,
              key -> free.test(key) && !(hexadecimal && meanings.shifted().containsKey(key)));
      if (direct.isPresent()) {
        keys.add(direct.get());
        continue;
      }
      Optional<List<String>> shifted = hexadecimal ? shifted(character, free) : Optional.empty();
      if (shifted.isEmpty()) {
        return Optional.empty();
      }
      keys.addAll(shifted.get());
    }
    return Optional.of(keys);
  }

  private Optional<List<String>> shifted(String character, Predicate<String> free) {
    for (Map.Entry<String, Map<String, String>> shift : meanings.shifted().entrySet()) {
      if (usable(shift.getKey(), free)) {
        Optional<String> key = quickest(shift.getValue(), character, free);
        if (key.isPresent()) {
          return Optional.of(List.of(shift.getKey(), key.get()));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> quickest(
      Map<String, String> types, String character, Predicate<String> free) {
    Optional<String> best = Optional.empty();
    for (Map.Entry<String, String> entry : types.entrySet()) {
      if (entry.getValue().equals(character)
          && usable(entry.getKey(), free)
          && (best.isEmpty() || held(entry.getKey()) < held(best.get()))) {
        best = Optional.of(entry.getKey());
      }
    }
    return best;
  }

  private boolean usable(String key, Predicate<String> free) {
    return keypad.keys().containsKey(key) && free.test(key);
  }

  private int held(String key) {
    return keypad.keys().getOrDefault(key, 0);
  }

  /**
   * A letter's taps.
   *
   * @param key the key
   * @param taps how often
   */
  record Tapped(String key, int taps) {}

  /**
   * The fewest taps that give {@code text}, where going on with the key of the letter before costs
   * one act more; empty where a letter is on no key. The letter being tapped on {@code pending}, if
   * any, counts as the letter before.
   */
  Optional<List<Tapped>> letters(String text, String pending, Predicate<String> free) {
    List<List<Tapped>> choices = new ArrayList<>();
    for (int place = 0; place < text.length(); place++) {
      List<Tapped> choice = choices(text.charAt(place), free);
      if (choice.isEmpty()) {
        return Optional.empty();
      }
      choices.add(choice);
    }
    return Optional.of(cheapest(choices, pending));
  }

  private List<Tapped> choices(char letter, Predicate<String> free) {
    List<Tapped> choices = new ArrayList<>();
    meanings
        .letters()
        .forEach((key, letters) -> {
          int place = letters.indexOf(letter);
          if (place >= 0 && usable(key, free)) {
            choices.add(new Tapped(key, place + 1));
          }
        });
    return choices;
  }

  /** Shortest path through the choices, letter by letter. */
  private static List<Tapped> cheapest(List<List<Tapped>> choices, String pending) {
    List<List<Tapped>> best = new ArrayList<>();
    List<Integer> costs = new ArrayList<>();
    best.add(List.of());
    costs.add(0);
    String[] lastKeys = {pending};
    for (List<Tapped> choice : choices) {
      List<List<Tapped>> extended = new ArrayList<>();
      List<Integer> extendedCosts = new ArrayList<>();
      String[] extendedKeys = new String[choice.size()];
      for (int option = 0; option < choice.size(); option++) {
        Tapped tapped = choice.get(option);
        int cheapest = Integer.MAX_VALUE;
        List<Tapped> path = List.of();
        for (int before = 0; before < best.size(); before++) {
          int cost =
              costs.get(before) + tapped.taps() + (lastKeys[before].equals(tapped.key()) ? 1 : 0);
          if (cost < cheapest) {
            cheapest = cost;
            path = best.get(before);
          }
        }
        List<Tapped> longer = new ArrayList<>(path);
        longer.add(tapped);
        extended.add(longer);
        extendedCosts.add(cheapest);
        extendedKeys[option] = tapped.key();
      }
      best = extended;
      costs = extendedCosts;
      lastKeys = extendedKeys;
    }
    int cheapest = 0;
    for (int option = 1; option < best.size(); option++) {
      if (costs.get(option) < costs.get(cheapest)) {
        cheapest = option;
      }
    }
    return best.get(cheapest);
  }

  /** How many acts {@link #letters} takes. */
  static int acts(List<Tapped> letters, String pending) {
    int acts = 0;
    String last = pending;
    for (Tapped tapped : letters) {
      acts += tapped.taps() + (tapped.key().equals(last) ? 1 : 0);
      last = tapped.key();
    }
    return acts;
  }
}
