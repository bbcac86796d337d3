package keenward.core.rehearsal;

import org.jspecify.annotations.Nullable;

/**
 * A state on its way to the next one. It copies what it changes, and only once it changes
 * something.
 */
final class Draft {

  /** A timer that has run out and has not been heard yet. */
  static final int EXPIRED = Integer.MIN_VALUE;

  /** A sounder that runs until it is silenced. */
  static final int UNTIL_SILENCED = -1;

  final Tables tables;
  final Layout layout;
  private final State before;
  private long[] flags;
  private int[] registers;
  private boolean ownsFlags;
  private boolean ownsRegisters;
  private int elapsed;
  private final Listener listener;
  private final @Nullable Explainer explainer;

  Draft(Tables tables, State before, Listener listener) {
    this.tables = tables;
    this.layout = tables.layout;
    this.before = before;
    this.flags = before.flags();
    this.registers = before.registers();
    this.listener = listener;
    this.explainer = listener instanceof Explainer told ? told : null;
  }

  State done() {
    return ownsFlags || ownsRegisters ? new State(layout, flags, registers) : before;
  }

  boolean is(ZoneFlag flag, int zone) {
    return (flags[layout.word(flag, zone)] & Layout.bit(zone)) != 0;
  }

  void set(ZoneFlag flag, int zone) {
    if (!is(flag, zone)) {
      writableFlags()[layout.word(flag, zone)] |= Layout.bit(zone);
    }
  }

  void clear(ZoneFlag flag, int zone) {
    if (is(flag, zone)) {
      writableFlags()[layout.word(flag, zone)] &= ~Layout.bit(zone);
    }
  }

  void set(ZoneFlag flag, int zone, boolean yes) {
    if (yes) {
      set(flag, zone);
    } else {
      clear(flag, zone);
    }
  }

  private long[] writableFlags() {
    if (!ownsFlags) {
      flags = flags.clone();
      ownsFlags = true;
    }
    return flags;
  }

  int value(int register) {
    return registers[register];
  }

  void put(int register, int value) {
    if (registers[register] != value) {
      if (!ownsRegisters) {
        registers = registers.clone();
        ownsRegisters = true;
      }
      registers[register] = value;
    }
  }

  int value(PartitionRegister register, int partition) {
    return registers[layout.of(register, partition)];
  }

  void put(PartitionRegister register, int partition, int value) {
    put(layout.of(register, partition), value);
  }

  int value(SystemRegister register) {
    return registers[layout.of(register)];
  }

  void put(SystemRegister register, int value) {
    put(layout.of(register), value);
  }

  /** Whether a timer runs; one that ran out at this instant and was not heard yet still does. */
  boolean isRunning(PartitionRegister register, int partition) {
    return value(register, partition) != 0;
  }

  /** Starts a timer for the reasons so far; a time of 0 leaves it at rest. */
  void start(int register, int tenths) {
    put(register, tenths);
    remember(register);
  }

  void start(PartitionRegister register, int partition, int tenths) {
    start(layout.of(register, partition), tenths);
  }

  void stop(PartitionRegister register, int partition) {
    put(register, partition, 0);
  }

  boolean isArmed(int partition) {
    return value(PartitionRegister.MODE, partition) != 0;
  }

  boolean isLeftOut(int zone) {
    return is(ZoneFlag.BYPASSED, zone) || is(ZoneFlag.FORCED, zone) || is(ZoneFlag.ISOLATED, zone);
  }

  /** Whether zones are not watched for the time being. */
  boolean isSuspended() {
    return value(SystemRegister.PROGRAMMING) != 0 || value(SystemRegister.START_UP_LEFT) != 0;
  }

  int elapsed() {
    return elapsed;
  }

  void passTime(int tenths) {
    if (tenths == 0) {
      return;
    }
    elapsed += tenths;
    for (Layout.Timer timer : layout.timers()) {
      int left = registers[timer.register()];
      if (left > 0) {
        put(timer.register(), left == tenths ? EXPIRED : left - tenths);
      }
    }
  }

  /** The system does something because of one more behaviour. */
  void emit(Behaviour behaviour, int subject, int tenths, Output output) {
    enter(behaviour, subject, tenths);
    emit(output);
    leave();
  }

  /** The system does something because of the behaviours entered. */
  void emit(Output output) {
    listener.output(elapsed, output);
  }

  void enter(Behaviour behaviour, int subject, int tenths) {
    if (explainer != null) {
      explainer.enter(elapsed, behaviour, subject, tenths);
    }
  }

  void leave() {
    if (explainer != null) {
      explainer.leave();
    }
  }

  void resume(int key) {
    if (explainer != null) {
      explainer.resume(elapsed, key);
    }
  }

  void remember(int key) {
    if (explainer != null) {
      explainer.remember(key);
    }
  }

  void given(int key) {
    if (explainer != null) {
      explainer.given(key);
    }
  }

  void given(PartitionRegister register, int partition) {
    given(layout.of(register, partition));
  }
}
