package keenward.core.rehearsal;

import java.util.Set;

/**
 * Somebody who holds a code, named by their index in {@link SystemModel#users()}.
 *
 * @param number number in signals, from 1
 * @param name name
 * @param mayArm indexes of the partitions that they may arm
 * @param mayDisarm indexes of the partitions that they may disarm
 * @param mayBypass whether they may leave zones out
 * @param duress whether their code silently asks for help
 * @param technician whether they may isolate zones and reset tampers
 */
public record UserModel(
    int number,
    String name,
    Set<Integer> mayArm,
    Set<Integer> mayDisarm,
    boolean mayBypass,
    boolean duress,
    boolean technician) {

  public UserModel {
    mayArm = Set.copyOf(mayArm);
    mayDisarm = Set.copyOf(mayDisarm);
  }

  /** A user who arms, disarms and bypasses these partitions. */
  public static UserModel of(int number, String name, Integer... partitions) {
    Set<Integer> all = Set.of(partitions);
    return new UserModel(number, name, all, all, true, false, false);
  }
}
