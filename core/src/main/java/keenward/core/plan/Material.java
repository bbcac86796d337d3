package keenward.core.plan;

/** What a wall, leaf or pane is made of. */
public enum Material implements Worded {
  /** Brick. */
  BRICK("brick"),
  /** Concrete block. */
  BLOCK("block"),
  /** Concrete. */
  CONCRETE("concrete"),
  /** Plasterboard on studs. */
  PLASTERBOARD("plasterboard"),
  /** Wood. */
  WOOD("wood"),
  /** Glass. */
  GLASS("glass"),
  /** Metal. */
  METAL("metal"),
  /** Insulated panel with metal skin, as round a cold store. */
  INSULATED_PANEL("insulated-panel"),
  /** Stone. */
  STONE("stone");

  private final String word;

  Material(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
