package keenward.core.plan;

/** What a room is used for. */
public enum RoomUse implements Worded {
  /** Sales room. */
  SHOP("shop"),
  /** Office. */
  OFFICE("office"),
  /** Workshop or production. */
  WORKSHOP("workshop"),
  /** Kitchen. */
  KITCHEN("kitchen"),
  /** Store room. */
  STORE("store"),
  /** Cold store. */
  COLD_STORE("cold-store"),
  /** Hall or corridor. */
  HALL("hall"),
  /** Stair well. */
  STAIRS("stairs"),
  /** Landing. */
  LANDING("landing"),
  /** Living room. */
  LIVING("living"),
  /** Bedroom or guest room. */
  BEDROOM("bedroom"),
  /** Bathroom or toilet. */
  BATHROOM("bathroom"),
  /** Changing room. */
  CHANGING_ROOM("changing-room"),
  /** Garage. */
  GARAGE("garage"),
  /** Plant, boiler or meter room. */
  PLANT("plant"),
  /** Loft. */
  LOFT("loft"),
  /** Basement. */
  BASEMENT("basement"),
  /** Club or meeting room. */
  CLUBROOM("clubroom"),
  /** Treatment or consulting room. */
  TREATMENT("treatment"),
  /** Waiting room. */
  WAITING_ROOM("waiting-room"),
  /** Anything else; say it in the name. */
  OTHER("other");

  private final String word;

  RoomUse(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
