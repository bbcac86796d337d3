package keenward.core.rehearsal;

import java.util.Arrays;
import java.util.Optional;
import keenward.core.plan.ArmingMode;

/**
 * Everything that the system remembers, immutable. It holds no clock: timers hold what is left, so
 * that two moments of the same kind are equal whenever they are reached.
 */
public final class State {

  private final Layout layout;
  private final long[] flags;
  private final int[] registers;
  private int hash;

  State(Layout layout, long[] flags, int[] registers) {
    this.layout = layout;
    this.flags = flags;
    this.registers = registers;
  }

  /** Not to be written to. */
  long[] flags() {
    return flags;
  }

  /** Not to be written to. */
  int[] registers() {
    return registers;
  }

  private boolean has(ZoneFlag flag, int zone) {
    return (flags[layout.word(flag, zone)] & Layout.bit(zone)) != 0;
  }

  private int of(PartitionRegister register, int partition) {
    return registers[layout.of(register, partition)];
  }

  private int of(SystemRegister register) {
    return registers[layout.of(register)];
  }

  /** How a partition is armed; nothing when it is disarmed. */
  public Optional<ArmingMode> mode(int partition) {
    int mode = of(PartitionRegister.MODE, partition);
    return mode == 0 ? Optional.empty() : Optional.of(Modes.mode(mode));
  }

  /** Exit time that is left in a partition, in tenths of a second; 0 when none runs. */
  public int exitLeftTenths(int partition) {
    return of(PartitionRegister.EXIT_LEFT, partition);
  }

  /** Entry time that is left in a partition, in tenths of a second; 0 when none runs. */
  public int entryLeftTenths(int partition) {
    return of(PartitionRegister.ENTRY_LEFT, partition);
  }

  /** What the sounders give. */
  public Tone tone() {
    return Tone.of(of(SystemRegister.TONE));
  }

  /** Whether the strobe flashes. */
  public boolean isFlashing() {
    return of(SystemRegister.STROBE) != 0;
  }

  /** Whether a zone is violated. */
  public boolean isOpen(int zone) {
    return has(ZoneFlag.OPEN, zone);
  }

  /** Whether a zone is left out by a user, by forced arming or by a technician. */
  public boolean isLeftOut(int zone) {
    return has(ZoneFlag.BYPASSED, zone)
        || has(ZoneFlag.FORCED, zone)
        || has(ZoneFlag.ISOLATED, zone);
  }

  /** Whether a zone is kept in alarm memory. */
  public boolean isInAlarmMemory(int zone) {
    return has(ZoneFlag.ALARMED, zone);
  }

  /** Whether an alarm of a zone waits for the abort window. */
  public boolean isReportPending(int zone) {
    return has(ZoneFlag.PENDING, zone);
  }

  /** Whether the centre was sent an alarm of a zone and no restore. */
  public boolean isReported(int zone) {
    return has(ZoneFlag.REPORTED, zone);
  }

  /** Whether a keypad does not listen. */
  public boolean isLockedOut(int keypad) {
    return registers[layout.lockLeft(keypad)] != 0;
  }

  /** Whether programming is open or the panel is starting up, so that zones are not watched. */
  public boolean isSuspended() {
    return of(SystemRegister.PROGRAMMING) != 0 || of(SystemRegister.START_UP_LEFT) != 0;
  }

  /**
   * Time to the next deadline, in tenths of a second; {@link Engine#NO_DEADLINE} when none runs.
   */
  int nextDeadlineTenths() {
    int next = Engine.NO_DEADLINE;
    for (Layout.Timer timer : layout.timers()) {
      int left = registers[timer.register()];
      if (left > 0 && left < next) {
        next = left;
      }
    }
    return next;
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof State state
            && Arrays.equals(registers, state.registers)
            && Arrays.equals(flags, state.flags));
  }

  @Override
  public int hashCode() {
    int result = hash;
    if (result == 0) {
      result = 31 * Arrays.hashCode(flags) + Arrays.hashCode(registers);
      hash = result;
    }
    return result;
  }
}
