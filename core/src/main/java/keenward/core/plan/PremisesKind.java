package keenward.core.plan;

/** What kind of premises is protected. */
public enum PremisesKind implements Worded {
  /** House or flat. */
  DWELLING("dwelling"),
  /** Shop. */
  SHOP("shop"),
  /** Shop or workshop with somebody living there. */
  SHOP_WITH_DWELLING("shop-with-dwelling"),
  /** Office. */
  OFFICE("office"),
  /** Workshop. */
  WORKSHOP("workshop"),
  /** Warehouse. */
  WAREHOUSE("warehouse"),
  /** Club house. */
  CLUB("club"),
  /** Clinic or surgery. */
  CLINIC("clinic"),
  /** Farm. */
  FARM("farm"),
  /** School. */
  SCHOOL("school"),
  /** Anything else. */
  OTHER("other");

  private final String word;

  PremisesKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
