package keenward.papers;

import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Worded;

/** Words that several papers share. */
final class Say {

  static final String UNKNOWN = "not known yet";
  static final String NOTHING = "–";

  private Say() {}

  /** A fact; a dash where the plan says nothing. */
  static String fact(Fact<String> fact) {
    return fact instanceof Fact.Unknown ? UNKNOWN : fact.orElse(NOTHING);
  }

  /** A fact; empty where the plan says nothing. */
  static String factOrBlank(Fact<String> fact) {
    return fact instanceof Fact.Unknown ? UNKNOWN : fact.orElse("");
  }

  static String words(Fact<? extends Worded> fact) {
    return fact instanceof Fact.Unknown ? UNKNOWN : fact.find().map(Worded::word).orElse(NOTHING);
  }

  static String yesNo(Fact<Boolean> fact) {
    return fact(fact.map(yes -> yes ? "yes" : "no"));
  }

  static String list(List<String> names) {
    return names.isEmpty() ? NOTHING : String.join(", ", names);
  }

  /** A list in running text: a, b and c. */
  static String and(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  /** What was not assessed, for the template of that name. */
  static View missing(MissingFact fact) {
    return missing(fact.why(), fact.lineToAdd(), fact.place().toString());
  }

  static View missing(String why, String lineToAdd, String place) {
    return new View().text("why", why).text("line", lineToAdd).text("place", place);
  }
}
