package keenward.core.dialogue.planned;

import java.util.List;
import keenward.core.plan.PlanPath;

/**
 * What the plan says about a fact.
 *
 * @param place where the plan says it
 * @param content what it says
 * @param origin in words, where it is not the plan itself that says it; otherwise empty
 */
record PlanAnswer(PlanPath place, Content content, String origin) {

  PlanAnswer(PlanPath place, Content content) {
    this(place, content, "");
  }

  sealed interface Content {
    /** One word. */
    record Word(String word) implements Content {}

    /** Any of several words or numbers. */
    record Words(List<String> words) implements Content {
      public Words {
        words = List.copyOf(words);
      }
    }

    /** A whole number. */
    record Count(long number) implements Content {}

    /** A length of time. */
    record Time(long milliseconds, String written) implements Content {}

    /** Text. */
    record Text(String text) implements Content {}

    /** A code, by reference. */
    record Code(String reference) implements Content {}

    /** More than one field can say. */
    record TooMuch(String what, String remedy) implements Content {}
  }
}
