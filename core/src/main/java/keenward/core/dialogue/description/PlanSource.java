package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;

/** Where in the site plan a field's value comes from. */
public sealed interface PlanSource {

  /**
   * The field takes one fact.
   *
   * @param path one of the published facts, such as {@code zone.response}
   * @param words the plan's words and the panel's word for each; a word that is missing here stands
   *     for itself
   * @param shorten whether text that is too long may be shortened by the stated rule
   */
  record OneFact(String path, Map<String, String> words, boolean shorten) implements PlanSource {
    public OneFact {
      words = Ordered.copyOf(words);
    }
  }

  /**
   * The field is a set of options, each of which takes a yes-or-no fact of its own.
   *
   * @param paths the fact for each option, by the option's word; other options are left alone
   */
  record FactByOption(Map<String, String> paths) implements PlanSource {
    public FactByOption {
      paths = Ordered.copyOf(paths);
    }
  }

  /** The facts that the field takes. */
  default List<String> facts() {
    return switch (this) {
      case OneFact one -> List.of(one.path());
      case FactByOption options -> List.copyOf(options.paths().values());
    };
  }
}
