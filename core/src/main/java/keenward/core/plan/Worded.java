package keenward.core.plan;

/** A published enumeration: each constant has the one word by which a plan names it. */
public interface Worded {

  /** The word in a plan file and on paper. */
  String word();
}
