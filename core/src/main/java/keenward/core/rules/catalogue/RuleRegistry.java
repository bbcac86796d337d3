package keenward.core.rules.catalogue;

import java.util.List;
import java.util.Optional;
import keenward.core.rules.Rule;
import keenward.core.rules.addressing.InputInTwoZones;
import keenward.core.rules.loops.WrongNumberOfResistors;

/** Every rule, in the order of the catalogue. A test compares the list with the classes that there are. */
public final class RuleRegistry {

  private static final List<Rule> RULES =
      List.of(new InputInTwoZones(), new WrongNumberOfResistors());

  private RuleRegistry() {}

  /** Every rule, in the order of the catalogue. */
  public static List<Rule> all() {
    return RULES;
  }

  /** The rule with this code. */
  public static Optional<Rule> find(String code) {
    return RULES.stream().filter(rule -> rule.card().code().equals(code)).findFirst();
  }
}
