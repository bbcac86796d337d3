package keenward.drawing.floor;

import keenward.core.plan.RoomUse;
import keenward.drawing.svg.Ink;
import org.jspecify.annotations.Nullable;

/** The tint of a room by its use. */
final class RoomTint {

  private RoomTint() {}

  static Ink of(@Nullable RoomUse use) {
    if (use == null) {
      return Ink.ANY_USE;
    }
    return switch (use) {
      case SHOP, OFFICE -> Ink.TRADE;
      case WORKSHOP, KITCHEN -> Ink.WORK;
      case STORE, GARAGE, LOFT -> Ink.STORE;
      case COLD_STORE -> Ink.COLD;
      case HALL, STAIRS, LANDING -> Ink.WAY;
      case LIVING, CLUBROOM, WAITING_ROOM -> Ink.LIVING;
      case BEDROOM, TREATMENT -> Ink.SLEEPING;
      case BATHROOM, CHANGING_ROOM -> Ink.WET;
      case PLANT, BASEMENT -> Ink.PLANT_ROOM;
      case OTHER -> Ink.ANY_USE;
    };
  }
}
