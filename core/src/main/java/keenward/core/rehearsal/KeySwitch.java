package keenward.core.rehearsal;

import keenward.core.plan.ArmingMode;

/** A key switch: each turn arms away, or disarms what is armed or sounds. */
final class KeySwitch {

  private KeySwitch() {}

  static void turned(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return;
    }
    int partition = draft.tables.partition(zone);
    if (Disarming.isNeeded(draft, partition)) {
      draft.enter(Behaviour.KEY_SWITCH_DISARMS, zone, 0);
      Disarming.disarm(draft, partition, SystemModel.NONE, Way.KEY_SWITCH);
      draft.leave();
      return;
    }
    Arming.Order order =
        new Arming.Order(partition, ArmingMode.AWAY, SystemModel.NONE, Way.KEY_SWITCH, false);
    draft.enter(Behaviour.KEY_SWITCH_ARMS, zone, 0);
    if (Arming.obstacles(draft, order).isEmpty()) {
      Arming.begin(draft, order);
    } else {
      for (int obstacle : Arming.obstacles(draft, order)) {
        Access.refuse(
            draft, Behaviour.OPEN_ZONE_REFUSES, SystemModel.NONE, Notice.OPEN_ZONE, obstacle);
      }
    }
    draft.leave();
  }
}
