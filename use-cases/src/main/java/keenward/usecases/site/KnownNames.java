package keenward.usecases.site;

import java.util.List;
import keenward.files.shape.NearestWord;

/** Names that a command line gives. */
public final class KnownNames {

  private KnownNames() {}

  /**
   * Refuses a name that the plan does not know.
   *
   * @param option the option that gives it
   * @param what what it is the name of
   */
  public static void check(String option, String what, String name, List<String> known)
      throws BadInput {
    if (!known.contains(name)) {
      throw new BadInput(
          option,
          "the plan has no " + what + " '" + name + "'",
          "the name of one of them",
          NearestWord.find(name, known)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("see `plan show`"));
    }
  }
}
