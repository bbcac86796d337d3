package keenward.files.yaml;

import keenward.files.Problem;

/** What became of an edit. */
public sealed interface EditResult {

  /** The file as it now is; all text outside the edit is what it was, byte for byte. */
  record Done(YamlDocument document) implements EditResult {}

  /** The edit was not made, and why. */
  record Refused(Problem problem) implements EditResult {}
}
